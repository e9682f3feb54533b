using System;
using System.Collections.Generic;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Houses of which some rooms were there before, with boxes at heights of their own, and the rest is planned.</summary>
public sealed class PlannedAroundOldTests
{
    private static readonly RuleSet Rules = RuleSets.OfAHouse;
    private static readonly LayoutEvaluator Evaluator = new(Rules, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true));

    private static readonly Dictionary<string, Lazy<Dwelling>> Planned = new(StringComparer.Ordinal)
    {
        ["ranch"] = new(() => new RoughInPlanner(Rules).Plan(RanchHouse.Bare).Dwelling),
        ["row"] = new(() => new RoughInPlanner(Rules).Plan(RowHouse.Bare).Dwelling),
    };

    // Of a planned house a third of the rooms keep some of their boxes, a few inches off; all else is planned anew. Nothing is found of what is planned, nothing that a document asks for is lacking, and in the old
    // rooms what is planned is level with what was there for its purpose at one height, unless something would be found of it there. What an old switch controls isn't described.
    [Theory]
    [InlineData("ranch", false)]
    [InlineData("ranch", true)]
    [InlineData("row", false)]
    [InlineData("row", true)]
    public void Plan_AroundOldBoxes_IsAsGoodAsOfABareHouse(string house, bool areUntouched)
    {
        int level = 0;
        for (int seed = 1; seed <= Tries.Of(100); seed++)
        {
            Random random = new(seed);
            Dwelling old = Worn(Planned[house].Value, random, areUntouched);
            HashSet<string> before = [.. old.PlacedBoxes().Select(placed => placed.Box.Id)];
            RoomPlan plan = new RoughInPlanner(Rules).Plan(old);
            string said = house + " " + seed + "\n" + plan.ToText();
            Assert.All(Evaluator.Evaluate(plan.Dwelling).Findings, finding => Assert.True(before.Contains(finding.Subject) || finding.RuleId is "control-ways" or "light-has-switch", finding.Message + "\n" + said));

            Assert.True(plan.Obstacles.Count == 0, said);
            foreach (IGrouping<(string Space, BoxPurpose Purpose), PlacedBox> alike in plan.Dwelling.PlacedBoxes().Where(placed => placed.Box.Height is not null).GroupBy(placed => (SurfaceAddress.Parse(placed.Address).Space, placed.Box.Purpose)))
            {
                BoxHeight[] there = [.. alike.Where(placed => before.Contains(placed.Box.Id)).Select(placed => placed.Box.Height!.Value).Distinct()];
                PlacedBox[] added = [.. alike.Where(placed => !before.Contains(placed.Box.Id))];
                foreach (PlacedBox one in there.Length == 1 && IsKept(added.FirstOrDefault()?.Box) ? added : [])
                {
                    bool isLevel = IsLevel(there[0], one.Box.Height!.Value);
                    level += isLevel ? 1 : 0;
                    Assert.True(
                        isLevel || Evaluator.Evaluate(plan.Dwelling.WithBoxes(box => box.Id == one.Box.Id ? box.WithHeight(there[0]) : box)).Findings.Any(finding => finding.Subject == one.Box.Id),
                        one.Box.Id + " isn't level with " + there[0] + ", and nothing is against that\n" + said);
                }
            }
        }

        Assert.True(level >= 5, level + " planned beside old ones");
    }

    private static bool IsKept(DeviceBox? box) => box?.Purpose == BoxPurpose.General || box?.Purpose == BoxPurpose.Switch;

    /// <summary>As near as a tape of the house's units shows it.</summary>
    private static bool IsLevel(BoxHeight one, BoxHeight other) => one.Edge == other.Edge && one.Datum == other.Datum && (one.Value - other.Value).Abs() <= Distance.FromInches(0, 1, 16);

    private static Dwelling Worn(Dwelling house, Random random, bool areUntouched)
    {
        Dictionary<string, decimal> off = house.Rooms.Where(_ => random.Next(3) == 0).ToDictionary(room => room.Id, _ => (decimal)random.Next(-6, 21), StringComparer.Ordinal);
        return house.WithRooms(house.Rooms.Select(room => room
            .WithOverhead(Items<DeviceBox>.None).WithInFloor(Items<DeviceBox>.None)
            .WithWalls(room.Walls.Select(wall => wall.WithBoxes(new Items<DeviceBox>(wall.Boxes.Where(box => IsKept(box) && off.ContainsKey(room.Id) && random.Next(2) == 0).Select(box => Set(box.WithControls(Items<string>.None), off[room.Id])))))))
            ).WithOutside(house.Outside.Select(face => face.WithWalls(face.Walls.Select(wall => wall.WithBoxes(Items<DeviceBox>.None)))));

        DeviceBox Set(DeviceBox box, decimal by)
        {
            DeviceBox set = box.WithHeight(box.Height!.Value.WithValue(box.Height.Value.Value + Distance.FromInches(by)));
            return areUntouched ? set.WithUntouched(true) : set.WithExisting(true);
        }
    }
}
