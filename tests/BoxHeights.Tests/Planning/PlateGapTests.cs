using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Between the plates of any two planned boxes 1/2 in of wall or more is left: common practice, no source. A one-gang plate is 2-3/4 in by 4-1/2 in (ANSI/NEMA WD 6), a box 3-3/4 in tall.</summary>
public sealed class PlateGapTests
{
    private static readonly RuleSet Rules = RuleSets.OfAHouse;
    private static readonly Items<BoxPurpose> Extras = new[] { BoxPurpose.Bedside, BoxPurpose.Television, BoxPurpose.Sofa, BoxPurpose.Office, BoxPurpose.WindowTop };

    private static Distance Center(DeviceBox box) => box.Height!.Value.AtEdge(Edge.Center, new BoxSize(In(2.25m), In(3.75m))).Value;

    private static void KeepsClear(RoughInPlanner planner, Dwelling house, Distance gap, string what)
    {
        foreach (IGrouping<string, DeviceBox> wall in planner.Plan(house).Dwelling.PlacedBoxes()
            .Where(placed => placed.Box is { At: not null, Height: { Datum: Datum.Subfloor } }).GroupBy(placed => placed.Address, placed => placed.Box))
        {
            DeviceBox[] boxes = [.. wall];
            for (int i = 0; i < boxes.Length; i++)
            {
                for (int j = 0; j < i; j++)
                {
                    bool aside = (boxes[i].At!.Value - boxes[j].At!.Value).Abs() >= In(2.75m) + gap;
                    bool above = (Center(boxes[i]) - Center(boxes[j])).Abs() >= In(4.5m) + gap;
                    Assert.True(aside || above, what + wall.Key + ": " + boxes[i].Id + " at " + boxes[i].At + " and " + boxes[j].Id + " at " + boxes[j].At);
                }
            }
        }
    }

    [Fact]
    public void Plates_OfPlannedBoxes_LeaveHalfAnInch()
    {
        RoughInPlanner planner = new(Rules, RoughInOptions.Default.WithExtras(Extras));
        Prop.ForAll(RandomRooms.Seeds, seed => KeepsClear(planner, RandomRooms.Make(seed), In(0.5m), "seed " + seed + " ")).Check(Tries.Config(200));
    }

    [Fact]
    public void Plates_WithAGapOfTheUsers_LeaveThat()
    {
        RoughInPlanner planner = new(Rules, RoughInOptions.Default.WithExtras(Extras).WithPlateGap(In(8)));
        Prop.ForAll(RandomRooms.Seeds, seed => KeepsClear(planner, RandomRooms.Make(seed), In(8), "seed " + seed + " ")).Check(Tries.Config(100));
    }

    [Fact]
    public void PlateGap_OfLessThanNothing_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => RoughInOptions.Default.WithPlateGap(-In(1)));
}
