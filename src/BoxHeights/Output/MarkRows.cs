using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Works out the rows of a mark sheet: each box's place and height, rounded to what can be marked.</summary>
internal static class MarkRows
{
    /// <summary>A row for every box on a wall that is still to be set, in the order in which they are marked.</summary>
    /// <param name="state">The dwelling and what the rules state of it.</param>
    /// <param name="options">How the sheet is set out.</param>
    /// <param name="unrounded">Boxes whose marks have to be exact.</param>
    public static Items<MarkRow> Of(LayoutState state, MarkOptions options, HashSet<string> unrounded)
    {
        List<(ResolvedSurface Surface, MarkRow Row)> rows = [];
        for (int box = 0; box < state.Boxes.Length; box++)
        {
            if (state.Boxes[box].Surface is { Kind: BoxSurface.Wall } surface && state.SitesOf(box).Length > 0 && state.HasReading(box)
                && state.Boxes[box].Source is { Existing: false, Measured: null })
            {
                rows.Add((surface, RowOf(state, box, options, !unrounded.Contains(state.Boxes[box].Source.Id))));
            }
        }

        rows.Sort((a, b) => a.Surface.Index != b.Surface.Index
            ? a.Surface.Index.CompareTo(b.Surface.Index)
            : (a.Row.FromLeftCorner ?? Distance.MaxValue) is var left && (b.Row.FromLeftCorner ?? Distance.MaxValue) is var right && left != right
                ? left.CompareTo(right)
                : string.CompareOrdinal(a.Row.BoxId, b.Row.BoxId));
        return new(rows.ConvertAll(row => row.Row));
    }

    private static MarkRow RowOf(LayoutState state, int box, MarkOptions options, bool rounded)
    {
        ResolvedBox resolved = state.Boxes[box];
        MarkRow row = new(resolved.Surface.Address, resolved.Source);
        BoxHeight height = state.HeightOf(box)!.Value;
        Edge edge = options.Edge ?? height.Edge ?? Edge.Center;
        Distance? at = state.AtOf(box);
        row = row with { FromLeftCorner = at, Stud = StudOf(state, box, at), SetFor = FrontOf(state, box) };
        if (height.Edge is null)
        {
            return row with { Note = "no mark: " + height.Value + " names no edge" };
        }

        Levels levels = state.SitesOf(box)[0].Site.Levels;
        if (!levels.TryOffset(Datum.Subfloor, height.Datum, out DistanceRange datum))
        {
            return row with { Note = "no mark: where its height is taken from isn't known" };
        }

        BoxSize size = state.SitesOf(box)[0].Site.Box.Size;
        if (edge != height.Edge && !size.IsStated)
        {
            edge = height.Edge.Value;
        }

        Distance toEdge = edge == height.Edge ? height.Value : height.AtEdge(edge, size).Value;
        DistanceRange exact = datum + toEdge;
        if (!exact.IsExact)
        {
            return row with { Note = "no mark yet: " + exact + ", until the " + DatumText.Name(height.Datum) + " is settled" };
        }

        (Distance mark, Distance? along) = rounded ? Markable(state, box, edge, exact.From, at) : (exact.From, at);
        string note = options.StrongAndShy && mark != exact.From ? (exact.From > mark ? "strong" : "shy") : "";
        return row with
        {
            FromLeftCorner = along,
            Mark = BoxHeight.To(edge, mark, Datum.Subfloor),
            FromLevelLine = levels.TryOffset(Datum.LevelLine, Datum.Subfloor, out DistanceRange below) && below.IsExact ? mark + below.From : null,
            Note = edge != height.Edge && !size.HeightRange.IsExact ? Joined(note, "for a box " + size.Height + " tall") : note,
        };
    }

