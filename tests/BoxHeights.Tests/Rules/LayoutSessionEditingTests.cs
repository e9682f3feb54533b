using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

public sealed class LayoutSessionEditingTests
{
    private static readonly LayoutEvaluator Evaluator = new(DwellingGen.Rules);

    // Whatever is done, the session says what a fresh evaluation of its dwelling does; and a state that is come back to says what it said.
    [Fact]
    public void Edits_OfEveryKind_AgreeWithAFreshEvaluationAndAreUndone() => Prop.ForAll(DwellingGen.Seeds, seed =>
    {
        Random random = new(seed);
        LayoutSession session = Evaluator.Open(DwellingGen.Dwelling(seed));
        List<(SessionState State, string[] Said)> before = [];
        for (int step = 0; step < 8; step++)
        {
            before.Add((session.State, DwellingGen.Lines(session.Findings)));
            SessionChange change = Edit(session, random, step);
            string[] now = DwellingGen.Lines(session.Findings);
            Assert.Equal(DwellingGen.Lines(new LayoutEvaluator(session.State.Rules).Evaluate(session.ToDwelling()).Findings), now);
            Assert.True(before[^1].Said.SequenceEqual(now) || change.Appeared.Count + change.Cleared.Count + change.Changed.Count > 0);
        }

        foreach ((SessionState state, string[] said) in Enumerable.Reverse(before))
        {
            session.Restore(state);
            Assert.Equal(said, DwellingGen.Lines(session.Findings));
            Assert.Equal(state, session.State);
            Assert.Equal(state.Dwelling, session.ToDwelling());
        }

        return true;
    }).Check(Tries.Config(40));

    [Fact]
    public void State_WithoutAChange_IsTheSameValue()
    {
        LayoutSession session = Evaluator.Open(House());
        SessionState state = session.State;
        Assert.Same(state, session.State);
        Assert.Same(SessionChange.None, session.Restore(state));
        session.Move("b", In("50"), BoxHeight.Parse("18 in to top above subfloor"));
        Assert.NotEqual(state, session.State);
        Assert.Equal(In("20"), state.Dwelling.FindBox("b")!.Box.At);
    }

    [Fact]
    public void Move_ToAnotherWall_IsListedThere()
    {
        LayoutSession session = Evaluator.Open(House());
        session.Move("b", "room/east", In("30"), BoxHeight.Parse("18 in to top above subfloor"));
        PlacedBox moved = session.ToDwelling().FindBox("b")!;
        Assert.Equal(("room/east", In("30")), (moved.Address, moved.Box.At!.Value));
        Assert.Throws<ArgumentException>(() => session.Move("b", "room/ceiling", In("30"), default));
        Assert.Throws<ArgumentException>(() => session.Move("b", "nowhere/east", In("30"), default));
    }

    [Fact]
    public void MoveInPlan_IsOfBoxesOverhead()
    {
        LayoutSession session = Evaluator.Open(House());
        session.MoveInPlan("light", new PlanPoint(In("60"), In("70")));
        Assert.Equal(new PlanPoint(In("60"), In("70")), session.ToDwelling().FindBox("light")!.Box.Plan);
        Assert.Throws<ArgumentException>(() => session.MoveInPlan("b", new PlanPoint(In("60"), In("70"))));
    }

    [Fact]
    public void Ids_ThatAreThereAlready_AreRefused()
    {
        LayoutSession session = Evaluator.Open(House());
        SessionState before = session.State;
        DeviceBox second = new DeviceBox("b", BoxPurpose.General).WithAt(In("60")).WithHeight(BoxHeight.Parse("16 in to top above subfloor"));
        Assert.Throws<ArgumentException>(() => session.Add("room/east", second));
        Assert.Throws<ArgumentException>(() => session.Change("pinned", box => box.WithId("b")));
        Assert.Throws<ArgumentException>(() => session.ChangeWall("room/east", wall => wall.WithBoxes(new[] { second })));
        Assert.Same(before, session.State);
    }

