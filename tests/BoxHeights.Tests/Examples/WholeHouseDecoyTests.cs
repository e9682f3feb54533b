#if !NETSTANDARD_ASSET
using System;
using System.Collections.Generic;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Examples;

/// <summary>What only looks like a mistake in the example house: it stays silent as it is, and wouldn't if it were a little different.</summary>
public class WholeHouseDecoyTests
{
    /// <summary>A decoy, what is changed about it, and what is found then: the rule and its subject, or how that begins.</summary>
    private static readonly Dictionary<string, (Func<Dwelling, Dwelling> Change, string Found)> Changes = new()
    {
        // 12 in to the corner and 60 in to the door's rough opening: 72 in in all.
        ["E4 farther from the study's door"] = (MoveBox("E4", -Tick), "wall-outlets study/south 92 in to study/south 60 in"),

        // P1 is 24 in from the end: 73-7/8 less 49-7/8 in.
        ["pantry counter longer"] = (OnWall("pantry/north", wall => wall.WithLength(wall.Length + Tick).WithCounters(wall.Counters.Select(one => one.WithRight(one.Right + Tick)))),
            "counter-outlets pantry/north 0 in to "),
        ["toast corner of 12 in"] = (OnWall("kitchen/west", wall => wall.WithCounters(wall.Counters.Select(one => one.WithRight(In("12 in"))))
            .WithCoverings(wall.Coverings.Select(one => one.WithLeft(In("12 in"))))), "counter-outlets kitchen/west 0 in to 12 in"),
        ["24 in between bedroom 2's closet and door"] = (OnWall("bed-2/west", wall => wall.WithOpenings(wall.Openings.Select(one => one.Id == "closet" ? one.WithRight(In("48 in")) : one))),
            "wall-outlets bed-2/west 48 in to 72 in"),
        ["stair cut for a thinner floor"] = (house => house.WithFlights(house.Flights.Select(one => one.Id == "main-stair" ? one.WithCutForFloorAbove(one.CutForFloorAbove!.Value - Tick) : one)),
            "riser-variation main-stair"),
        ["tub nearer to V5"] = (InRoom("bed-1-bath", room => room.WithFixtures(room.Fixtures.Select(one => one.WithPlan(one.Plan.Select(point => new PlanPoint(point.Right, point.Into - Tick)))))),
            "tub-receptacle V5"),
        ["path light farther along"] = (MoveBox("R2", In("1 in") + Tick), "stair-path-lights R2"),
        ["lamp at a handrail's height"] = (house => house.WithBoxes(box => box.Id == "R6" ? box.WithHeight(BoxHeight.Parse("60 in to center above nosing").WithValue(In("60 in") - Tick)) : box), "stair-lamp R6"),
        ["A6 in the pocket"] = (MoveBox("A6", In("12 in")), "in-cavity A6"),
        ["S15 on the pocket's side"] = (MoveBox("S15", -In("48 in")), "in-cavity S15"),
        ["plumbing wall of 3-1/2 in"] = (house => OnWall("laundry/north", wall => wall.WithCavity(In("3-1/2 in")))(OnWall("hall-bath/south", wall => wall.WithCavity(In("3-1/2 in")))(house)), "back-to-back Y1"),
        ["nail-on box in the furring"] = (house => house.WithBoxes(box => box.Id == "J1" ? box.WithKind(BoxKind.NailOn) : box), "cavity-depth J1"),
        ["one conductor more in L6"] = (house => house.WithBoxes(box => box.Id == "L6" ? box.WithCables(box.Cables.Take(2).Append(CableType.Parse("14-3")).ToArray()) : box), "box-fill L6"),
    };

    public static TheoryData<string> Names => [.. Changes.Keys];

    private static Distance Tick => Distance.FromTicks(1);

    [Theory]
    [MemberData(nameof(Names))]
    public void Decoy_ALittleDifferent_IsFound(string name)
    {
        (Func<Dwelling, Dwelling> change, string found) = Changes[name];
        Assert.DoesNotContain(Found(WholeHouseTests.House), one => one.StartsWith(found, StringComparison.Ordinal));
        Assert.Contains(Found(change(WholeHouseTests.House)), one => one.StartsWith(found, StringComparison.Ordinal));
    }

