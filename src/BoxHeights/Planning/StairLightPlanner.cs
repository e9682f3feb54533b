using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Chooses interval, first tread and phase of the low lights beside a flight so that as many as possible land on stud faces, and proves that no phase does better.</summary>
/// <remarks>
/// <para>A light is on a stud if its exact place is no farther from the center of a box nailed to some stud face than the adjustment. As the phase grows every light moves
/// along the wall alike, so that the count changes only where a light comes into or out of reach of a stud face. Between two such phases it stays, and at one of them it is
/// never less than beside it: the largest count over those phases is the largest there is.</para>
/// <para>No box goes where a stud stands, and no block does: a light whose place is there and that no adjustment brings clear is set beside that stud, however far that is, and
/// the plan says so.</para>
/// <para>Of intervals and first treads those with the largest share of lights on studs are chosen, then the fewest lights in studs' way, then more lights, then the lowest tread.
/// Of phases with the largest count, the one with the fewest lights in studs' way, then whose worst shift is least, then whose shifts are least in sum, then the one nearest to the
/// middle of what is allowed. Worst shifts are least where a light is exactly on a stud face, or
/// two are as far off on opposite sides: those phases are tried too.</para>
/// </remarks>
public sealed class StairLightPlanner
{
    // Some fifty storeys in one flight: what is worked out stays small.
    private const int MostRisers = 1000;

    private readonly StairFlight flight;
    private readonly StairRun run;
    private readonly StudPositions studs;
    private readonly StairLightOptions options;
    private readonly List<(Distance Center, int Stud, StudSide Side)> faces = [];
    private int tried;

    private StairLightPlanner(StairFlight flight, StairRun run, StudPositions studs, StairLightOptions options)
    {
        this.flight = flight;
        this.run = run;
        this.studs = studs;
        this.options = options;
        for (int stud = 1; stud <= studs.Count; stud++)
        {
            foreach (StudSide side in new[] { StudSide.Left, StudSide.Right })
            {
                if (studs.TryCenter(stud, side, options.BoxWidth, out Distance center) && IsClearOfTheNext(stud, side))
                {
                    faces.Add((center, stud, side));
                }
            }
        }
    }

    /// <summary>Plans the lights of a flight. What its <see cref="StairFlight.Lights"/> state, interval, first tread or phase, is kept; the rest is chosen.</summary>
    /// <param name="flight">The flight: risers, tread or run, and first nosing along its wall.</param>
    /// <param name="studs">The studs of that wall.</param>
    /// <param name="options">What the flight doesn't state; null for the usual.</param>
    /// <exception cref="ArgumentNullException"><paramref name="flight"/> or <paramref name="studs"/> is null.</exception>
    /// <exception cref="ArgumentException">The flight states no first nosing, or neither tread nor run; the options leave no phase or no interval; no tread would get a light; no interval gives as many lights as are asked for; or the flight is larger than anything in a house.</exception>
    public static StairLightPlan Plan(StairFlight flight, StudPositions studs, StairLightOptions? options = null)
    {
        if (flight is null || studs is null)
        {
            throw new ArgumentNullException(flight is null ? nameof(flight) : nameof(studs));
        }

        options ??= StairLightOptions.Default;
        if (options.LowestPhase > options.HighestPhase || options.FewestTreads > options.MostTreads)
        {
            throw new ArgumentException("The options leave no " + (options.LowestPhase > options.HighestPhase ? "phase." : "interval."), nameof(options));
        }

        if (!StairRun.TryOf(flight, out StairRun? run))
        {
            throw new ArgumentException("The flight states no first nosing, or neither tread nor run.", nameof(flight));
        }

        if (flight.Risers > MostRisers)
        {
            throw new ArgumentException("A flight of " + flight.Risers + " risers is larger than anything in a house.", nameof(flight));
        }

        return Guard.WithinReason(new StairLightPlanner(flight, run!, studs, options).Best, "the flight", nameof(flight));
    }

