using System.Linq;
using BoxHeights.Tests.Cases;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Switches behind open leaves and panels; and in pockets, which is one fault and told once. Common practice, no source; recomputed by hand from jambs and leaves.</summary>
public sealed class BehindDoorTests
{
    private static readonly RuleSet Rules = new(new[] { "behind-open-door", "behind-barn-door", "in-cavity" }.Select(id => RuleSets.RoughInPractice.Row(id)!));

    private static Distance Tick => Distance.FromTicks(1);

    // A rough opening from 60 to 92 in with a leaf of 30 in: jambs at 61 and 91 in. Hinged left the leaf hides 31 to 61, hinged right 91 to 121 in.
    [Theory]
    [InlineData("left", "31", "61")]
    [InlineData("right", "91", "121")]
    public void Leaf_IntoTheRoom_HidesItsOwnWidthBesideTheHinges(string hinge, string from, string to)
    {
        Opening door = Door().WithHinge(End(hinge)).WithSwing(DoorSwing.Into);
        Distance left = CaseFile.Inches(from);
        Distance right = CaseFile.Inches(to);
        Assert.Empty(Found(door, left));
        Assert.Equal(["behind-open-door"], Found(door, left + Tick));
        Assert.Equal(["behind-open-door"], Found(door, right - Tick));
        Assert.Empty(Found(door, right));
    }

    [Fact]
    public void Leaf_WiderBox_IsHiddenFromItsOuterDevice()
    {
        // Three devices 1-13/16 in apart: the outer ones are that far from the middle.
        Opening door = Door().WithHinge(WallEnd.Left).WithSwing(DoorSwing.Into);
        Distance edge = CaseFile.Inches("31") - CaseFile.Inches("1-13/16");
        DeviceKind[] three = [DeviceKind.Switch, DeviceKind.Switch, DeviceKind.Dimmer];
        Assert.Empty(Found(door, edge, three));
        Assert.Equal(["behind-open-door"], Found(door, edge + Tick, three));
    }

    [Fact]
    public void Leaf_NotSaidHow_HidesNothing()
    {
        Distance behind = CaseFile.Inches("45");
        Opening door = Door().WithHinge(WallEnd.Left).WithSwing(DoorSwing.Into);
        Assert.Equal(["behind-open-door"], Found(door, behind));
        Assert.Empty(Found(door.WithHinge(null), behind));
        Assert.Empty(Found(door.WithSwing(null), behind));
        Assert.Empty(Found(door.WithLeaf(null), behind));
        Assert.Empty(Found(door.WithSwing(DoorSwing.Away), behind));
    }

    [Fact]
    public void Receptacle_BehindALeaf_IsFine() =>
        Assert.Empty(Found(Door().WithHinge(WallEnd.Left).WithSwing(DoorSwing.Into), CaseFile.Inches("45"), [DeviceKind.DuplexReceptacle]));

    [Fact]
    public void Switch_OverTheHead_IsNotHidden()
    {
        Opening door = Door().WithHinge(WallEnd.Left).WithSwing(DoorSwing.Into).WithHead(Level.Parse("82-1/2 in above subfloor"));
        OneBox box = Box(door, CaseFile.Inches("45"));
        Assert.Empty(box.At(BoxHeight.Parse("82-1/2 in to bottom above subfloor")).Evaluate().Findings);
        Assert.Single(box.At(BoxHeight.ToBottom(CaseFile.Inches("82-1/2") - Tick, Datum.Subfloor)).Evaluate().Findings);
    }

    // The panel of 40 in clears a doorway whose jamb is at 61 in: it covers 21 to 61 in.
    [Fact]
    public void BarnDoor_CoversItsPanelsWidth()
    {
        Opening door = new Opening("d", OpeningKind.BarnDoor, CaseFile.Inches("60"), CaseFile.Inches("92")).WithLeaf(CaseFile.Inches("40"));
        Assert.Empty(Found(door, CaseFile.Inches("40")));
        Assert.Equal(["behind-barn-door"], Found(door.WithPocketOn(WallEnd.Left), CaseFile.Inches("40")));
        Assert.Empty(Found(door.WithPocketOn(WallEnd.Left), CaseFile.Inches("21")));
        Assert.Equal(["behind-barn-door"], Found(door.WithPocketOn(WallEnd.Left), CaseFile.Inches("21") + Tick));
        Assert.Empty(Found(door.WithPocketOn(WallEnd.Right), CaseFile.Inches("40")));
    }

    // A leaf of 24 in: frame of 49 in from the strike side at 92; the pocket is from 43 to 68 in. The narrowest box of its kind, 2-1/8 in wide, lies beside it from 1-1/16 in off.
    [Fact]
    public void Pocket_HoldsNoPartOfABox_AndIsToldOnce()
    {
        Opening door = new Opening("d", OpeningKind.PocketDoor, CaseFile.Inches("68"), CaseFile.Inches("92")).WithLeaf(CaseFile.Inches("24")).WithPocketOn(WallEnd.Left);
        Assert.Empty(Found(door, CaseFile.Inches("41-15/16")));
        Assert.Equal(["in-cavity"], Found(door, CaseFile.Inches("41-15/16") + Tick));
        Finding finding = Assert.Single((Box(door, CaseFile.Inches("56")) with { Rules = RuleSets.RoughInPractice }).Evaluate().Findings);
        Assert.Equal("in-cavity", finding.RuleId);
        Assert.Empty(Found(door, CaseFile.Inches("98")));
    }

