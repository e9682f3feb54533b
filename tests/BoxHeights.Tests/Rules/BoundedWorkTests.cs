using System;
using System.Linq;
using System.Threading;
using BoxHeights.Tests.Standards;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>A description larger than a cap is turned away with a finding that names the cap; remedies end after so many tries and say so; whoever asked may give up.</summary>
public sealed class BoundedWorkTests
{
    private static readonly LayoutEvaluator Evaluator = new(DwellingGen.Rules);

    [Theory]
    [InlineData("MostBoxesOnASurface", "r/w", 4)]
    [InlineData("MostPartsOfAWall", "r/w", 3)]
    [InlineData("MostPartsOfARoom", "r", 9)]
    [InlineData("MostPartsOfADwelling", "capped", 11)]
    public void Evaluate_LargerThanACap_FindsThatAloneAndNamesTheCap(string cap, string subject, int holds)
    {
        Dwelling house = Small();
        LayoutEvaluator within = new(DwellingGen.Rules, With(cap, holds));
        Assert.Equal(Evaluator.Evaluate(house).Findings.Select(DwellingGen.Line), within.Evaluate(house).Findings.Select(DwellingGen.Line));

        Evaluation beyond = new LayoutEvaluator(DwellingGen.Rules, With(cap, holds - 1)).Evaluate(house);
        Finding finding = Assert.Single(beyond.Findings);
        Assert.Equal((LayoutFaultKind.BeyondMeasure, subject), (finding.Fault!.Kind, finding.Subject));
        Assert.Contains(cap, finding.Message, StringComparison.Ordinal);
        Assert.True(beyond.HasFaults);
        Assert.Equal(house, beyond.Dwelling);
        Assert.Contains(cap, beyond.ToText(), StringComparison.Ordinal);
        Assert.NotEqual(within.Evaluate(house).Stamp, beyond.Stamp);
        Assert.Equal(house, new LayoutEvaluator(DwellingGen.Rules, With(cap, holds - 1)).Open(house).ToDwelling());
    }

    [Fact]
    public void Options_CapsOfNothing_Throw()
    {
        foreach (string cap in new[] { "MostBoxesOnASurface", "MostPartsOfAWall", "MostPartsOfARoom", "MostPartsOfADwelling", "MostTriesForACause" })
        {
            Assert.Contains(cap, Assert.Throws<ArgumentException>(() => new LayoutEvaluator(DwellingGen.Rules, With(cap, 0))).Message, StringComparison.Ordinal);
        }
    }

    // With one try for each cause, boxes that nothing was found for by then are named with the option, and not told to have no place.
    [Fact]
    public void FindRemedies_MoreThanMayBeTried_SaysWhatWasNotLookedAt()
    {
        Dwelling house = OrdinaryHouses.Make(5, 8);
        Evaluation all = Evaluator.Evaluate(house);
        Evaluation few = new LayoutEvaluator(DwellingGen.Rules, With("MostTriesForACause", 1)).Evaluate(house);
        Assert.Equal(all.Findings.Select(DwellingGen.Line), few.Findings.Select(DwellingGen.Line));
        NoneFound[] left = [.. few.Causes.SelectMany(cause => cause.Remedies).OfType<NoneFound>().Where(none => none.Text.Contains("MostTriesForACause", StringComparison.Ordinal))];
        Assert.NotEmpty(left);
        Assert.All(left, none => Assert.StartsWith("after 1 tries ", none.Text, StringComparison.Ordinal));
        Assert.Equal(left, few.Causes.SelectMany(cause => cause.Remedies).OfType<NoneFound>().Where(none => none.Reason == NoRemedyReason.OutOfTries));
        Assert.DoesNotContain(all.Causes.SelectMany(cause => cause.Remedies), remedy => remedy is NoneFound { Reason: NoRemedyReason.OutOfTries } || remedy.Text.Contains("MostTriesForACause", StringComparison.Ordinal));
    }

    [Fact]
    public void Cancelled_BeforeItBegins_EndsAndLeavesAllAsItWas()
    {
        using CancellationTokenSource source = new();
        source.Cancel();
        Dwelling house = OrdinaryHouses.Make(5, 8);
        Assert.Throws<OperationCanceledException>(() => Evaluator.Evaluate(house, source.Token));
        RoughInPlanner planner = new(DwellingGen.Rules);
        Assert.Throws<OperationCanceledException>(() => planner.Plan(house, source.Token));
        Assert.Throws<OperationCanceledException>(() => planner.Plan(house, house.Rooms[0].Id, source.Token));

        Evaluation evaluation = Evaluator.Evaluate(house);
        Cause cause = evaluation.Causes.First(one => one.Remedies.Any(remedy => remedy is MoveBoxes));
        Evaluation again = Evaluator.Evaluate(house);
        Cause same = again.Causes.First(one => one.Title == cause.Title);
        Assert.Throws<OperationCanceledException>(() => same.FindRemedies(source.Token));
        Assert.Throws<OperationCanceledException>(() => again.Mend(source.Token));
        Assert.Throws<OperationCanceledException>(() => MarkSheet.For(again, MarkOptions.Default, source.Token));
        Assert.Equal(cause.Remedies.Select(remedy => remedy.Text), same.FindRemedies(CancellationToken.None).Select(remedy => remedy.Text));
        Assert.Equal(MarkSheet.For(evaluation).ToMarkdown(), MarkSheet.For(again).ToMarkdown());
        Assert.Equal(evaluation.ToText(), again.ToText());
    }

