using System;
using System.Collections.Generic;
using System.Text;
using System.Threading;

namespace BoxHeights;

/// <summary>The few marks that a helper puts on a stick: for each storey the distinct heights that boxes on its walls are set to.</summary>
/// <remarks>
/// One mark for each edge and height above the subfloor that <see cref="MarkSheet"/> marks: the sheet rounds, once and for all papers, and nothing is rounded here, so that
/// pole and sheet agree. A box that the sheet stops is on no pole. A room whose subfloor isn't the storey's has marks of its own. Boxes that are set already, since they
/// were there before or were measured, have no mark.
/// </remarks>
public sealed partial class StoryPole
{
    private readonly Dwelling dwelling;

    private StoryPole(Dwelling dwelling, List<PoleMark> marks, List<PoleRange> notYet, List<LeftOutBox> leftOut)
    {
        this.dwelling = dwelling;
        Rows = new(marks);
        NotYet = new(notYet);
        LeftOut = new(leftOut);
    }

    /// <summary>The marks: storey by storey, its own subfloor before others, from low to high.</summary>
    public Items<PoleMark> Rows { get; }

    /// <summary>Heights that depend on a floor or another surface that isn't settled, in the same order.</summary>
    public Items<PoleRange> NotYet { get; }

    /// <summary>Boxes on walls that are on neither list, and why.</summary>
    public Items<LeftOutBox> LeftOut { get; }

    /// <summary>The pole of an evaluated dwelling, as <see cref="MarkSheet.For(Evaluation)"/> marks it.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    public static StoryPole For(Evaluation evaluation) => For(evaluation, CancellationToken.None);

    /// <summary>The pole of an evaluated dwelling, unless somebody gives up.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <param name="cancellationToken">Ends it early.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static StoryPole For(Evaluation evaluation, CancellationToken cancellationToken) => For(MarkSheet.For(evaluation, MarkOptions.Default, cancellationToken));

    /// <summary>The pole of a sheet's marks.</summary>
    /// <param name="marks">The sheet.</param>
    /// <exception cref="ArgumentNullException"><paramref name="marks"/> is null.</exception>
    public static StoryPole For(MarkSheet marks)
    {
        Dictionary<string, string> stopped = new(StringComparer.Ordinal);
        foreach (MarkRow row in (marks ?? throw new ArgumentNullException(nameof(marks))).Rows)
        {
            if (row.Stop.Length > 0)
            {
                stopped[row.BoxId] = row.Stop;
            }
        }

        Dwelling dwelling = marks.ToDwelling();
        Resolver resolved = Resolver.Resolve(dwelling, marks.Catalog);
        Dictionary<Stand, List<string>> stands = [];
        Dictionary<(Stand, BoxHeight, DistanceRange), List<ResolvedBox>> heights = [];
        Dictionary<(Stand, BoxHeight, DistanceRange), string> open = [];
        List<LeftOutBox> leftOut = [];
        foreach (ResolvedBox box in resolved.Boxes)
        {
            if (!box.IsOnWall || box.IsExisting || box.Source.Measured is not null)
            {
                continue;
            }

            DistanceRange datum = default;
            Datum? becauseOf = null;
            if ((stopped.TryGetValue(box.Source.Id, out string? stop) ? stop : WhyNot(resolved, box, marks.Catalog, out datum, out becauseOf)) is { } why)
            {
                leftOut.Add(new(box.Source.Id, why));
                continue;
            }

            // Heights that are exact meet on one mark, whatever they were taken from; others only if they move alike.
            BoxHeight height = box.Source.Height!.Value;
            DistanceRange up = datum + height.Value;
            Stand stand = new(dwelling, box.Surface.Space);
            (Stand, BoxHeight, DistanceRange) key = (stand, up.IsExact ? BoxHeight.To(height.Edge!.Value, up.From, Datum.Subfloor) : height, up);
            heights.ListOf(key).Add(box);
            List<string> rooms = stands.ListOf(stand);
            if (!rooms.Contains(box.Surface.Space.Id))
            {
                rooms.Add(box.Surface.Space.Id);
            }

            if (!up.IsExact)
            {
                open[key] = Reasons.NotKnown(becauseOf);
            }
        }

        List<(Stand, BoxHeight, DistanceRange)> order = [.. heights.Keys];
        order.Sort(Compare);
        List<PoleMark> poleMarks = [];
        List<PoleRange> notYet = [];
        foreach ((Stand, BoxHeight, DistanceRange) key in order)
        {
            (Stand stand, BoxHeight height, DistanceRange up) = key;
            List<ResolvedBox> boxes = heights[key];
            Items<string> rooms = stand.Subfloor == Distance.Zero ? default : new(stands[stand]);
            if (open.TryGetValue(key, out string? why))
            {
                notYet.Add(new(stand.Storey, stand.Subfloor, rooms, height, up, why) { Purposes = PurposesOf(boxes), BoxIds = IdsOf(boxes) });
            }
            else
            {
                poleMarks.Add(MarkOf(stand, rooms, height, boxes));
            }
        }

        return new(dwelling, poleMarks, notYet, leftOut);
    }

