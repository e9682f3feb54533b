using System;
using System.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>What a remedy does to each box, how a session carries it out, and why there is none.</summary>
public sealed class BoxChangeTests
{
    private static readonly LayoutEvaluator Evaluator = new(DwellingGen.Rules);

    // The changes one after another, the remedy at once, and a session that carries it out end in the same dwelling; the session says what is found in it.
    [Fact]
    public void ChangesIn_CarriedOutOneByOne_AreTheRemedy() => Prop.ForAll(DwellingGen.Seeds, seed =>
    {
        Dwelling house = DwellingGen.Dwelling(seed);
        foreach (Remedy remedy in Evaluator.Evaluate(house).Causes.SelectMany(cause => cause.Remedies))
        {
            Items<BoxChange> changes = remedy.ChangesIn(house);
            Dwelling after = remedy.ApplyTo(house);
            Assert.Equal(after, changes.Aggregate(house, (now, change) => change.ApplyTo(now)));
            Assert.Equal(changes.Select(change => (change.Before, change.After)), changes.Select(change => (house.FindBox(change.Id)?.Box, after.FindBox(change.Id)!)));
            Assert.Equal(house.PlacedBoxes().Except(after.PlacedBoxes()).Count(), changes.Count(change => change.Before is { } before && !before.Equals(change.After.Box)));

            LayoutSession session = Evaluator.Open(house);
            session.Apply(remedy);
            Assert.Equal(after, session.ToDwelling());
            Assert.Equal(DwellingGen.Lines(Evaluator.Evaluate(after).Findings), DwellingGen.Lines(session.Findings));
        }

        return true;
    }).Check(Tries.Config(60));

    // One for each box that has any, the first one, and no box twice.
    [Fact]
    public void BestRemedies_OfEachCause_AreOneForEachBox() => Prop.ForAll(DwellingGen.Seeds, seed =>
    {
        Dwelling house = DwellingGen.Dwelling(seed);
        foreach (Cause cause in Evaluator.Evaluate(house).Causes)
        {
            string[][] best = [.. cause.BestRemedies.Select(remedy => string.Join(",", remedy.ChangesIn(house).Select(change => change.Id))).Select(ids => ids.Split(','))];
            string[] touched = [.. best.SelectMany(ids => ids)];
            string[] all = [.. cause.Remedies.SelectMany(remedy => remedy.ChangesIn(house)).Select(change => change.Id).Distinct()];
            Assert.Equal(touched.Distinct(), touched);
            Assert.All(cause.Remedies, remedy => Assert.True(remedy is NoneFound || cause.BestRemedies.Contains(remedy) || remedy.ChangesIn(house).Exists(change => touched.Contains(change.Id))));
            Assert.Empty(touched.Except(all));
            Assert.All(cause.BestRemedies, one => Assert.Same(one, cause.Remedies.Find(remedy => remedy.ChangesIn(house).Exists(change => one.ChangesIn(house).Exists(other => other.Id == change.Id)))));
            Assert.Equal(cause.NoRemedy is null, best.Length > 0);
        }

        return true;
    }).Check(Tries.Config(60));

    [Fact]
    public void Apply_AllThatIsMended_EndsInTheMendedDwelling() => Prop.ForAll(DwellingGen.Seeds, seed =>
    {
        Dwelling house = DwellingGen.Dwelling(seed);
        MendedDwelling mended = Evaluator.Evaluate(house).Mend();
        LayoutSession session = Evaluator.Open(house);
        foreach (MendedBox box in mended.Boxes)
        {
            session.Apply(box);
        }

        Assert.Equal(mended.Dwelling, session.ToDwelling());
        return true;
    }).Check(Tries.Config(60));

