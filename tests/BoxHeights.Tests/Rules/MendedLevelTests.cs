using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Standards;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Boxes that hang off their level: whatever a remedy of the report would have ended by itself is ended once remedies are carried out together.</summary>
public sealed class MendedLevelTests
{
    private static readonly LayoutEvaluator Evaluator = new(RuleSets.OfAHouse);

    private static readonly BoxPurpose[] OnALevel = [BoxPurpose.Switch, BoxPurpose.General, BoxPurpose.Counter, BoxPurpose.Garage, BoxPurpose.Bath];

    private static readonly decimal[] Off = [-3, -2, -0.75m, 0.75m, 1.5m, 2.75m, 4];

    // A second road: each remedy of the first report is carried out alone, and the house with it evaluated anew.
    [Fact]
    public void Mend_OfAHouseWithBoxesOffTheirLevel_LeavesNothingThatARemedyWouldHaveEnded()
    {
        int ended = 0;
        for (int seed = 1; seed <= Tries.Of(400); seed++)
        {
            Dwelling house = seed % 4 == 0 ? FromFinishedFloor(seed) : SetOff(seed);
            Evaluation before = Evaluator.Evaluate(house);
            MendedDwelling after = before.Mend();
            HashSet<string> left = Keys(after.Evaluation);
            foreach ((Finding finding, Remedy remedy) in before.Causes.SelectMany(cause => cause.Remedies.Where(one => one is not NoneFound).SelectMany(remedy => cause.Findings.Select(finding => (finding, remedy)))))
            {
                ended += finding.RuleId.EndsWith("-level", StringComparison.Ordinal) ? 1 : 0;
                Assert.True(
                    !left.Contains(finding.Key) || Keys(Evaluator.Evaluate(remedy.ApplyTo(house))).Contains(finding.Key),
                    "seed " + seed + ": " + finding.Key + " is left, though it ends with: " + remedy.Text + "\n" + before.ToText() + "\n" + after.ToText());
            }

            Assert.All(after.Left, cause => Assert.All(cause.Remedies, remedy => Assert.IsType<NoneFound>(remedy)));
        }

        Assert.True(ended > 100, ended + " findings of levels");
    }

    // Three switches at 48 in to the top above 3/4 in of floor, across the seam at 48-1/2 in above the subfloor; one that was set 46 in to the top; one in a half wall of 40 in. The level that the
    // three share is over the seam, and lets the fourth off. Set right, they would leave it behind: it goes along. The half wall's can't.
    [Fact]
    public void Remedy_OfAStickThatWouldLeaveABoxBehind_TakesItAlong()
    {
        DeviceBox Switch(string id, int at, string height) => new DeviceBox(id, BoxPurpose.Switch).WithDevices(DeviceKind.Switch).WithAt(Distance.FromInches(at)).WithHeight(BoxHeight.Parse(height));
        DwellingBuilder house = new DwellingBuilder("seam").Add(new Storey("first").WithBoards(new BoardLayout().WithWidths(new[] { In(48), In(48) })).WithCeiling(new Ceiling().WithFraming(In(97.125m)).WithBoard(In(0.625m))));
        RoomBuilder room = house.Room("bed", RoomKind.Hall, "first").With(one => one.WithFloor(OneBox.Floor(In(0.75m))));
        room.Wall("north", In(150)).Add(Switch("a", 30, "48 in to top above finished floor")).Add(Switch("b", 60, "48 in to top above finished floor")).Add(Switch("c", 90, "48 in to top above finished floor"));
        room.Wall("east", In(100)).Add(Switch("d", 50, "46 in to top above subfloor"));
        room.Wall("south", In(150)).With(wall => wall.WithTop(new[] { new WallTopPoint(Distance.Zero, In(40)), new WallTopPoint(In(150), In(40)) })).Add(Switch("low", 60, "36 in to top above subfloor"));
        LayoutEvaluator evaluator = new(RuleSets.RoughInPractice);
        Evaluation before = evaluator.Evaluate(house.Build());
        Cause seam = Assert.Single(before.Causes, cause => cause.RuleId == "board-seam");
        Assert.Equal(["a", "b", "c"], seam.Subjects);
        MoveBoxes move = Assert.IsType<MoveBoxes>(Assert.Single(seam.Remedies));
        Assert.Equal(["a", "b", "c", "d"], move.Ids);
        Assert.Equal("48 in to top above subfloor", move.Height.ToString());
        Assert.Empty(before.Mend().Left);
    }

    private static HashSet<string> Keys(Evaluation evaluation) => [.. evaluation.Findings.Select(finding => finding.Key)];

    /// <summary>A house in which some rooms' boxes of a purpose, and some boxes more, were set off by what builders are off: a plate, a floor, an inch or two.</summary>
    private static Dwelling SetOff(int seed)
    {
        Random random = new(seed);
        Dwelling house = OrdinaryHouses.Make(seed, 4 + (seed % 11), plain: seed % 2 == 0);
        Dictionary<string, decimal> off = new(StringComparer.Ordinal);
        foreach (IGrouping<(string Space, BoxPurpose Purpose), PlacedBox> boxes in house.PlacedBoxes().Where(placed => OnALevel.Contains(placed.Box.Purpose)).GroupBy(placed => (SurfaceAddress.Parse(placed.Address).Space, placed.Box.Purpose)))
        {
            decimal all = Some(4);
            foreach (PlacedBox placed in boxes)
            {
                off[placed.Box.Id] = all + Some(20);
            }
        }

        return house.WithBoxes(box => box.Height is { } height && off.TryGetValue(box.Id, out decimal by) ? box.WithSpecified(null).WithHeight(height.WithValue(height.Value + Distance.FromInches(by))) : box.WithSpecified(null));

        decimal Some(int oneOf) => random.Next(oneOf) == 0 ? Off[random.Next(Off.Length)] : 0;
    }

    /// <summary>A house whose switches on the first storey were set 48 in to the top from a floor of 3/4 in, across the seam, but for one in six that somebody set lower.</summary>
    private static Dwelling FromFinishedFloor(int seed)
    {
        Random random = new(seed);
        Dwelling house = OrdinaryHouses.Make(seed, 4 + (seed % 11), plain: true);
        HashSet<string> switches = [.. house.Rooms.Where(room => room is { Storey: "first", SubfloorOffset: null }).SelectMany(room => room.Walls.Where(wall => wall.Top.Count == 0).SelectMany(wall => wall.Boxes))
            .Where(box => box.Purpose == BoxPurpose.Switch).Select(box => box.Id)];
        return house.WithBoxes(box => !switches.Contains(box.Id) ? box
            : box.WithSpecified(null).WithHeight(random.Next(6) == 0 ? BoxHeight.ToTop(In(46), Datum.Subfloor) : BoxHeight.ToTop(In(48), Datum.FinishedFloor)));
    }

    private static Distance In(decimal inches) => Distance.FromInches(inches);
}