    [Fact]
    public void Pins_HoldUntilTheyAreTakenOut()
    {
        LayoutSession session = Evaluator.Open(House());
        BoxHeight height = BoxHeight.Parse("18 in to top above subfloor");
        Assert.Throws<InvalidOperationException>(() => session.Move("pinned", In("60"), height));
        Assert.Throws<InvalidOperationException>(() => session.Move("pinned", height));
        Assert.Throws<InvalidOperationException>(() => session.Move("pinned", "room/east", In("60"), height));
        Assert.Throws<InvalidOperationException>(() => session.Remove("pinned"));
        Assert.Throws<InvalidOperationException>(() => session.Change("pinned", box => box.WithAt(In("60"))));
        session.Change("pinned", box => box.WithDevices(new[] { DeviceKind.GfciReceptacle }));
        session.Change("pinned", box => box.WithPinned(false));
        session.Move("pinned", In("60"), height);
        Assert.Equal((In("60"), height), (session.ToDwelling().FindBox("pinned")!.Box.At!.Value, session.ToDwelling().FindBox("pinned")!.Box.Height!.Value));
    }

    // A door where the box is.
    [Fact]
    public void ChangeWall_DoorOverABox_IsFoundAndUndone()
    {
        LayoutSession session = Evaluator.Open(House());
        SessionState before = session.State;
        SessionChange change = session.ChangeWall("room/north", wall => wall.WithOpenings(new[] { new Opening("door", OpeningKind.Door, In("10"), In("42")).WithHead(Level.Parse("82 in above subfloor")) }));
        Assert.Contains(change.Appeared, finding => finding.Subject == "b");
        session.Restore(before);
        Assert.Equal(DwellingGen.Lines(Evaluator.Evaluate(House()).Findings), DwellingGen.Lines(session.Findings));
    }

    private static SessionChange Edit(LayoutSession session, Random random, int step)
    {
        Dwelling now = session.ToDwelling();
        PlacedBox[] boxes = now.PlacedBoxes().Where(placed => !placed.Box.Pinned).ToArray();
        string[] walls = now.Rooms.SelectMany(room => room.Walls, (room, wall) => room.Id + "/" + wall.Id).ToArray();
        DeviceBox fresh = DwellingGen.Box(random, DwellingGen.Sixteenths, "new" + step, 1600);
        PlacedBox? one = boxes.Length == 0 ? null : boxes[random.Next(boxes.Length)];
        string address = walls[random.Next(walls.Length)];
        switch (random.Next(7))
        {
            case 0 when one is not null:
                return session.Move(one.Box.Id, address, DwellingGen.Sixteenths(random.Next(20, 1400)), fresh.Height!.Value);
            case 1 when one is not null:
                return session.Change(one.Box.Id, box => box.WithDevices(fresh.Devices).WithPurpose(fresh.Purpose).WithSize(fresh.Size));
            case 2:
                return session.ChangeWall(address, wall => wall.WithOpenings(new[] { new Opening("new" + step, OpeningKind.Door, DwellingGen.Sixteenths(200), DwellingGen.Sixteenths(700)) }));
            case 3:
                return session.ChangeWall(address, wall => wall.WithCounters(default(Items<Counter>)));
            case 4:
                return session.Change(random.Next(2) == 0 ? RuleSets.RoughInPractice : DwellingGen.Rules);
            case 5:
                return session.ChangeRoom(now.Rooms[0].Id, room => room.WithFloor(OneBox.Floor(DwellingGen.Sixteenths(random.Next(20)))));
            default:
                return session.Add(address, fresh);
        }
    }

    private static Dwelling House()
    {
        DwellingBuilder house = new("edited");
        house.Add(new Storey("ground"));
        DeviceBox box = new DeviceBox("b", BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(In("20")).WithHeight(BoxHeight.Parse("16 in to top above subfloor"));
        RoomBuilder room = house.Room("room", RoomKind.Bedroom, "ground");
        room.Wall("north", In("144")).Add(box).Add(box.WithId("pinned").WithAt(In("100")).WithPinned(true));
        room.Wall("east", In("120"));
        room.Wall("south", In("144"));
        room.Wall("west", In("120"));
        room.AddOverhead(new DeviceBox("light", BoxPurpose.Light).WithPlan(new PlanPoint(In("72"), In("60"))));
        return house.Build();
    }
}