    // Hinges 12 in from the corner: a leaf of 30 in can't lie flat, so it hides the 12 in and 30 in of the wall round the corner.
    [Fact]
    public void Leaf_NearACorner_HidesTheWallRoundIt()
    {
        Opening door = new Opening("d", OpeningKind.Door, CaseFile.Inches("11"), CaseFile.Inches("43")).WithLeaf(CaseFile.Inches("30")).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Into);
        string[] On(string at, decimal turn) => Evaluate(new Wall("west", CaseFile.Inches("100")).WithTurnDegrees(turn).WithBoxes(new[] { Switch("s").WithAt(CaseFile.Inches(at)) }), new Wall("north", CaseFile.Inches("144")).WithOpenings(new[] { door }));
        Assert.Equal(["behind-open-door"], On("80", 90m));
        Assert.Empty(On("70", 90m));
        Assert.Empty(On("80", -90m));

        // As a drawing has it; half a degree off is the most. Beyond it the corner is as it is drawn, and surely hidden is what the leaf reaches past it, 18 in.
        Assert.Equal(["behind-open-door"], On("80", 89.9m));
        Assert.Equal(["behind-open-door"], On("80", 89.5m));
        Assert.Empty(On("80", 89.4999999m));
        Assert.Equal(["behind-open-door"], On("80", 90.5m));
        Assert.Equal(["behind-open-door"], On("80", 90.6m));
        Assert.Equal(["behind-open-door"], On("80", 90.00000000001m));
        Assert.Equal(["behind-open-door"], On("80", -270m));
        Assert.Empty(On("80", 45m));
        Assert.Equal(["behind-open-door"], On("84", 45m));
        Assert.Equal(["behind-open-door"], On("84", 0m));
        Assert.Empty(On("80", 0m));
    }

    [Fact]
    public void Verdict_OnRandomDoors_IsThatOfAnIntervalAndMirrors() => Prop.ForAll(Arb.From(Gen.Choose(0, 400).ArrayOf(5)), n =>
    {
        // In eighths: rough opening, leaf, box; the leaf lies flat, so no corner is near.
        int left = 600 + n[0];
        int leaf = 192 + (n[1] / 4);
        int width = leaf + 2 * (4 + (n[2] / 50));
        int at = 20 + (n[3] * 4);
        bool onLeft = n[4] % 2 == 0;
        Opening door = new Opening("d", OpeningKind.Door, Eighths(left), Eighths(left + width)).WithLeaf(Eighths(leaf)).WithHinge(onLeft ? WallEnd.Left : WallEnd.Right).WithSwing(DoorSwing.Into);
        Dwelling house = House(new Wall("wall", Eighths(2000)).WithOpenings(new[] { door }).WithBoxes(new[] { Switch("s").WithAt(Eighths(at)) }));
        int jamb = onLeft ? left + ((width - leaf) / 2) : left + width - ((width - leaf) / 2);
        bool hidden = onLeft ? at > jamb - leaf && at < jamb : at > jamb && at < jamb + leaf;
        LayoutEvaluator evaluator = new(Rules);
        return (evaluator.Evaluate(house).Findings.Count == 1) == hidden && (evaluator.Evaluate(Mirror.Of(house)).Findings.Count == 1) == hidden;
    }).Check(Tries.Always(100));

    private static WallEnd End(string name) => name == "left" ? WallEnd.Left : WallEnd.Right;

    private static Opening Door() => new Opening("d", OpeningKind.Door, CaseFile.Inches("60"), CaseFile.Inches("92")).WithLeaf(CaseFile.Inches("30"));

    private static DeviceBox Switch(string id) => new DeviceBox(id, BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }).WithHeight(BoxHeight.Parse("48 in to top above subfloor"));

    private static OneBox Box(Opening opening, Distance at, DeviceKind[]? devices = null)
    {
        OneBox one = new() { Rules = Rules, Wall = wall => wall.WithOpenings(new[] { opening }) };
        return (one with { Box = one.Box.WithAt(at).WithDevices(devices ?? [DeviceKind.Switch]) }).At(BoxHeight.Parse("48 in to top above subfloor"));
    }

    private static string[] Found(Opening opening, Distance at, DeviceKind[]? devices = null) =>
        Box(opening, at, devices).Evaluate().Findings.Select(finding => finding.RuleId).ToArray();

    private static Dwelling House(params Wall[] walls) =>
        new Dwelling("doors").WithStoreys(new[] { new Storey("first") }).WithRooms(new[] { new Room("room", RoomKind.Bedroom, "first").WithWalls(walls) });

    private static string[] Evaluate(params Wall[] walls) => new LayoutEvaluator(Rules).Evaluate(House(walls)).Findings.Select(finding => finding.RuleId).ToArray();
}
