using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>What a good crew does, whether or not a document asks for it. Common practice, no source.</summary>
internal static class TradePractice
{
    /// <summary>The usual heights, with the spread in which nobody would remark on one. Inches.</summary>
    private static readonly Habit[] Habits =
    [
        // purpose, aims at, no lower than, no higher than, above
        new(BoxPurpose.General, Edge.Top, 16, (Edge.Bottom, 12), (Edge.Center, 18)),
        new(BoxPurpose.Switch, Edge.Top, 48, (Edge.Top, 42), (Edge.Top, 52)),
        new(BoxPurpose.Counter, Edge.Top, 48, (Edge.Center, 42), (Edge.Top, 52)),
        new(BoxPurpose.Bath, Edge.Top, 48, (Edge.Top, 40), (Edge.Top, 52)),
        new(BoxPurpose.Refrigerator, Edge.Top, 48, (Edge.Center, 36), (Edge.Top, 56)),
        new(BoxPurpose.Range, Edge.Center, 5, (Edge.Center, 3), (Edge.Center, 8), Datum.FinishedFloor),
        new(BoxPurpose.SinkBase, Edge.Center, 18, (Edge.Center, 12), (Edge.Center, 24)),
        new(BoxPurpose.Dishwasher, Edge.Center, 18, (Edge.Center, 4), (Edge.Center, 24)),
        new(BoxPurpose.Hood, Edge.Center, 74, (Edge.Center, 62), (Edge.Center, 84)),

        // A dryer's is set low as often as it is set with the washer's.
        new(BoxPurpose.Laundry, Edge.Center, 44, (Edge.Center, 36), (Edge.Center, 48)),
        new(BoxPurpose.Dryer, Edge.Center, 44, (Edge.Center, 4), (Edge.Center, 48)),
        new(BoxPurpose.VanityLight, Edge.Center, 80, (Edge.Center, 72), (Edge.Center, 90)),
        new(BoxPurpose.Bedside, Edge.Bottom, 30, (Edge.Bottom, 24), (Edge.Top, 48)),
        new(BoxPurpose.EndTable, Edge.Center, 36, (Edge.Center, 28), (Edge.Center, 40)),
        new(BoxPurpose.Sofa, Edge.Top, 48, (Edge.Center, 30), (Edge.Top, 50)),
        new(BoxPurpose.WindowTop, Edge.Bottom, 72, (Edge.Bottom, 66), (Edge.Bottom, 90)),
        new(BoxPurpose.Closet, Edge.Top, 48, (Edge.Bottom, 12), (Edge.Top, 78)),
        new(BoxPurpose.Office, Edge.Top, 48, (Edge.Bottom, 12), (Edge.Top, 52)),
        new(BoxPurpose.Media, Edge.Top, 16, (Edge.Bottom, 12), (Edge.Top, 52)),
        new(BoxPurpose.Television, Edge.Center, 62, (Edge.Center, 42), (Edge.Center, 72)),
        new(BoxPurpose.Garage, Edge.Bottom, 48, (Edge.Bottom, 18), (Edge.Bottom, 60)),
        new(BoxPurpose.Basement, Edge.Bottom, 48, (Edge.Bottom, 12), (Edge.Bottom, 52)),
        new(BoxPurpose.Attic, Edge.Bottom, 60, (Edge.Bottom, 42), (Edge.Bottom, 66)),
        new(BoxPurpose.Exterior, Edge.Bottom, 18, (Edge.Bottom, 12), (Edge.Bottom, 48), Datum.Grade),
        new(BoxPurpose.Doorbell, Edge.Center, 44, (Edge.Center, 40), (Edge.Center, 50)),
        new(BoxPurpose.Thermostat, Edge.Center, 60, (Edge.Center, 44), (Edge.Center, 64)),
    ];

    public static RuleSet Rows { get; } = new(AllRows());

    private static IEnumerable<Rule> AllRows()
    {
        Distance quarter = Distance.FromInches(0, 1, 4);
        yield return new BoardSeam("board-seam", "cut into one sheet of wall board, not across a seam", Severity.Advice, Citation.CommonPractice)
        {
            NoteUnder = Distance.FromInches(0, 1, 2),
            Scope = RuleScope.Walls,
        };
        yield return new SpecifiedHeight("specified-height", "set where the drawing asks for it", Severity.Advice, Citation.CommonPractice, quarter);
        yield return new UniformLevel("uniform-level", "level with the other boxes of its purpose in the storey", Severity.Advice, Citation.CommonPractice, quarter)
        {
            Scope = RuleScope.Walls with { Purposes = new[] { BoxPurpose.General, BoxPurpose.Switch, BoxPurpose.Counter }, ExceptExisting = true },
        };
        yield return Edges("finish-edge", "with its plate wholly on or wholly off a finish, not across its edge", EdgesOf.Finishes);
        yield return Edges("not-buried", "clear of what covers the wall", EdgesOf.Coverings);
        yield return Edges("trim-clearance", "with its plate clear of openings and their casing", EdgesOf.Openings);
        foreach (Habit habit in Habits)
        {
            yield return habit.ToRow();
        }
    }

    private static FinishEdge Edges(string id, string summary, EdgesOf against) =>
        new(id, summary, Severity.Advice, Citation.CommonPractice, against) { Scope = RuleScope.Walls };

    private readonly struct Habit(BoxPurpose purpose, Edge edge, int aim, (Edge Edge, int Inches) low, (Edge Edge, int Inches) high, Datum datum = Datum.Subfloor)
    {
        public HeightBand ToRow() =>
            new(purpose + "-height", "where " + purpose + " boxes are usually set", Severity.Note, Citation.CommonPractice, datum)
            {
                LowLine = Line(low.Edge),
                Low = Distance.FromInches(low.Inches, 0, 1),
                HighLine = Line(high.Edge),
                High = Distance.FromInches(high.Inches, 0, 1),
                Preferred = BoxHeight.To(edge, Distance.FromInches(aim, 0, 1), datum),
                YieldsWhenForced = true,
                Scope = RuleScope.Walls with { Purposes = new[] { purpose }, ExceptExisting = true },
            };

        private static TargetLine Line(Edge edge) => edge switch { Edge.Bottom => TargetLine.BoxBottom, Edge.Top => TargetLine.BoxTop, _ => TargetLine.Center };
    }
}
