using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Standards;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Boxes that join a session and leave it are judged beside what they touch; a fresh evaluation of the dwelling says the same, in the same order.</summary>
public sealed class SessionBoxTests
{
    private static readonly LayoutEvaluator Evaluator = new(DwellingGen.Rules);

    private static readonly LayoutEvaluator OfWholeDwellings = new(DwellingGen.Rules, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true));

    [Fact]
    public void AddAndRemove_BoxesOfAnyKind_AgreeWithAFreshEvaluationInItsOrder() => Prop.ForAll(DwellingGen.Seeds, seed =>
    {
        Random random = new(seed);
        LayoutEvaluator evaluator = seed % 2 == 0 ? Evaluator : OfWholeDwellings;
        LayoutSession session = evaluator.Open(seed % 3 == 0 ? DwellingGen.Dwelling(seed) : OrdinaryHouses.Make(seed, 3 + (seed % 5)));
        List<DeviceBox> away = [];
        for (int step = 0; step < 14; step++)
        {
            string[] before = Lines(session.Findings);
            string[] subjects = Subjects(session.Findings);
            SessionChange change = Change(session, random, step, away);
            string[] after = Lines(session.Findings);
            Assert.Equal(Lines(evaluator.Evaluate(session.ToDwelling()).Findings), after);
            Assert.Equal(Subjects(session.Findings), subjects.Except(change.Cleared.Select(DwellingGen.Subject)).Union(change.Appeared.Select(DwellingGen.Subject)).Order(StringComparer.Ordinal));
            Assert.Empty(after.Except(before).Except(change.Changed.Concat(change.Appeared).Select(DwellingGen.Line)));
        }

        return true;
    }).Check(Tries.Config(400));

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
        switch (random.Next(5))
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
            default:
                DeviceBox more = some.Box.WithId("more" + step);
                return session.Add(other.Address, other.Box.At is { } place && place + aside > Distance.Zero ? more.WithAt(place + aside) : more);
        }
    }

    private static string[] Subjects(IEnumerable<Finding> findings) => [.. findings.Select(DwellingGen.Subject).Distinct().Order(StringComparer.Ordinal)];

    private static string[] Lines(IEnumerable<Finding> findings) => [.. findings.Select(DwellingGen.Line)];
}
