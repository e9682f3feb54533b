using System;

namespace BoxHeights;

/// <summary>One low light beside a flight.</summary>
[Told]
public sealed partial class StairPathLight
{
    /// <summary>The tread it lights, counted from 1 at the foot.</summary>
    public int Tread { get; }

    /// <summary>The exact place that the plan's phase gives it, from the wall's left end.</summary>
    public ExactDistance Exact { get; }

    /// <summary>Where its box's center goes: against its stud, or the exact place rounded to the grid.</summary>
    public Distance Center { get; }

    /// <summary>The stud that it is nailed to, counted from the left; null where it needs blocking.</summary>
    public int? Stud { get; }

    /// <summary>The side of that stud.</summary>
    public StudSide? Side { get; }

    /// <summary>Whether no stud is near enough, so that a block has to be set for it.</summary>
    public bool NeedsBlocking => Stud is null;

    /// <summary>Whether a stud stands at its exact place, so that its box is shifted beside that stud farther than the adjustment allows.</summary>
    public bool IsDisplaced { get; }

    /// <summary>How far its box is shifted from the exact place; positive to the right.</summary>
    public ExactDistance Shift => NeedsBlocking ? ExactDistance.Zero : Center - Exact;

    /// <summary>What holds it, and why.</summary>
    public string Reason { get; }

    /// <summary>The light in words.</summary>
    public override string ToString() => "tread " + Tread + ": " + Reason;
}

/// <summary>Lights on every so many treads at one phase, chosen so that as many as possible are nailed to studs.</summary>
public sealed class StairLightPlan
{
    internal StairLightPlan(StairFlight flight, int every, int startTread, Ratio phase, Items<StairPathLight> lights, int phasesTried, Items<string> reasons)
    {
        Flight = flight;
        Every = every;
        StartTread = startTread;
        Phase = phase;
        Lights = lights;
        PhasesTried = phasesTried;
        Reasons = reasons;
        foreach (StairPathLight light in lights)
        {
            OnStuds += light.NeedsBlocking || light.IsDisplaced ? 0 : 1;
        }
    }

    /// <summary>The lights, one in a line.</summary>
    public override string ToString() => string.Join("\n", Lights);

    /// <summary>The flight.</summary>
    public StairFlight Flight { get; }

    /// <summary>One light every so many treads.</summary>
    public int Every { get; }

    /// <summary>The tread of the first light, counted from 1.</summary>
    public int StartTread { get; }

    /// <summary>Where on its tread each light sits: 0 at the nosing, 1 at the next.</summary>
    public Ratio Phase { get; }

    /// <summary>The lights, from the foot up.</summary>
    public Items<StairPathLight> Lights { get; }

    /// <summary>How many of them are nailed to studs within the adjustment.</summary>
    public int OnStuds { get; }

    /// <summary>At how many phases, over all intervals, the lights were counted: all at which a light comes into or out of reach of a stud, and those that share the shifts out evenly.</summary>
    public int PhasesTried { get; }

    /// <summary>Why this interval and phase, and what has to be blocked.</summary>
    public Items<string> Reasons { get; }

    /// <summary>The lights as a flight states them, with what it says of their height and width.</summary>
    public StairLights ToLights() =>
        (Flight.Lights ?? new StairLights(Every)).WithEvery(Every).WithStartTread(StartTread).WithPhase(Phase);

    /// <summary>How high a light's center goes above the subfloor at the flight's foot, rounded to the grid.</summary>
    /// <param name="light">A light of this plan.</param>
    /// <param name="stair">The flight with its floors.</param>
    /// <param name="aboveTread">How high above its tread; 6 to 8 in is common practice, no source.</param>
    /// <exception cref="ArgumentNullException"><paramref name="light"/> or <paramref name="stair"/> is null.</exception>
    public static Distance HeightOf(StairPathLight light, StairGeometry stair, Distance aboveTread) =>
        ((stair ?? throw new ArgumentNullException(nameof(stair))).TreadHeight((light ?? throw new ArgumentNullException(nameof(light))).Tread) + aboveTread).RoundNearest();
}