    private StairLightPlan Best()
    {
        int? stated = flight.Lights?.StartTread;
        if ((stated ?? 1) >= flight.Risers)
        {
            throw new ArgumentException("A flight of " + flight.Risers + " risers has no tread " + (stated ?? 1) + " below its upper floor.", nameof(flight));
        }

        StairLightChoice? best = null;
        int fewest = Math.Min(flight.Lights?.Every ?? (options.Count is null ? options.FewestTreads : 1), MostRisers);
        int most = Math.Max(fewest, Math.Min(flight.Lights?.Every ?? (options.Count is null ? options.MostTreads : MostRisers), flight.Risers));
        for (int every = fewest; every <= most; every++)
        {
            // Further up than one interval the first light would leave treads below it dark.
            for (int start = stated ?? 1; start <= (stated ?? Math.Min(every, flight.Risers - 1)); start++)
            {
                if (options.Count is { } count && count != ((flight.Risers - 1 - start) / every) + 1)
                {
                    continue;
                }

                StairLightChoice one = BestOf(every, start);
                best = best is null || one.IsBetterInterval(best) ? one : best;
            }
        }

        return Written(best ?? throw new ArgumentException("No interval gives a flight of " + flight.Risers + " risers " + options.Count + " lights.", nameof(options)));
    }

    private StairLightChoice BestOf(int every, int start)
    {
        // Where each light would be at phase 0, measured up the flight; and the stud faces measured likewise.
        List<ExactDistance> nosings = [];
        for (int tread = start; tread < flight.Risers; tread += every)
        {
            nosings.Add(run.Tread * new Ratio(tread - 1));
        }

        ExactDistance low = run.Tread * (flight.Lights?.Phase ?? options.LowestPhase);
        ExactDistance high = run.Tread * (flight.Lights?.Phase ?? options.HighestPhase);
        ExactDistance middle = (low + high) * new Ratio(1, 2);
        StairLightChoice? best = null;
        HashSet<ExactDistance> seen = [];
        foreach (ExactDistance phase in Telling(nosings, low, high))
        {
            if (phase >= low && phase <= high && seen.Add(phase))
            {
                tried++;
                StairLightChoice one = At(every, start, nosings, phase, (phase - middle).Abs());
                best = best is null || one.IsBetterPhase(best) ? one : best;
            }
        }

        return best!;
    }

    /// <summary>Every phase at which the count can change, or at which the worst shift can be least.</summary>
    private IEnumerable<ExactDistance> Telling(List<ExactDistance> nosings, ExactDistance low, ExactDistance high)
    {
        yield return low;
        yield return high;
        yield return (low + high) * new Ratio(1, 2);
        List<ExactDistance> exact = [];
        foreach (ExactDistance nosing in nosings)
        {
            foreach ((Distance center, _, _) in faces)
            {
                ExactDistance phase = run.Up(center) - nosing;
                if (phase >= low - options.Adjustment && phase <= high + options.Adjustment)
                {
                    exact.Add(phase);
                    yield return phase;
                    yield return phase - options.Adjustment;
                    yield return phase + options.Adjustment;
                }
            }
        }

        // Two lights that are both within reach of their studs have these phases no farther apart than twice that reach.
        exact.Sort();
        for (int i = 0; i < exact.Count; i++)
        {
            for (int j = i + 1; j < exact.Count && exact[j] - exact[i] <= options.Adjustment + options.Adjustment; j++)
            {
                yield return (exact[i] + exact[j]) * new Ratio(1, 2);
            }
        }
    }

    private StairLightChoice At(int every, int start, List<ExactDistance> nosings, ExactDistance phase, ExactDistance fromMiddle)
    {
        StairLightChoice candidate = new(every, start, phase, fromMiddle);
        foreach (ExactDistance nosing in nosings)
        {
            ExactDistance along = run.Along(nosing + phase);
            int nearest = Nearest(along, options.Adjustment);
            bool isInTheWay = nearest < 0 && InItsWay(along) > 0;
            nearest = isInTheWay ? Nearest(along, null) : nearest;
            candidate.Add(nearest, isInTheWay, nearest < 0 ? ExactDistance.Zero : (faces[nearest].Center - along).Abs());
        }

        return candidate;
    }