    /// <summary>The pole as Markdown: a heading and a table for each storey, then what can't be marked yet and what is left out.</summary>
    public string ToMarkdown()
    {
        StringBuilder text = new();
        TextTable.AppendTitle(text, "Story pole: " + dwelling.Name, "Marks are above the subfloor; the reading on the plate is for a pole that stands on the bottom plate.");
        Table().AppendMarkdown(text);
        NotYetTable().AppendMarkdown(text);
        TextTable.AppendList(text, "Not on the pole", LeftOut);
        return text.ToString();
    }

    /// <summary>What can't be marked yet, and why.</summary>
    internal TextTable NotYetTable()
    {
        TextTable notYet = new("storey", "height", "above the subfloor", "why not yet", "for", "boxes", "ids");
        foreach (PoleRange range in NotYet)
        {
            notYet.Add(
                "Not yet: " + HeadingOf(range.Storey, range.Subfloor, range.Rooms), range.Height.Exactly(dwelling.Units), RangeText(range), range.Why, range.Purposes.ToString(),
                Count(range.BoxIds), range.BoxIds.ToString());
        }

        return notYet;
    }

    /// <summary>The same as <see cref="ToMarkdown"/>.</summary>
    public override string ToString() => ToMarkdown();

    /// <summary>The pole as comma-separated values after RFC 4180, with a header line. Heights that can't be marked yet and boxes left out follow the marks, with the reason as note.</summary>
    public string ToCsv()
    {
        TextTable table = Table();
        foreach (PoleRange range in NotYet)
        {
            table.Add(
                HeadingOf(range.Storey, range.Subfloor, range.Rooms), "", range.Height.Edge is { } edge ? EdgeText.Print(edge) : "", "", "", range.Purposes.ToString(),
                Count(range.BoxIds), range.BoxIds.ToString(), RangeText(range) + ": " + range.Why);
        }

        foreach (LeftOutBox box in LeftOut)
        {
            table.Add("", "", "", "", "", "", "1", box.BoxId, box.Why);
        }

        return table.ToCsv();
    }

    /// <summary>The rows as every form of the paper shows them.</summary>
    internal TextTable Table()
    {
        TextTable table = new("storey", "mark", "to", "on the plate", "from level line", "for", "boxes", "ids", "note");
        foreach (PoleMark mark in Rows)
        {
            table.Add(
                HeadingOf(mark.Storey, mark.Subfloor, mark.Rooms),
                mark.Mark.Value.Exactly(dwelling.Units),
                EdgeText.Print(mark.Mark.Edge),
                mark.FromPlate is { } plate ? Printed.OnTape(plate, dwelling.Units) : "",
                mark.FromLevelLine is { } line ? Printed.Signed(line, dwelling.Units) : "",
                mark.Purposes.ToString(),
                Count(mark.BoxIds),
                mark.BoxIds.ToString(),
                "");
        }

        return table;
    }

    /// <summary>The name of the dwelling.</summary>
    internal string House => dwelling.Name;

    /// <summary>How its marks are printed.</summary>
    internal LengthUnits Units => dwelling.Units;

