using System.Linq;
using Xunit;
using static BoxHeights.Tests.Rules.RequiredOutletSketch;

namespace BoxHeights.Tests.Rules;

/// <summary>Garages: a receptacle for each vehicle bay.</summary>
public sealed class VehicleBaysTests
{
    // NEC 210.52(G)(1): one in each vehicle bay; a door of 16 ft leads to two.
    [Theory]
    [InlineData(108, 1, true)]
    [InlineData(192, 1, false)]
    [InlineData(192, 2, true)]
    public void Garage_OneReceptacleForEachBay(int door, int receptacles, bool enough)
    {
        SquareRoom garage = new()
        {
            Kind = RoomKind.Garage,
            Wide = In("264"),
            SouthOpenings = [new("door", new OpeningKind("overhead-door"), In("20"), In("20") + Distance.FromInches(door, 0, 1))],
            North = Enumerable.Range(1, receptacles).Select(i => Receptacle(Distance.FromInches((120 * i) - 60, 0, 1), "48").WithId("g" + i).WithPurpose(BoxPurpose.Garage)).ToArray(),
            Overhead = [Receptacle(In("0"), "0").WithId("opener").WithAt(null).WithHeight(null).WithPlan(new PlanPoint(In("100"), In("60"))).WithDedicated("door opener")],
        };
        Evaluation evaluation = Evaluate(NecEdition.Nec2023, "garage-bay", garage.House());
        Assert.Equal(enough, evaluation.IsClean);
        if (!enough)
        {
            Assert.Equal("one-bay-a-door", Assert.Single(evaluation.Findings[0].DisputedBy));
            Assert.True(Evaluate(NecEdition.Nec2023, "garage-bay", evaluation.Findings[0].Remedies[0].ApplyTo(evaluation.Dwelling)).IsClean);
        }

        Assert.True(Evaluate(NecEdition.Nec2017, "garage-bay", garage.House().WithOccupancy(Occupancy.CoveredMultifamily)).IsClean);
    }

    // A door of 16 ft, so two bays, and receptacles whose place along the north wall and height to the center, in inches, are written so; one with a * is pinned. Above 66 in none counts. Whatever hangs too
    // high is set lower, if it may be, before one more is added; and where nothing but the level of the room's boxes is against one more, it is added, and the remedy says what is found then.
    [Theory]
    [InlineData("", "add 2 boxes: ", "")]
    [InlineData("60:80", "add 2 boxes: ", ", though room-level will be found then")]
    [InlineData("60:48 200:80", "set G1 48 in to center above finished floor", "")]
    [InlineData("60:80 200:80", "set the stick 48 in to bottom above subfloor for 2 boxes: G0, G1", "")]
    [InlineData("60:48 200:80*", "add garage box on square/", ", though room-level will be found then")]
    [InlineData("60:80* 200:80*", "add 2 boxes: ", ", though room-level will be found then")]
    public void Remedy_OfBaysWithoutAReceptacle_IsWhatMendsThem(string receptacles, string begins, string ends)
    {
        SquareRoom garage = new()
        {
            Kind = RoomKind.Garage,
            Wide = In("264"),
            SouthOpenings = [new("door", new OpeningKind("overhead-door"), In("20"), In("212"))],
            North = [.. receptacles.Split(' ', System.StringSplitOptions.RemoveEmptyEntries).Select(one => one.TrimEnd('*').Split(':')).Select((one, i) => SquareRoom.Box("duplex-receptacle", "garage", In(one[0]), In(one[1])).WithId("G" + i).WithPinned(receptacles.Contains('*') && one[1] == "80"))],
        };
        LayoutEvaluator evaluator = new(RuleSets.OfAHouse, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true));
        Evaluation before = evaluator.Evaluate(garage.House());
        Remedy remedy = Assert.Single(Assert.Single(before.Causes, cause => cause.RuleId == "garage-bay").Remedies);
        Assert.StartsWith(begins, remedy.Text, System.StringComparison.Ordinal);
        Assert.True(remedy.Text.EndsWith(ends, System.StringComparison.Ordinal) && (ends.Length > 0 || !remedy.Text.Contains("though", System.StringComparison.Ordinal)), remedy.Text);
        Evaluation with = evaluator.Evaluate(remedy.ApplyTo(before.Dwelling));
        Assert.DoesNotContain(with.Findings, finding => finding.RuleId == "garage-bay");
        Assert.Equal(ends.Length > 0, with.Findings.Any(finding => finding.RuleId == "room-level"));
        Assert.DoesNotContain(before.Mend().Evaluation.Findings, finding => finding.RuleId == "garage-bay");
    }
}