    /// <summary>Whether the next stud leaves room for a box on a side of one.</summary>
    private bool IsClearOfTheNext(int stud, StudSide side)
    {
        int next = stud + (side == StudSide.Left ? -1 : 1);
        studs.TryFaces(stud, out Distance left, out Distance right);
        return !studs.TryFaces(next, out Distance nextLeft, out Distance nextRight) || (side == StudSide.Left ? left - nextRight : nextLeft - right) >= options.BoxWidth;
    }

    /// <summary>The stud that a box would stand in with its center at a place; 0 where it is clear of all.</summary>
    private int InItsWay(ExactDistance center)
    {
        ExactDistance half = (ExactDistance)options.BoxWidth * new Ratio(1, 2);
        for (int stud = 1; studs.TryFaces(stud, out Distance left, out Distance right); stud++)
        {
            if (center > left - half && center < right + half)
            {
                return stud;
            }
        }

        return 0;
    }

    /// <summary>The stud face nearest to a place, if the box can be shifted to it; of two as near, the one farther up the flight.</summary>
    private int Nearest(ExactDistance along, ExactDistance? reach)
    {
        int nearest = -1;
        ExactDistance least = reach ?? (ExactDistance)Distance.MaxValue;
        for (int i = 0; i < faces.Count; i++)
        {
            ExactDistance away = (faces[i].Center - along).Abs();
            if (away < least || (away == least && (nearest < 0 || run.Up(faces[i].Center) > run.Up(faces[nearest].Center))))
            {
                (nearest, least) = (i, away);
            }
        }

        return nearest;
    }

    private StairLightPlan Written(StairLightChoice best)
    {
        int start = best.Start;
        List<StairPathLight> lights = [];
        List<string> reasons = [];
        List<int> blocked = [];
        List<int> displaced = [];
        for (int i = 0; i < best.Faces.Count; i++)
        {
            int tread = start + (i * best.Every);
            ExactDistance exact = run.Along((run.Tread * new Ratio(tread - 1)) + best.Phase);
            if (best.Faces[i] < 0)
            {
                Distance center = exact.RoundNearest();
                blocked.Add(tread);
                lights.Add(new(tread, exact, center, null, null, false, "on blocking, its center " + Printed.Of(center, options.Units) + " from the wall's left end: no stud face within " + Printed.Of(options.Adjustment, options.Units)));
            }
            else
            {
                (Distance center, int stud, StudSide side) = faces[best.Faces[i]];
                ExactDistance shift = center - exact;
                bool isFar = shift.Abs() > options.Adjustment;
                if (isFar)
                {
                    displaced.Add(tread);
                }

                lights.Add(new(tread, exact, center, stud, side, isFar, "on stud " + stud + ", " + (side == StudSide.Left ? "left" : "right") + " side"
                    + (shift == ExactDistance.Zero ? "" : ", shifted " + Printed.OffBy(shift.Abs().RoundUp(), options.Units) + " to the " + (shift > ExactDistance.Zero ? "right" : "left"))
                    + (isFar ? ": farther than " + Printed.Of(options.Adjustment, options.Units) + ", since stud " + InItsWay(exact) + " stands at its place, where no block goes either" : "")));
            }
        }

        int onStuds = lights.Count - blocked.Count - displaced.Count;
        reasons.Add("every " + best.Every + " treads from tread " + start + ": " + onStuds + " of " + lights.Count + " lights on studs, shifted by no more than " + Printed.OffBy(best.Worst.RoundUp(), options.Units));
        reasons.Add(flight.Lights?.Phase is { } stated
            ? "the place on the tread is the flight's own: " + stated
            : "the most there can be: of " + tried + " phases at which anything changes none does better");
        if (blocked.Count > 0)
        {
            reasons.Add("blocking at tread" + (blocked.Count == 1 ? " " : "s ") + string.Join(", ", blocked));
        }

        if (displaced.Count > 0)
        {
            reasons.Add("a stud stands in the way at tread" + (displaced.Count == 1 ? " " : "s ") + string.Join(", ", displaced) + ": off the place that the others have on their treads, or move the stud");
        }

        if (studs.Known == StudKnowledge.Assumed)
        {
            reasons.Add("the studs are assumed: find them before marking");
        }

        return new(flight, best.Every, start, best.Phase.RatioTo(run.Tread), new(lights), tried, new(reasons));
    }
}
