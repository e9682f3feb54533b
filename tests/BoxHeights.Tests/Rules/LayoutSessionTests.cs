using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Cases;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

public sealed class LayoutSessionTests
{
    private static readonly LayoutEvaluator Evaluator = new(DwellingGen.Rules);

    [Fact]
    public void Changes_OfAnyKind_AgreeWithAFreshEvaluation() => Prop.ForAll(DwellingGen.Seeds, seed =>
    {
        Random random = new(seed);
        LayoutSession session = Evaluator.Open(DwellingGen.Dwelling(seed));
        string[] before = DwellingGen.Lines(session.Findings);
        for (int step = 0; step < 12; step++)
        {
            Dwelling now = session.ToDwelling();
            SessionChange change = Change(session, now, random, step);
            string[] after = DwellingGen.Lines(session.Findings);
            Assert.Equal(DwellingGen.Lines(Evaluator.Evaluate(session.ToDwelling()).Findings), after);
            Assert.Equal(DwellingGen.Lines(session.Evaluate().Findings), after);

            string[] keys = Keys(before).Except(change.Cleared.Select(DwellingGen.Subject)).Concat(change.Appeared.Select(DwellingGen.Subject)).Order(StringComparer.Ordinal).ToArray();
            Assert.Equal(Keys(after).Order(StringComparer.Ordinal), keys);
            string[] changed = change.Changed.Concat(change.Appeared).Select(DwellingGen.Line).ToArray();
            Assert.Empty(after.Except(before).Except(changed));
            before = after;
        }

        return true;
    }).Check(Tries.Always(60));

