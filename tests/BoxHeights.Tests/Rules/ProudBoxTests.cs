using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>A box that stands out past the finished surface keeps its plate off the wall: 1/16 in is passed over. Common practice, no source.</summary>
public sealed class ProudBoxTests
{
    // Board of 1/2 in, then 1/8 in of bed and 3/8 in of tile on it.
    [Theory]
    [InlineData("1/2 in", 0, false, false)]
    [InlineData("9/16 in", 0, false, false)]
    [InlineData("9/16 in", 1, false, true)]
    [InlineData("5/8 in", 0, false, true)]
    [InlineData("1-1/16 in", 0, true, false)]
    [InlineData("1-1/16 in", 1, true, true)]
    public void Box_PastTheSurface_IsNotedAndSetBack(string setFor, int ticks, bool tiled, bool isNoted)
    {
        Finish tile = new Finish("tile", FinishKind.Tile, Distance.Zero, In(120)).WithBed(In(0.125m)).WithThickness(In(0.375m));
        Evaluation evaluation = Evaluated(Distance.Parse(setFor) + Distance.FromTicks(ticks), tiled ? tile : null);
        Assert.Equal(isNoted, evaluation.Findings.Count == 1);
        foreach (Finding finding in evaluation.Findings)
        {
            Assert.Equal(("box-proud", Severity.Note, Verdict.Fails), (finding.RuleId, finding.Severity, finding.Verdict));
            SetProjection mended = Assert.IsType<SetProjection>(Assert.Single(finding.Remedies));
            Assert.Equal(In(tiled ? 1 : 0.5m), mended.Projection);
            Assert.EndsWith(" further back", mended.Text, System.StringComparison.Ordinal);
        }
    }

    // Tile of any thickness: what stands 1/2 in past the board may yet be behind it.
    [Theory]
    [InlineData("9/16 in", null)]
    [InlineData("1 in", Verdict.Unknown)]
    public void Box_OnTileOfAnyThickness_IsKnownOnlyWhereItCannotStandOut(string setFor, Verdict? expected)
    {
        Evaluation evaluation = Evaluated(Distance.Parse(setFor), new Finish("tile", FinishKind.Tile, Distance.Zero, In(120)));
        Assert.Equal(expected, evaluation.Findings.Count == 0 ? null : evaluation.Findings[0].Verdict);
    }

    private static Evaluation Evaluated(Distance setFor, Finish? finish)
    {
        Wall wall = new Wall("north", In(120)).WithFinishes(finish is null ? Items<Finish>.None : new[] { finish }).WithBoxes(new[]
        {
            new DeviceBox("R1", BoxPurpose.General).WithSize(new BoxSize(In(2.25m), In(3.75m))).WithAt(In(60)).WithHeight(BoxHeight.ToTop(In(16), Datum.Subfloor)).WithSetFor(setFor),
        });
        return new LayoutEvaluator(new RuleSet([RuleSets.RoughInPractice.Row("box-proud")!])).Evaluate(new Dwelling("House")
            .WithStoreys(new[] { new Storey("first").WithBoards(new BoardLayout().WithThickness(In(0.5m))) })
            .WithRooms(new[] { new Room("hall", RoomKind.Hall, "first").WithWalls(new[] { wall }) }));
    }
}
