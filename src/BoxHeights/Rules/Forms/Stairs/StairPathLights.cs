using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The low lights beside a flight sit at one place on their treads and at one height above them.</summary>
/// <remarks>
/// A light box on the flight's wall is one of them if its center is no more than <see cref="Below"/> above the line of the nosings. The place and the height are those
/// that the flight states; where it states none, those that most of its lights share.
/// </remarks>
[Row]
public sealed partial record StairPathLights : SpaceRule
{
    /// <summary>How far along the stair a light may be off the common place on its tread, itself allowed.</summary>
    public Distance MostAlong { get; init; }

    /// <summary>How far a light may be off the common height above its tread, itself allowed.</summary>
    public Distance MostInHeight { get; init; }

    /// <summary>The highest center above the line of the nosings that a low light has; higher ones are lamps.</summary>
    public Distance Below { get; init; }

    /// <inheritdoc/>
    public override bool LooksAtOwnBoxesOnly => true;

    /// <inheritdoc/>
    public override SpaceKind Subject => SpaceKind.Flight;

    /// <inheritdoc/>
    public override string Numbers => "lights up to " + Below + " above the nosings at most " + MostAlong + " off along and " + MostInHeight + " off in height";

    /// <inheritdoc/>
    public override void Judge(SpaceView space, SpaceStatement statement)
    {
        if (space.Flight is not { Wall: { } wall } flight || !StairRun.TryOf(flight, out StairRun? run)
            || !StairGeometry.TryEnds(space.Dwelling, flight, space.Usual, out StairGeometry? stair, out _))
        {
            return;
        }

        List<Light> lights = LightsOf(space, wall, run!);
        if (lights.Count == 0)
        {
            return;
        }

        ExactDistance place = run!.OnTread(flight.Lights?.Phase is { } phase ? run.Tread * phase : Common(lights, light => light.Up, MostAlong, run.OffPlace));
        ExactDistance height = flight.Lights?.AboveTread is { } asked ? asked : Common(lights, AboveTread, MostInHeight, (one, other) => one - other);
        foreach (Light light in lights)
        {
            ExactDistance along = run.OffPlace(light.Up, place).Abs();
            ExactDistance up = (AboveTread(light) - height).Abs();
            if (along > MostAlong)
            {
                ExactDistance there = light.Up - run.OffPlace(light.Up, place);
                statement.FindsAmiss(SetAt(light, run.Along(there).RoundNearest(), there), wall, along.RoundUp(), DistanceSet.AtMost(MostAlong),
                    () => $"it sits {Printed.OffBy(along.RoundUp(), space.Units):off} off the place on the tread that the others have");
            }
            else if (up > MostInHeight)
            {
                statement.FindsAmiss(SetAt(light, light.Box.Along!.Value, light.Up), wall, up.RoundUp(), DistanceSet.AtMost(MostInHeight),
                    () => $"it sits {Printed.OffBy(up.RoundUp(), space.Units):off} off the height above the tread that the others have");
            }
            else
            {
                statement.Meets(light.Box.Id, wall);
            }
        }

        ExactDistance AboveTread(Light light) => light.AboveNosings + Climbed(light.Up);

        // The line of the nosings rises by a riser over each tread.
        ExactDistance Climbed(ExactDistance lightUp) => stair!.Riser * (place + run.OffPlace(lightUp, place)).RatioTo(run.Tread);

        DeviceBox SetAt(Light light, Distance at, ExactDistance lightUp) =>
            light.Box.Source.WithAt(at).WithHeight(BoxHeight.ToCenter((height - Climbed(lightUp)).RoundNearest(), Datum.Nosing));
    }

    private List<Light> LightsOf(SpaceView space, string wall, StairRun run)
    {
        List<Light> lights = [];
        foreach (SpaceBox box in space.BoxesOnStairWall(wall))
        {
            if (box.Traits.Purpose == BoxPurpose.Light && box.Traits.Surface == BoxSurface.Wall && box.Along is { } along
                && box.TryHeightOf(TargetLine.Center, Datum.Nosing, out DistanceRange height, out _) && height.IsExact && height.From <= Below)
            {
                lights.Add(new(box, run.Up(along), height.From));
            }
        }

        // From the foot up, whatever the order in which they are described: of two that differ the lower one is gone by. A sort may turn equals round, so that ids decide last.
        lights.Sort((a, b) => a.Up.CompareTo(b.Up) is var up && up != 0 ? up
            : a.AboveNosings.CompareTo(b.AboveNosings) is var above && above != 0 ? above
            : string.CompareOrdinal(a.Box.Id, b.Box.Id));
        return lights;
    }

    /// <summary>The value that most lights share within the tolerance; of several, the one nearest to them all in sum.</summary>
    private static ExactDistance Common(List<Light> lights, System.Func<Light, ExactDistance> of, Distance tolerance, System.Func<ExactDistance, ExactDistance, ExactDistance> off)
    {
        ExactDistance best = default;
        int most = -1;
        ExactDistance least = default;
        foreach (Light candidate in lights)
        {
            ExactDistance value = of(candidate);
            int near = 0;
            ExactDistance sum = default;
            foreach (Light light in lights)
            {
                ExactDistance away = off(of(light), value).Abs();
                near += away <= tolerance ? 1 : 0;
                sum += away;
            }

            if (near > most || (near == most && sum < least))
            {
                (best, most, least) = (value, near, sum);
            }
        }

        return best;
    }

    /// <summary>A low light: how far up the flight from its first nosing, and how far above the line of the nosings.</summary>
    private readonly struct Light(SpaceBox box, ExactDistance up, Distance aboveNosings)
    {
        public SpaceBox Box { get; } = box;

        public ExactDistance Up { get; } = up;

        public Distance AboveNosings { get; } = aboveNosings;
    }
}
