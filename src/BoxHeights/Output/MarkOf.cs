using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Works out one row of a mark sheet: the nearest place that can be marked, and the stud it is at.</summary>
internal static class MarkOf
{
    /// <summary>The row of a box.</summary>
    /// <param name="state">The dwelling and what the rules state of it.</param>
    /// <param name="box">The box.</param>
    /// <param name="options">How the sheet is set out.</param>
    /// <param name="rounded">Whether it may be marked elsewhere than it is, to the tick.</param>
    /// <param name="isRounded">Whether it is.</param>
    public static MarkRow Box(LayoutState state, int box, MarkOptions options, bool rounded, out bool isRounded)
    {
        isRounded = false;
        ResolvedBox resolved = state.Boxes[box];
        LengthUnits units = state.Options.Units;
        BoxHeight height = state.HeightOf(box)!.Value;
        Edge edge = options.Edge ?? height.Edge ?? Edge.Center;
        Distance? at = state.AtOf(box);
        MarkRow row = new(resolved.Surface.Address, resolved.Source.Id, resolved.Source.Purpose) { FromLeftCorner = at, Stud = MarkPlace.Of(state, box, at, null), StandsOut = FrontOf(state, box) };
        if (height.Edge is null)
        {
            return row with { Note = "no mark: " + height.Exactly(units) + " names no edge of the box: " + Reasons.AddEdge };
        }

        Levels levels = state.SitesOf(box)[0].Site.Levels;
        if (!levels.TryOffset(Datum.Subfloor, height.Datum, out DistanceRange datum))
        {
            return row with { Note = "no mark: " + Reasons.NotKnown(height.Datum) };
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
            return row with { Note = "no mark yet: " + exact.ToString(units.ExactFormat()) + ", until the " + DatumText.Name(height.Datum) + " is settled" };
        }

        (Distance mark, Distance? along) = rounded ? Markable(state, box, edge, exact.From, at) : (exact.From, at);
        isRounded = mark != exact.From || along != at;
        List<string> notes = [];
        if (along is { } marked && at is { } place && marked != place && MarkPlace.NailedAt(state, box, marked) != marked)
        {
            notes.Add("along rounded from " + Printed.Of(place, units));
        }

        if (mark != exact.From)
        {
            notes.Add(!options.StrongAndShy ? "height rounded from " + Printed.Of(exact.From, units) : exact.From > mark ? "strong" : "shy");
        }

        if (edge != height.Edge && !size.HeightRange.IsExact)
        {
            notes.Add("for a box " + size.Height.Exactly(units) + " tall");
        }

        return row with
        {
            FromLeftCorner = along,
            Stud = MarkPlace.Of(state, box, along, mark),
            Mark = BoxHeight.To(edge, mark, Datum.Subfloor),
            FromLevelLine = levels.TryOffset(Datum.LevelLine, Datum.Subfloor, out DistanceRange below) && below.IsExact ? mark + below.From : null,
            Note = string.Join(", ", notes),
        };
    }

    /// <summary>How far its front edge stands out: as stated, or flush with a finished surface that is known. What is clamped to the board needs no setting.</summary>
    private static Distance? FrontOf(LayoutState state, int box)
    {
        StatedSite site = state.SitesOf(box)[0];
        BoxTraits traits = site.Site.Box;
        return traits.SetFor ?? (traits.IsFlush && state.SitesOf(box).Length == 1 && traits.Mounting != MountingMethod.CutIn
            ? FinishLayer.SurfaceAt(site.Site, state.PlaceOf(box))
            : null);
    }

    /// <summary>The nearest place that can be marked at which every placement rule says what it says of the exact place.</summary>
    private static (Distance Mark, Distance? Along) Markable(LayoutState state, int box, Edge edge, Distance exact, Distance? at)
    {
        SettledOptions options = state.Options;

        // A box that is placed by its stud is where its stud is: nothing to round.
        ResolvedBox resolved = state.Boxes[box];
        bool byStud = resolved.Source.At is null || (resolved.Source.Mounting?.Stud is not null && resolved.Surface.Studs is { Known: not StudKnowledge.Assumed });
        foreach (Distance? along in at is { } place && !byStud ? Along(state, box, place) : [at])
        {
            foreach (Distance? mark in Near(exact, options.HeightStep, Distance.MaxValue))
            {
                // Where it is to the tick it says what it says.
                if ((mark == exact && along == at) || SaysTheSame(state, box, edge, mark!.Value, along))
                {
                    return (mark!.Value, along);
                }
            }
        }

        return (exact, at);
    }

    /// <summary>A box that is almost at what it is nailed to is marked at it; others at what a tape shows.</summary>
    private static IEnumerable<Distance?> Along(LayoutState state, int box, Distance place)
    {
        if (MarkPlace.NailedAt(state, box, place) is { } nailed)
        {
            yield return nailed;
        }

        foreach (Distance? along in Near(place, state.Options.AlongStep, state.Boxes[box].Surface.Length))
        {
            yield return along;
        }
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
}