    // Every paper that mends or looks for remedies ends when it is told to, whether the dwelling is mended already or not, and afterwards says what it says of an evaluation that nobody ended.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Cancelled_PapersAndReports_EndAndSayTheSameTheNextTime(bool isMended)
    {
        using CancellationTokenSource source = new();
        source.Cancel();
        Dwelling house = OrdinaryHouses.Make(5, 8);
        Evaluation whole = Evaluator.Evaluate(house);
        Evaluation ended = Evaluator.Evaluate(house);
        if (isMended)
        {
            _ = ended.Mend();
        }

        Func<Evaluation, CancellationToken, string>[] papers =
        [
            (evaluation, token) => OrderList.For(evaluation, token).ToMarkdown(),
            (evaluation, token) => CeilingPlan.For(evaluation, token).ToMarkdown(),
            (evaluation, token) => CutoutList.For(evaluation, token).ToMarkdown(),
            (evaluation, token) => StoryPole.For(evaluation, token).ToMarkdown(),
            (evaluation, token) => MarkSheet.For(evaluation, MarkOptions.Default, token).ToMarkdown(),
            (evaluation, token) => evaluation.ToText(token),
            (evaluation, token) => evaluation.Mend(CancellationToken.None).ToText(token),
            (evaluation, token) => string.Join('\n', EvaluationReport.Of(evaluation, true, token).Causes.SelectMany(cause => cause.Remedies).Select(remedy => remedy.Text)),
            (evaluation, token) => Booklet.For(evaluation).ToHtml(PictureOptions.Default, token),
        ];
        string[] usual =
        [
            OrderList.For(whole).ToMarkdown(), CeilingPlan.For(whole).ToMarkdown(), CutoutList.For(whole).ToMarkdown(), StoryPole.For(whole).ToMarkdown(), MarkSheet.For(whole).ToMarkdown(),
            whole.ToText(), whole.Mend().ToText(), string.Join('\n', EvaluationReport.Of(whole).Causes.SelectMany(cause => cause.Remedies).Select(remedy => remedy.Text)), Booklet.For(whole).ToHtml(),
        ];
        for (int i = 0; i < papers.Length; i++)
        {
            Assert.ThrowsAny<OperationCanceledException>(() => papers[i](ended, source.Token));
            Assert.Equal(usual[i], papers[i](ended, CancellationToken.None));
        }
    }

    // What was ended in its middle is worked out again from the start: remedies that were tried out by then leave no trace.
    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(3)]
    public void Cancelled_InTheMiddleOfRemedies_AreTheSameTheNextTime(int judged)
    {
        Dwelling house = OrdinaryHouses.Make(7, 8);
        using CancellationTokenSource source = new();
        int left = int.MaxValue;
        RuleSet rules = DwellingGen.Rules + new RuleSet([new Counting(() =>
        {
            if (left-- == 0)
            {
                source.Cancel();
            }
        })]);
        LayoutEvaluator evaluator = new(rules);
        Evaluation evaluation = evaluator.Evaluate(house);
        string text = evaluator.Evaluate(house).ToText();
        left = judged;
        try
        {
            foreach (Cause cause in evaluation.Causes)
            {
                _ = cause.FindRemedies(source.Token);
            }
        }
        catch (OperationCanceledException)
        {
            // It was ended: now from the start.
        }

        Assert.True(source.IsCancellationRequested);
        Assert.Equal(text, evaluation.ToText());
    }

    private static EvaluatorOptions With(string cap, int most) => cap switch
    {
        "MostBoxesOnASurface" => EvaluatorOptions.Default.WithMostBoxesOnASurface(most),
        "MostPartsOfAWall" => EvaluatorOptions.Default.WithMostPartsOfAWall(most),
        "MostPartsOfARoom" => EvaluatorOptions.Default.WithMostPartsOfARoom(most),
        "MostPartsOfADwelling" => EvaluatorOptions.Default.WithMostPartsOfADwelling(most),
        _ => EvaluatorOptions.Default.WithMostTriesForACause(most),
    };

    /// <summary>One storey and one room: a wall with a window, and a counter with a sink, and four boxes; a fixture.</summary>
    private static Dwelling Small()
    {
        Wall wall = new Wall("w", Distance.FromFeet(20))
            .WithOpenings(new[] { new Opening("o", OpeningKind.Window, Distance.FromInches(150), Distance.FromInches(180)) })
            .WithCounters(new[] { new Counter("c", CounterKind.Kitchen, Distance.Zero, Distance.FromInches(100)).WithInterruptions(new[] { new CounterInterruption(InterruptionKind.Sink, Distance.FromInches(40), Distance.FromInches(60)) }) })
            .WithBoxes(Enumerable.Range(0, 4).Select(i => new DeviceBox("b" + i, BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle })
                .WithAt(Distance.FromInches(110 + (i * 8))).WithHeight(BoxHeight.ToTop(Distance.FromInches(16), Datum.Subfloor))).ToArray());
        return new Dwelling("capped").WithStoreys(new[] { new Storey("s") })
            .WithRooms(new[] { new Room("r", RoomKind.Kitchen, "s").WithWalls(new[] { wall }).WithFixtures(new[] { new Fixture("f", FixtureKind.Toilet) }) });
    }

    /// <summary>Says nothing, and tells each time it is asked.</summary>
    private sealed record Counting(Action Asked) : BoxHeights.Rules.SpaceRule("counting", "anything", Severity.Note, new("House rules", "1"))
    {
        public override BoxHeights.Rules.SpaceKind Subject => BoxHeights.Rules.SpaceKind.Room;

        public override bool LooksAtOwnBoxesOnly => true;

        public override string Numbers => "none";

        public override void Judge(BoxHeights.Rules.SpaceView space, BoxHeights.Rules.SpaceStatement statement)
        {
            foreach (BoxHeights.Rules.SpaceBox box in space.Boxes)
            {
                // Whoever asks where a box is is judged again where a remedy moves it.
                _ = box.Along;
            }

            Asked();
        }
    }
}