    /// <summary>How far its front edge stands out: as stated, or flush with a finished surface that is known. What is clamped to the board needs no setting.</summary>
    private static Distance? FrontOf(LayoutState state, int box)
    {
        StatedSite site = state.SitesOf(box)[0];
        BoxTraits traits = site.Site.Box;
        return traits.SetFor ?? (SetbackLimit.IsFlush(traits) && state.SitesOf(box).Length == 1 && traits.Kind != BoxKind.CutIn && traits.Mounting != MountingMethod.CutIn
            ? FinishLayer.SurfaceAt(site.Site, state.PlaceOf(box))
            : null);
    }

    private static string Joined(string one, string other) => one.Length == 0 ? other : one + ", " + other;

    /// <summary>The nearest place that can be marked at which every placement rule says what it says of the exact place.</summary>
    private static (Distance Mark, Distance? Along) Markable(LayoutState state, int box, Edge edge, Distance exact, Distance? at)
    {
        EvaluatorOptions options = state.Options;

        // A box that is placed by its stud is where its stud is: nothing to round.
        bool byStud = state.Boxes[box].Source.At is null;
        foreach (Distance? along in at is { } place && !byStud ? Near(place, options.AlongStep, state.Boxes[box].Surface.Length) : [at])
        {
            foreach (Distance? mark in Near(exact, options.HeightStep, Distance.MaxValue))
            {
                if (SaysTheSame(state, box, edge, mark!.Value, along))
                {
                    return (mark.Value, along);
                }
            }
        }

        return (exact, at);
    }

    /// <summary>The multiples of a step around a distance, nearest first, and at last the distance itself.</summary>
    private static IEnumerable<Distance?> Near(Distance exact, Distance step, Distance most)
    {
        Distance down = exact.RoundDown(step);
        Distance up = exact.RoundUp(step);
        bool downFirst = exact - down <= up - exact;
        foreach (Distance rounded in downFirst ? new[] { down, up } : new[] { up, down })
        {
            if (rounded >= Distance.Zero && rounded <= most)
            {
                yield return rounded;
            }
        }

        yield return exact;
    }

    private static bool SaysTheSame(LayoutState state, int box, Edge edge, Distance mark, Distance? along)
    {
        StatedSite site = state.SiteOf(box, edge, Datum.Subfloor, along);
        Place marked = along is { } place ? new(place.Ticks, place.Ticks, mark) : new(0, state.Boxes[box].Surface.Length.Ticks, mark);
        Place now = state.PlaceOf(box);
        for (int p = 0; p < site.Placements.Length; p++)
        {
            if (SlabJudge.Verdict(site.Placements[p].Slabs, marked) != state.VerdictOf(box, p, now))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The stud and its side where the box is nailed to one that is known; else the nearest, named as no more than that.</summary>
    private static string StudOf(LayoutState state, int box, Distance? at)
    {
        ResolvedBox resolved = state.Boxes[box];
        BoxTraits traits = state.SitesOf(box)[0].Site.Box;
        if (at is not { } place || traits.Surface != BoxSurface.Wall || resolved.Surface.Studs is not { } studs || studs.Nearest(place) is not { } nearest)
        {
            return "";
        }

        bool nailed = traits.Mounting is null or MountingMethod.Stud
            && studs.TryCenter(nearest.Stud, nearest.Side, traits.Size.Width, out Distance center)
            && (center - place).Abs() <= state.Options.AlongStep;
        return studs.Known == StudKnowledge.Assumed ? "near stud " + nearest.Stud + " (assumed layout)"
            : nailed ? "stud " + nearest.Stud + ", " + (nearest.Side == StudSide.Left ? "left" : "right") + " side"
            : "near stud " + nearest.Stud;
    }

    /// <summary>Boxes on walls that should have a mark and can't.</summary>
    public static Items<LeftOutBox> LeftOut(LayoutState state)
    {
        List<LeftOutBox> found = [];
        for (int box = 0; box < state.Boxes.Length; box++)
        {
            if (state.Boxes[box].IsOnWall && state.SitesOf(box).Length == 0)
            {
                found.Add(new(state.Boxes[box].Source.Id, "a fault of the description keeps it from being marked"));
            }
        }

        return new(found);
    }
}
