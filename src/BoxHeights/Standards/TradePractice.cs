using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>What a good crew does, whether or not a document asks for it. Common practice, no source.</summary>
internal static class TradePractice
{
    /// <summary>The usual heights, with the spread in which nobody would remark on one.</summary>
    public static PracticeTable Usual { get; } = new PracticeTable(Citation.CommonPractice.Document).WithHeights(new[]
    {
        Habit(BoxPurpose.General, "16 in to top", "12 in to bottom", "18 in to center"),
        Habit(BoxPurpose.Switch, "48 in to top", "42 in to top", "52 in to top"),
        Habit(BoxPurpose.Counter, "48 in to top", "42 in to center", "52 in to top"),
        Habit(BoxPurpose.Bath, "48 in to top", "40 in to top", "52 in to top"),
        Habit(BoxPurpose.Refrigerator, "48 in to top", "36 in to center", "56 in to top"),
        Habit(BoxPurpose.Range, "5 in to center", "3 in to center", "8 in to center", Datum.FinishedFloor),
        Habit(BoxPurpose.SinkBase, "18 in to center", "12 in to center", "24 in to center"),
        Habit(BoxPurpose.Dishwasher, "18 in to center", "4 in to center", "24 in to center"),
        Habit(BoxPurpose.Hood, "74 in to center", "62 in to center", "84 in to center"),
        Habit(BoxPurpose.Laundry, "44 in to center", "36 in to center", "48 in to center"),

        // A dryer's is set low as often as it is set with the washer's.
        Habit(BoxPurpose.Dryer, "44 in to center", "4 in to center", "48 in to center"),
        Habit(BoxPurpose.VanityLight, "80 in to center", "72 in to center", "90 in to center"),
        Habit(BoxPurpose.Bedside, "30 in to bottom", "24 in to bottom", "48 in to top"),
        Habit(BoxPurpose.EndTable, "36 in to center", "28 in to center", "40 in to center"),
        Habit(BoxPurpose.Sofa, "48 in to top", "30 in to center", "50 in to top"),
        Habit(BoxPurpose.WindowTop, "72 in to bottom", "66 in to bottom", "90 in to bottom"),
        Habit(BoxPurpose.Closet, "48 in to top", "12 in to bottom", "78 in to top"),
        Habit(BoxPurpose.Office, "48 in to top", "12 in to bottom", "52 in to top"),
        Habit(BoxPurpose.Media, "16 in to top", "12 in to bottom", "52 in to top"),
        Habit(BoxPurpose.Television, "62 in to center", "42 in to center", "72 in to center"),
        Habit(BoxPurpose.Garage, "48 in to bottom", "18 in to bottom", "60 in to bottom"),
        Habit(BoxPurpose.Basement, "48 in to bottom", "12 in to bottom", "52 in to bottom"),
        Habit(BoxPurpose.Attic, "60 in to bottom", "42 in to bottom", "66 in to bottom"),
        Habit(BoxPurpose.Exterior, "18 in to bottom", "12 in to bottom", "48 in to bottom", Datum.Grade),
        Habit(BoxPurpose.Doorbell, "44 in to center", "40 in to center", "50 in to center"),
        Habit(BoxPurpose.Thermostat, "60 in to center", "44 in to center", "64 in to center"),
    });

    /// <summary>The trade's habits with a builder's own heights: those take the place of the usual ones for the same purposes.</summary>
    public static RuleSet With(PracticeTable own)
    {
        RuleSet rows = Rows;
        HashSet<BoxPurpose> seen = [];
        foreach (PracticeHeight height in own.Heights)
        {
            if (!seen.Add(height.Purpose))
            {
                throw new ArgumentException("The table \"" + own.Name + "\" has two heights for " + height.Purpose + ".", nameof(own));
            }

            rows = rows.With(Row(height, own.Name));
        }

        return rows;
    }

    // After the table: static members are made in the order in which they stand.
    public static RuleSet Rows { get; } = new(AllRows());

    private static IEnumerable<Rule> AllRows()
    {
        Distance quarter = Distance.FromInches(0, 1, 4);
        yield return new BoardSeam("board-seam", "cut into one sheet of wall board, not across a seam", Severity.Advice, Citation.CommonPractice)
        {
            NoteUnder = Distance.FromInches(0, 1, 2),
            OnlyIfStatedIn = new[] { RoomKind.Garage, RoomKind.Basement, RoomKind.Attic, RoomKind.Utility },
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
        yield return new WallTop("under-wall-top", "with its plate under the top of a low or sloped wall", Severity.Advice, Citation.CommonPractice) { Scope = RuleScope.Walls };
        foreach (PracticeHeight habit in Usual.Heights)
        {
            yield return Row(habit, Usual.Name);
        }
    }

    private static FinishEdge Edges(string id, string summary, EdgesOf against) =>
        new(id, summary, Severity.Advice, Citation.CommonPractice, against) { Scope = RuleScope.Walls };

    private static PracticeHeight Habit(BoxPurpose purpose, string aim, string low, string high, Datum datum = Datum.Subfloor)
    {
        BoxHeight Height(string text) => BoxHeight.Parse(text + " " + DatumText.Print(datum, false));
        return new PracticeHeight(purpose, Height(aim)).WithNoLower(Height(low)).WithNoHigher(Height(high));
    }

    private static HeightBand Row(PracticeHeight habit, string table)
    {
        BoxHeight low = habit.NoLower ?? habit.Height;
        BoxHeight high = habit.NoHigher ?? habit.Height;
        if (low.Datum != habit.Height.Datum || high.Datum != habit.Height.Datum)
        {
            throw new ArgumentException("The heights for " + habit.Purpose + " are taken from different surfaces.", nameof(habit));
        }

        return new(habit.Purpose + "-height", "where " + habit.Purpose + " boxes are usually set", Severity.Note, new(table, "", Confidence.CommonPractice), habit.Height.Datum)
        {
            LowLine = Line(low.Edge!.Value),
            Low = habit.NoLower?.Value,
            HighLine = Line(high.Edge!.Value),
            High = habit.NoHigher?.Value,
            Preferred = habit.Height,
            YieldsWhenForced = true,
            Scope = RuleScope.Walls with { Purposes = new[] { habit.Purpose }, ExceptExisting = true },
        };
    }

    private static TargetLine Line(Edge edge) => edge switch { Edge.Bottom => TargetLine.BoxBottom, Edge.Top => TargetLine.BoxTop, _ => TargetLine.Center };
}
