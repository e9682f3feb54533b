using System;
using System.Collections;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using BoxHeights.Tests.Interop.Json;
using BoxHeights.Tests.Standards;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Layout;

/// <summary>What a script writes of a part of a description, or a debugger shows: what it is, in one line, and nothing that isn't stated.</summary>
public sealed class DescribedInOneLineTests
{
    private static readonly DeviceBox Box = new DeviceBox("S1", BoxPurpose.Switch).WithDevices(DeviceKind.Switch, DeviceKind.Dimmer).WithAt(In("33-7/8")).WithHeight(BoxHeight.Parse("48 in to top AFF"));

    private static readonly Room Hall = new Room("hall", RoomKind.Hall, "first")
        .WithWalls(new Wall("north", In("144")).WithBoxes(Box, Box.WithId("S2")), new Wall("east", In("96")).WithOpen(true)).WithOverhead(new DeviceBox("C1", BoxPurpose.Light).WithPlan(new PlanPoint(In("72"), In("48"))));

    [Fact]
    public void ToString_OfWhatIsDescribed_SaysWhatItIs()
    {
        Assert.Equal(
            [
                "S1: switch, devices (switch, dimmer), at 33-7/8 in, height 48 in to top above finished floor", "C1: light, plan (72 in, 48 in)",
                "hall/north, S1: switch, devices (switch, dimmer), at 33-7/8 in, height 48 in to top above finished floor",
                "north: 144 in, boxes: 2", "east: 96 in, open, boxes: 0", "hall: hall on first, walls: 2, boxes: 3", "Cabin, storeys: 1, rooms: 1, boxes: 3",
                "door: door, 36 in to 68 in", "run: kitchen, 0 in to 96 in", "sink: basin", "stair: first to second, risers 15", "first",
            ],
            new object[]
            {
                Box, Hall.Overhead[0], new PlacedBox("hall/north", Box), Hall.Walls[0], Hall.Walls[1], Hall, new Dwelling("Cabin").WithStoreys(new Storey("first")).WithRooms(Hall),
                new Opening("door", OpeningKind.Door, In("36"), In("68")), new Counter("run", CounterKind.Kitchen, Distance.Zero, In("96")), new Fixture("sink", FixtureKind.Basin),
                new StairFlight("stair", "first", "second", 15), new Storey("first"),
            }.Select(one => one.ToString()));
    }

    [Fact]
    public void ToString_OfPartsWithoutAnId_SaysWhatIsStated()
    {
        Assert.Equal(
            [
                "framing 97-1/8 in, board 5/8 in", "nothing stated", "spacing 16 in, from left, known declared", "hung horizontal, widths (48 in, 48 in), from top", "post, 10 in to 13 in", "bracket, stud 4, side right",
                "height 48 in to top above subfloor, within 1/8 in", "corner (10 in, 0 in), turn degrees 90", "every 2, start tread 3", "course 1, along 48 in",
            ],
            new object[]
            {
                new Ceiling().WithFraming(In("97-1/8")).WithBoard(In("5/8")), new Ceiling(), new StudLayout().WithSpacing(In("16")).WithKnown(StudKnowledge.Declared),
                new BoardLayout().WithWidths(In("48"), In("48")), new NoCavity(NoCavityKind.Post, In("10"), In("13")), new Mounting(MountingMethod.Bracket).WithStud(4).WithSide(StudSide.Right),
                new MeasuredHeight(BoxHeight.Parse("48 in to top above subfloor")).WithWithin(In("1/8")), new RoomPlace(new PlanPoint(In("10"), Distance.Zero)).WithTurnDegrees(90m),
                new StairLights(2).WithStartTread(3), new ButtJoint(1, In("48")),
            }.Select(one => one.ToString()));
    }

    // Every part of a whole house and of its papers, however deep.
    [Fact]
    public void ToString_OfEveryPartOfAHouseAndItsPapers_IsAShortLine()
    {
        Dwelling house = OrdinaryHouses.Make(7, 6);
        Evaluation evaluation = new LayoutEvaluator(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice).Evaluate(house);
        HashSet<Type> seen = [];
        foreach (object part in new object[] { house, MarkSheet.For(evaluation).Rows, OrderList.For(evaluation).Rows, CeilingPlan.For(evaluation).Rows, StoryPole.For(evaluation).Rows }.SelectMany(Parts))
        {
            string said = part.ToString()!;
            Assert.True(said.Length is > 0 and < 300 && !said.Contains('\n', StringComparison.Ordinal) && !said.Contains(" { ", StringComparison.Ordinal), part.GetType().Name + ": " + said);
            seen.Add(part.GetType());
        }

        Assert.Superset(new HashSet<Type> { typeof(Dwelling), typeof(Room), typeof(Wall), typeof(DeviceBox), typeof(Opening), typeof(MarkRow), typeof(OrderRow), typeof(CeilingRow), typeof(PoleMark) }, seen);
    }

    // Rows hold descriptions, and the stamp of a rule set is of what they print: a member that is left out would be no difference. What holds rooms, walls and boxes is in no row and tells their number.
    [Fact]
    public void ToString_WithoutAMemberThatWasStated_IsAnother() => Prop.ForAll(RandomDwelling.Arbitrary, dwelling =>
    {
        foreach (object part in Parts(dwelling).Where(part => part is not (Dwelling or Room or Wall or OutsideFace or FloorLayer)))
        {
            foreach (PropertyInfo member in part.GetType().GetProperties().Where(member => member.SetMethod is not null))
            {
                object other = part.GetType().GetMethod("<Clone>$")!.Invoke(part, null)!;
                try
                {
                    member.SetValue(other, member.PropertyType.IsValueType ? Activator.CreateInstance(member.PropertyType) : null);
                }
                catch (TargetInvocationException refused) when (refused.InnerException is ArgumentException)
                {
                    continue;
                }

                Assert.True(other.Equals(part) || other.ToString() != part.ToString(), part.GetType().Name + "." + member.Name + ": " + part);
            }
        }
    }).Check(Tries.Config(30));

    /// <summary>A value and all that its properties hold, as far as they are records of ours.</summary>
    private static IEnumerable<object> Parts(object? value)
    {
        if (value is IEnumerable many and not string)
        {
            return many.Cast<object?>().SelectMany(Parts);
        }

        return value is null || value.GetType() is not { IsClass: true, Namespace: "BoxHeights" } type || type.GetMethod("<Clone>$") is null
            ? []
            : type.GetProperties(BindingFlags.Public | BindingFlags.Instance).SelectMany(property => Parts(property.GetValue(value))).Prepend(value);
    }
}
