using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Standards;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Boxes that join a session, leave it and are described otherwise are judged beside what they touch; a fresh evaluation of the dwelling says the same, in the same order.</summary>
public sealed class SessionBoxTests
{
    private static readonly LayoutEvaluator Evaluator = new(DwellingGen.Rules);

    private static readonly LayoutEvaluator OfWholeDwellings = new(DwellingGen.Rules, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true));

    [Fact]
    public void AddRemoveAndChange_BoxesOfAnyKind_AgreeWithAFreshEvaluationInItsOrder() => Prop.ForAll(DwellingGen.Seeds, seed =>
    {
        Random random = new(seed);
        LayoutEvaluator evaluator = seed % 2 == 0 ? Evaluator : OfWholeDwellings;
        LayoutSession session = evaluator.Open(seed % 3 == 0 ? DwellingGen.Dwelling(seed) : OrdinaryHouses.Make(seed, 3 + (seed % 5)));
        List<DeviceBox> away = [];
        string[] before = Lines(session.Findings);
        for (int step = 0; step < 14; step++)
        {
            string[] subjects = Subjects(session.Findings);
            SessionChange change = Change(session, random, step, away);
            string[] after = Lines(session.Findings);
            Assert.Equal(Lines(evaluator.Evaluate(session.ToDwelling()).Findings), after);
            Assert.Equal(Subjects(session.Findings), subjects.Except(change.Cleared.Select(DwellingGen.Subject)).Union(change.Appeared.Select(DwellingGen.Subject)).Order(StringComparer.Ordinal));
            Assert.Empty(after.Except(before).Except(change.Changed.Concat(change.Appeared).Select(DwellingGen.Line)));
            before = after;
        }

        return true;
    }).Check(Tries.Config(400));

    // What a change costs is what it touches: a few boxes and the spaces that they are in, not the house. Counted in bytes, as everything that is judged leaves some.
    [Fact]
    public void ChangeAndRestore_OfABox_CostASmallPartOfTheHouse()
    {
        Dwelling house = OrdinaryHouses.Make(5, 14);
        LayoutSession session = Evaluator.Open(house);
        int small = 0;
        PlacedBox[] some = [.. house.PlacedBoxes().Where(placed => placed.Box is { Pinned: false, Height: not null, Existing: false })];
        foreach (PlacedBox placed in some)
        {
            SessionState before = session.State;
            long change = Allocated(() => session.Change(placed.Box.Id, box => box.WithCables(CableType.Parse("12-2"), CableType.Parse("12-2"))));
            long back = Allocated(() => session.Restore(before));
            small += (change * 10) + (back * 3) < 2 * Allocated(() => Evaluator.Evaluate(house)) ? 1 : 0;
            Assert.Equal(house, session.ToDwelling());
        }

        Assert.InRange(small, some.Length * 9 / 10, some.Length);

        static long Allocated(Action action)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            action();
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }
    }

    // What was said of a box stays readable after it left.
    [Fact]
    public void Remove_BoxThatFails_ClearsWhatWasFoundOfIt()
    {
        Dwelling house = OrdinaryHouses.Make(3, 4);
        PlacedBox some = house.PlacedBoxes().First(placed => placed.Box is { Height: not null, At: not null, Existing: false });
        DeviceBox high = some.Box.WithId("too high").WithHeight(BoxHeight.ToTop(Distance.FromInches(89), Datum.Subfloor));
        LayoutSession session = Evaluator.Open(house);
        SessionChange added = session.Add(some.Address, high);
        SessionChange removed = session.Remove(high.Id);
        Finding[] own = [.. added.Appeared.Where(finding => finding.Subject == high.Id)];
        Assert.NotEmpty(own);
        Assert.Equal(Lines(own), Lines(removed.Cleared.Where(finding => finding.Subject == high.Id)));
        Assert.Equal(house, session.ToDwelling());
        Assert.Throws<ArgumentException>(() => session.Remove(high.Id));
        Assert.Throws<ArgumentException>(() => session.Move(high.Id, high.Height!.Value));
    }

    // Ids that are taken, names of rooms and surfaces that aren't there go the whole road, and say what they said.
    [Fact]
    public void Add_UnderTheIdOfARoom_IsAFault()
    {
        Dwelling house = OrdinaryHouses.Make(3, 4);
        PlacedBox some = house.PlacedBoxes().First(placed => placed.Box.At is not null);
        LayoutSession session = Evaluator.Open(house);
        SessionChange change = session.Add(some.Address, some.Box.WithId(house.Rooms[0].Id));
        Assert.Contains(change.Appeared, finding => finding.Fault?.Kind == LayoutFaultKind.DuplicateId);
        Assert.Throws<ArgumentException>(() => session.Add("nowhere/at all", some.Box.WithId("new")));
    }

    private static SessionChange Change(LayoutSession session, Random random, int step, List<DeviceBox> away)
    {
        IReadOnlyList<PlacedBox> boxes = session.ToDwelling().PlacedBoxes();
        PlacedBox some = boxes[random.Next(boxes.Count)];
        PlacedBox other = boxes[random.Next(boxes.Count)];
        Distance aside = Distance.FromInches(random.Next(-20, 21));
        switch (random.Next(9))
        {
            case 0 or 1 when boxes.Count > 3 && !some.Box.Pinned:
                away.Add(some.Box);
                return session.Remove(some.Box.Id);
            case 2 when away.Count > 0:
                DeviceBox back = away[away.Count - 1];
                away.RemoveAt(away.Count - 1);
                return session.Add(other.Address, back);
            case 3 when some.Box is { Pinned: false, At: { } at, Height: { } height } && at + aside > Distance.Zero:
                return session.Move(some.Box.Id, at + aside, height.WithValue(height.Value + Distance.FromInches(random.Next(-2, 3))));
            case 4 or 5 when !some.Box.Pinned:
                return session.Change(some.Box.Id, box => Otherwise(random, box, other.Box));
            case 6 when some.Box is { Pinned: false, Height: { } stated }:
                return session.Move(some.Box.Id, BoxHeight.To((Edge)random.Next(3), stated.Value + Distance.FromInches(random.Next(-2, 3)), random.Next(2) == 0 ? Datum.Subfloor : Datum.FinishedFloor));
            case 7 when some.Box is { Pinned: false, Plan: { } plan }:
                return session.MoveInPlan(some.Box.Id, new(plan.Right + aside, plan.Into));
            default:
                DeviceBox more = some.Box.WithId("more" + step);
                return session.Add(other.Address, other.Box.At is { } place && place + aside > Distance.Zero ? more.WithAt(place + aside) : more);
        }
    }

    /// <summary>A box as another is in some respect.</summary>
    private static DeviceBox Otherwise(Random random, DeviceBox box, DeviceBox other) => random.Next(8) switch
    {
        0 => box.WithDevices(other.Devices),
        1 => box.WithPurpose(other.Purpose).WithDevices(other.Devices),
        2 => box.WithSize(other.Size).WithKind(other.Kind).WithVolume(other.Volume),
        3 => box.WithCables(other.Cables).WithVolume(other.Volume),
        4 => box.WithExisting(!box.Existing),
        5 => box.WithUntouched(box.Untouched == true ? null : true),
        6 => box.WithHeight(other.Height).WithMeasured(null),
        _ => box.WithMounting(null).WithAt(box.At is { } at ? at + Distance.FromInches(random.Next(0, 30)) : null),
    };

    private static string[] Subjects(IEnumerable<Finding> findings) => [.. findings.Select(DwellingGen.Subject).Distinct().Order(StringComparer.Ordinal)];

    private static string[] Lines(IEnumerable<Finding> findings) => [.. findings.Select(DwellingGen.Line)];
}