    // 30 in of wall between two doors have no outlet; one 68 in off, on the next space, would serve them if read so, one 80 in off wouldn't.
    [Fact]
    public void Move_ThatChangesOnlyWhoDisputesAFinding_IsAChange()
    {
        DeviceBox box = new DeviceBox("b", BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(CaseFile.Inches("130")).WithHeight(BoxHeight.ToTop(CaseFile.Inches("16"), Datum.Subfloor));
        DwellingBuilder house = new("doors");
        house.Add(new Storey("ground"));
        RoomBuilder room = house.Room("r", RoomKind.Bedroom, "ground");
        room.Wall("n", CaseFile.Inches("144")).Add(new Opening("d1", OpeningKind.Door, CaseFile.Inches("30"), CaseFile.Inches("62"))).Add(new Opening("d2", OpeningKind.Door, CaseFile.Inches("92"), CaseFile.Inches("124"))).Add(box);
        room.Wall("e", CaseFile.Inches("120"));
        room.Wall("s", CaseFile.Inches("144"));
        room.Wall("w", CaseFile.Inches("120"));
        LayoutSession session = Evaluator.Open(house.Build());
        Finding Between(IEnumerable<Finding> findings) => Assert.Single(findings, finding => finding.RuleId == "wall-outlets" && finding.Subject == "r/n 62 in to 92 in");
        Assert.Equal(["next-space"], Between(session.Findings).DisputedBy);
        SessionChange change = session.Move("b", CaseFile.Inches("142"), box.Height!.Value);
        Assert.Empty(Between(change.Changed).DisputedBy);
    }

    [Fact]
    public void Move_PassingBoxToWhereItPasses_AllocatesNothing()
    {
        LayoutSession session = Evaluator.Open(Clean());
        Assert.Empty(session.Findings);
        BoxHeight[] heights = Enumerable.Range(0, 8).Select(i => BoxHeight.ToTop(CaseFile.Inches("18-1/8") + Distance.FromTicks(i), Datum.Subfloor)).ToArray();
        Distance[] places = Enumerable.Range(0, 8).Select(i => CaseFile.Inches("40") + Distance.FromTicks(i * 1000)).ToArray();
        Assert.Equal(0, Allocated(() =>
        {
            for (int i = 0; i < 1000; i++)
            {
                session.Move("a", places[i & 7], heights[i & 7]);
            }
        }));
        Assert.Empty(session.Findings);
    }

    [Fact]
    public void JudgeAll_BoxesThatPass_AllocatesNothing()
    {
        LayoutSession session = Evaluator.Open(Clean());
        int found = 0;
        Assert.Equal(0, Allocated(() =>
        {
            for (int i = 0; i < 100; i++)
            {
                found += session.Now.JudgeAll();
            }
        }));
        Assert.Equal(0, found);
    }

    // What is found again of a group whose boxes haven't moved is the finding that is there; once one of them moves it is made anew, and says what a fresh evaluation says.
    [Fact]
    public void JudgeAll_BoxesOffTheirLevelThatHaventMoved_AllocatesNothing()
    {
        LayoutSession session = Evaluator.Open(Clean());
        foreach (string height in new[] { "19", "19-1/2", "17" })
        {
            session.Move("a", BoxHeight.ToTop(CaseFile.Inches(height), Datum.Subfloor));
            string[] found = [.. session.Findings.Select(finding => finding.ToString())];
            Assert.Contains(session.Findings, finding => finding.RuleId == "uniform-level");
            int count = session.Now.JudgeAll();
            Assert.Equal(0, Allocated(() => count = session.Now.JudgeAll()));
            Assert.Equal(found.Length, count);
            Assert.Equal(found, session.Findings.Select(finding => finding.ToString()));
            Assert.Equal(found, Evaluator.Evaluate(session.ToDwelling()).Findings.Select(finding => finding.ToString()));
        }
    }

    [Fact]
    public void Move_NoSuchBoxOrLeftOfTheWall_Throws()
    {
        LayoutSession session = Evaluator.Open(Clean());
        Assert.Throws<ArgumentException>(() => session.Move("none", OneBox.Middle, default));
        Assert.Throws<ArgumentOutOfRangeException>(() => session.Move("a", Distance.FromTicks(-1), default));
        Assert.Throws<ArgumentException>(() => session.Add("room/no-such-wall", new DeviceBox("new", BoxPurpose.General)));
        Assert.Throws<ArgumentException>(() => session.Remove("none"));
    }

    // It stays on its stud, wherever that is.
    [Fact]
    public void Move_ToAHeightAlone_KeepsPlaceAndStud()
    {
        Dwelling house = Clean();
        house = house.WithBoxes(box => box.Id == "b" ? box.WithAt(null).WithMounting(new Mounting(MountingMethod.Stud).WithStud(5).WithSide(StudSide.Left)) : box.Id == "c" ? box.WithAt(null) : box);
        LayoutSession session = Evaluator.Open(house);
        foreach (string id in new[] { "a", "b", "c" })
        {
            session.Move(id, BoxHeight.ToTop(CaseFile.Inches("18-1/4"), Datum.Subfloor));
            DeviceBox before = house.FindBox(id)!.Box;
            Assert.Equal(before.WithHeight(BoxHeight.ToTop(CaseFile.Inches("18-1/4"), Datum.Subfloor)), session.ToDwelling().FindBox(id)!.Box);
        }

        Assert.Equal(DwellingGen.Lines(session.Evaluate().Findings), DwellingGen.Lines(session.Findings));
        Assert.Throws<ArgumentException>(() => session.Move("none", default));
        ArgumentOutOfRangeException error = Assert.Throws<ArgumentOutOfRangeException>(() => session.Move("c", BoxHeight.ToTop(Distance.MaxValue, Datum.Subfloor)));
        Assert.Equal("height", error.ParamName);
    }

    // A height above the splash needs a counter behind it, which a move can leave.
    [Fact]
    public void Move_OffTheCounterThatItsHeightIsTakenFrom_IsAFaultAtOnce()
    {
        foreach (Datum datum in new[] { Datum.Countertop, Datum.SplashTop })
        {
            OneBox box = new OneBox
            {
                Rules = RuleSets.RoughInPractice,
                Wall = wall => wall.WithCounters(new[] { new Counter("counter", CounterKind.Kitchen, CaseFile.Inches("60"), CaseFile.Inches("90")) { Top = new Level(CaseFile.Inches("36"), Datum.FinishedFloor) } })
                    .WithFinishes(new[] { new Finish("splash", FinishKind.Tile, CaseFile.Inches("60"), CaseFile.Inches("90")) { Top = new Level(CaseFile.Inches("4"), Datum.Countertop) } }),
            }.At(BoxHeight.ToBottom(CaseFile.Inches("8"), datum));
            LayoutSession session = new LayoutEvaluator(box.Rules).Open(box.Build());
            Assert.DoesNotContain(session.Findings, finding => finding.Fault is not null);
            SessionChange change = session.Move(OneBox.Id, CaseFile.Inches("20"), BoxHeight.ToBottom(CaseFile.Inches("8"), datum));
            Assert.Contains(change.Appeared, finding => finding.Fault?.Kind == LayoutFaultKind.UnknownReference);
            Assert.Equal(DwellingGen.Lines(session.Evaluate().Findings), DwellingGen.Lines(session.Findings));
        }
    }

    private static SessionChange Change(LayoutSession session, Dwelling now, Random random, int step)
    {
        PlacedBox[] boxes = now.PlacedBoxes().Where(placed => !placed.Box.Pinned).ToArray();
        if (boxes.Length == 0)
        {
            return SessionChange.None;
        }

        PlacedBox one = boxes[random.Next(boxes.Length)];
        int length = (int)(now.Rooms.SelectMany(room => room.Walls, (room, wall) => (Address: room.Id + "/" + wall.Id, wall.Length)).First(wall => wall.Address == one.Address).Length.Ticks / 127_000);
        DeviceBox other = DwellingGen.Box(random, DwellingGen.Sixteenths, "new" + step, length);
        switch (random.Next(6))
        {
            case 0:
                return session.Add(one.Address, other);
            case 1 when boxes.Length > 1:
                return session.Remove(one.Box.Id);
            case 2:
                // Beyond the end of the wall, and back some other time.
                return session.Move(one.Box.Id, DwellingGen.Sixteenths(length + 1), other.Height!.Value);
            case 3 when one.Box is { At: { } at, Height: { } height }:
                return session.Move(one.Box.Id, at, height.WithValue(height.Value + DwellingGen.Sixteenths(random.Next(-6, 7))));
            default:
                return session.Move(one.Box.Id, DwellingGen.Sixteenths(random.Next(0, length)), other.Height!.Value);
        }
    }

    private static IEnumerable<string> Keys(string[] lines) => lines.Select(line => string.Join('|', line.Split('|').Take(3)));

    private static Dwelling Clean()
    {
        DwellingBuilder dwelling = new("clean");
        dwelling.Add(new Storey("ground")
        {
            Ceiling = new Ceiling { Framing = CaseFile.Inches("97-1/8"), Board = CaseFile.Inches("5/8") },
            Boards = new BoardLayout { Widths = new[] { CaseFile.Inches("48"), CaseFile.Inches("48") } },
            Studs = new StudLayout { Spacing = CaseFile.Inches("16") },
        });
        WallBuilder wall = dwelling.Room("room", RoomKind.Bedroom, "ground").With(room => room.WithFloor(OneBox.Floor(CaseFile.Inches("1/2")))).Wall("wall", CaseFile.Inches("144"));
        BoxSize size = new(CaseFile.Inches("2-1/4"), CaseFile.Inches("3-5/8"));

        // A splash that the boxes are clear of: one on it would be too far behind.
        wall.With(one => one.WithBoards(new BoardLayout { Widths = new[] { CaseFile.Inches("48"), CaseFile.Inches("48") }, Thickness = CaseFile.Inches("1/2") })
            .WithFinishes(new[]
            {
                new Finish("splash", FinishKind.Tile, CaseFile.Inches("30"), CaseFile.Inches("100"))
                {
                    Bottom = new Level(CaseFile.Inches("36"), Datum.Subfloor), Top = new Level(CaseFile.Inches("40"), Datum.Subfloor),
                    Thickness = CaseFile.Inches("3/8"), Bed = CaseFile.Inches("1/8"),
                },
            }));
        foreach ((string id, string at) in new[] { ("a", "40"), ("b", "80"), ("c", "120") })
        {
            wall.Add(new DeviceBox(id, BoxPurpose.General)
            {
                Devices = new[] { DeviceKind.SingleReceptacle },
                Size = size,
                At = CaseFile.Inches(at),
                Height = BoxHeight.ToTop(CaseFile.Inches("18-1/8"), Datum.Subfloor),
                SetFor = CaseFile.Inches("1/2"),
            });
        }

        wall.Add(new DeviceBox("s", BoxPurpose.Switch)
        {
            Devices = new[] { DeviceKind.ToggleSwitch },
            Size = size,
            At = CaseFile.Inches("20"),
            Height = BoxHeight.ToTop(CaseFile.Inches("48"), Datum.Subfloor),
            Cables = new[] { CableType.Parse("14-2") },
            Volume = Volume.FromCubicInches(18m),
        });
        return dwelling.Build();
    }

    private static long Allocated(Action action)
    {
        action();
        action();
        long before = GC.GetAllocatedBytesForCurrentThread();
        action();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