    [Fact]
    public void Apply_ABoxThatIsThereAlready_ChangesNothingOfTheSession()
    {
        Dwelling house = new OneBox().At(Center("16")).Build();
        LayoutSession session = Evaluator.Open(house);
        PlacedBox more = new(OneBox.WallAddress, house.FindBox(OneBox.Id)!.Box.WithId("more").WithAt(Distance.FromInches(20)));
        AddBox twice = new(new[] { more, more }, $"twice");

        Assert.Throws<ArgumentException>(() => session.Apply(twice));
        Assert.Equal(house, session.ToDwelling());
        session.Add(more);
        Assert.Equal(house.WithBox(more), session.ToDwelling());
        Assert.Throws<ArgumentException>(() => session.Apply(twice));
        Assert.Throws<ArgumentException>(() => twice.ChangesIn(house)[0].ApplyTo(house.WithBox(more)));
        Assert.Throws<ArgumentNullException>(() => session.Apply((Remedy)null!));
        Assert.Throws<ArgumentNullException>(() => twice.ChangesIn(null!));
    }

    [Fact]
    public void Apply_ABoxThatIsPinnedOrGoneMeanwhile_Throws()
    {
        OneBox high = Band("40").At(Center("50"));
        Dwelling house = high.Build();
        BoxChange change = Assert.Single(Assert.Single(Assert.Single(high.Evaluate().Causes).Remedies).ChangesIn(house));
        LayoutSession session = new LayoutEvaluator(high.Rules).Open(house);
        session.Change(OneBox.Id, box => box.WithPinned(true));
        Assert.Throws<InvalidOperationException>(() => session.Apply(change));
        Assert.Throws<ArgumentException>(() => change.ApplyTo(house.WithoutBox(OneBox.Id)));
    }

    // A caller offers to unpin, to fill in, to look elsewhere or to give up; that more tries may do is in BoundedWorkTests.
    [Fact]
    public void NoRemedy_ForEachReason_IsTold()
    {
        OneBox high = Band("40").At(Center("50"));
        Assert.Null(NoRemedy(high));
        Assert.Equal(NoRemedyReason.Stays, NoRemedy(high with { Box = high.Box.WithPinned(true) }));
        Assert.Equal(NoRemedyReason.Stays, NoRemedy(high with { Box = high.Box.WithExisting(true) }));
        Assert.Equal(NoRemedyReason.NothingFound, NoRemedy(high with { Rules = high.Rules.With(Row("other") with { Low = CaseFile.Inches("45") }) }));
        Assert.Equal(NoRemedyReason.ByOtherMeans, NoRemedy(high with { Rules = OneBox.Only(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023), "box-gap"), Box = high.Box.WithBoardGap(CaseFile.Inches("1/2")) }));
        Assert.Equal(NoRemedyReason.FaultyDescription, NoRemedy(high with { Box = high.Box.WithHeight(null) }));

        Dwelling bare = RoomSketch.House("bedroom", []);
        Cause unjudged = Assert.Single(new LayoutEvaluator(OneBox.Only(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023), "wall-outlets")).Evaluate(bare).Causes);
        Assert.Equal((NoRemedyReason.NotJudged, 0), (unjudged.NoRemedy, unjudged.Remedies.Count));
    }

    private static NoRemedyReason? NoRemedy(OneBox box)
    {
        Cause cause = box.Evaluate().Causes[0];
        NoRemedyReason? reason = cause.NoRemedy;
        Assert.Equal(reason is not (null or NoRemedyReason.NotJudged or NoRemedyReason.FaultyDescription) ? [reason.Value] : [], cause.Remedies.OfType<NoneFound>().Select(none => none.Reason));
        return reason;
    }

    private static OneBox Band(string most) => new() { Rules = new([Row("band") with { High = CaseFile.Inches(most) }]) };

    private static HeightBand Row(string id) => new(id, id, Severity.Violation, new("House rules"), Datum.Subfloor);

    private static BoxHeight Center(string inches) => BoxHeight.ToCenter(CaseFile.Inches(inches), Datum.Subfloor);
}