    // With the window-top box at 16 in, 144 in from L8 round the corner, the living room is served as long as a half of L7 stays live.
    [Fact]
    public void HalfSwitchedReceptacle_Counts()
    {
        Dwelling low = WholeHouseTests.House.WithBoxes(box => box.Id == "L9" ? box.WithPurpose(BoxPurpose.General).WithHeight(BoxHeight.Parse("16 in to top above subfloor")) : box);
        string found = "wall-outlets living/south 120 in to living/south 72 in";
        Assert.DoesNotContain(found, Found(low));
        Assert.Contains(found, Found(low.WithBoxes(box => box.Id == "L7" ? box.WithSwitched(SwitchedPart.All) : box)));
    }

    [Theory]
    [InlineData("S17", "board-seam", "1/2 in")] // 48 in to the top above the subfloor, seam at 97-1/8 - 5/8 - 48 = 48-1/2 in
    [InlineData("L6", "box-fill", "0 in3")] // six conductors, a device and the grounds: 9 × 2 in³ in 18 in³
    [InlineData("S8", "under-wall-top", "3-1/2 in")] // box of 3-1/2 in: plate top at 36 - 1-3/4 + 2-1/4, wall top at 40
    [InlineData("K5", "counter-edge", "3 in")] // plate bottom at 39-3/4, the full-height splash starts at 36-3/4
    [InlineData("B1", "not-buried", null)]
    [InlineData("W1", "not-buried", null)]
    [InlineData("W1", "tub-receptacle", null)] // 48-1/8 in from the tub
    [InlineData("K7", "framing-fit", null)]
    [InlineData("Y2", "dryer-height", "8 in")] // 12 in to the center, the lowest usual one is 4
    [InlineData("U3", "trim-clearance", null)]
    [InlineData("E1", "board-seam", null)]
    [InlineData("H2", "specified-height", "1/4 in")]
    [InlineData("J1", "cavity-depth", "0 in")] // 1-1/2 deep behind its ring, in furring of 1-1/2
    [InlineData("S15", "in-cavity", null)] // on the strike side of the pocket door
    [InlineData("A6", "in-cavity", null)] // left of the pocket, which ends at 62 in
    [InlineData("R6", "stair-lamp", null)]
    [InlineData("R6", "clear-of-handrail", null)]
    public void Decoys_StaySilentThoughTheyAreChecked(string box, string rule, string? margin)
    {
        Check check = Assert.Single(WholeHouseTests.Judged.Checks, one => one.Subject == box && one.RuleId == rule);
        Assert.Equal(Verdict.Passes, check.Verdict);
        Assert.Equal(margin ?? check.Margin.ToString(), check.Margin.ToString());
        Assert.Empty(WholeHouseTests.Judged.For(box));
    }

    // The disposal's receptacle is in a cabinet and under a counter; the dryer's is low, for one appliance.
    [Fact]
    public void BoxesForOneAppliance_StaySilentUnderRulesForCountersAndReach()
    {
        Evaluation strict = new LayoutEvaluator(WholeHouseTests.Of(NecEdition.Nec2026) + RuleSets.Ada2010 + RuleSets.California).Evaluate(WholeHouseTests.House);
        Assert.Empty(strict.For("K4"));
        Assert.Empty(strict.For("Y2"));
    }

    [Fact]
    public void HalfWallSwitch_OnAWallOfFullHeight_IsRemarkedOn()
    {
        Dwelling high = WholeHouseTests.House.WithRooms(WholeHouseTests.House.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => wall.Id == "half-wall" ? wall.WithTop(default) : wall))));
        Assert.Contains(new LayoutEvaluator(WholeHouseTests.Rules).Evaluate(high).For("S8"), finding => finding.RuleId == "switch-height");
    }

    private static Items<string> Found(Dwelling house) => new LayoutEvaluator(WholeHouseTests.Rules).Evaluate(house).Findings.Select(finding => finding.RuleId + " " + finding.Subject);

    private static Distance In(string text) => Distance.Parse(text);

    private static Func<Dwelling, Dwelling> MoveBox(string id, Distance by) => house => house.WithBoxes(box => box.Id == id ? box.WithAt(box.At!.Value + by) : box);

    private static Func<Dwelling, Dwelling> InRoom(string id, Func<Room, Room> change) => house => house.WithRooms(house.Rooms.Select(room => room.Id == id ? change(room) : room));

    private static Func<Dwelling, Dwelling> OnWall(string address, Func<Wall, Wall> change)
    {
        string[] path = address.Split('/');
        return InRoom(path[0], room => room.WithWalls(room.Walls.Select(wall => wall.Id == path[1] ? change(wall) : wall)));
    }
}
#endif