    internal string HeadingOf(string storey, Distance subfloor, Items<string> rooms) => subfloor == Distance.Zero
        ? storey
        : storey + ", subfloor " + subfloor.Abs().Exactly(dwelling.Units) + (subfloor < Distance.Zero ? " below" : " above") + " the storey's: " + rooms;

    private string RangeText(PoleRange range) =>
        range.Range.From.Exactly(dwelling.Units) + " to " + range.Range.To.Exactly(dwelling.Units);

    private static string Count(Items<string> ids) => ids.Count.ToString(System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>Why a box has no place on the pole; null where it has one, so far above the subfloor as its datum is and it says.</summary>
    private static string? WhyNot(Resolver resolved, ResolvedBox box, PartsCatalog catalog, out DistanceRange datum, out Datum? becauseOf)
    {
        datum = default;
        becauseOf = null;
        return box.IsBroken ? Reasons.Faults(resolved.Faults, box.Source.Id)
            : box.Source.Height is not { } height ? "no height is given to set it to"
            : height.Edge is null ? Reasons.NoEdge
            : box.TryOffset(Datum.Subfloor, height.Datum, catalog, out datum, out becauseOf) ? null
            : Reasons.NotKnown(becauseOf);
    }

    private static PoleMark MarkOf(Stand stand, Items<string> rooms, BoxHeight height, List<ResolvedBox> boxes)
    {
        Levels levels = boxes[0].Surface.Space.Levels;
        Distance? plate = Reading(levels, Datum.BottomPlate, height.Value);
        return new(stand.Storey, stand.Subfloor, rooms, height)
        {
            FromPlate = plate > Distance.Zero ? plate : null,
            FromLevelLine = Reading(levels, Datum.LevelLine, height.Value),
            Purposes = PurposesOf(boxes),
            BoxIds = IdsOf(boxes),
        };
    }

    private static Distance? Reading(Levels levels, Datum from, Distance aboveSubfloor) =>
        levels.TryOffset(from, Datum.Subfloor, out DistanceRange below) && below.IsExact ? aboveSubfloor + below.From : null;

    private static Items<BoxPurpose> PurposesOf(List<ResolvedBox> boxes) => new Items<BoxPurpose>(boxes.ConvertAll(box => box.Source.Purpose)).Distinct();

    private static Items<string> IdsOf(List<ResolvedBox> boxes) => new(boxes.ConvertAll(box => box.Source.Id));

    private static int Compare((Stand Stand, BoxHeight Height, DistanceRange Up) a, (Stand Stand, BoxHeight Height, DistanceRange Up) b)
    {
        int order = a.Stand.CompareTo(b.Stand);
        order = order != 0 ? order : a.Up.From.CompareTo(b.Up.From);
        order = order != 0 ? order : a.Up.To.CompareTo(b.Up.To);
        order = order != 0 ? order : a.Height.Edge.GetValueOrDefault().CompareTo(b.Height.Edge.GetValueOrDefault());
        return order != 0 ? order : a.Height.Datum.CompareTo(b.Height.Datum);
    }

    /// <summary>What a pole stands on: a storey's subfloor, or that of rooms which lie higher or lower.</summary>
    private readonly record struct Stand : IComparable<Stand>
    {
        private readonly int storeyIndex;

        public Stand(Dwelling dwelling, ResolvedSpace space)
        {
            Storey = space.StoreyId;
            Subfloor = space.Levels.TryGet(Datum.Subfloor, out DistanceRange level) ? level.From : Distance.Zero;

            // Rooms that name no storey of the dwelling come last.
            storeyIndex = dwelling.Storeys.Count;
            for (int i = dwelling.Storeys.Count - 1; i >= 0; i--)
            {
                storeyIndex = dwelling.Storeys[i].Id == Storey ? i : storeyIndex;
            }
        }

        public string Storey { get; }

        public Distance Subfloor { get; }

        public int CompareTo(Stand other)
        {
            int order = storeyIndex.CompareTo(other.storeyIndex);
            order = order != 0 ? order : string.CompareOrdinal(Storey, other.Storey);
            order = order != 0 ? order : (Subfloor != Distance.Zero).CompareTo(other.Subfloor != Distance.Zero);
            return order != 0 ? order : Subfloor.CompareTo(other.Subfloor);
        }
    }
}
