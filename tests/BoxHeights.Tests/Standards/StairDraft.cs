using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Tests.Standards;

/// <summary>
/// A straight flight of 16 risers along a wall: a switch on the floor at its foot, and perhaps low lights, all at one place on every second tread where none of them
/// meets a stud. Common practice, no source.
/// </summary>
internal sealed class StairDraft(StoreyDraft storey, string room, Distance rise)
{
    private const int Risers = 16;

    private readonly bool climbsLeft = storey.Site.Chance(40);
    private readonly Distance tread = In(storey.Site.One(10m, 10.5m, 11m));

    private Distance FirstNosing => climbsLeft ? Length - In(44) : In(44);

    private Distance Length => In(44) + (tread * Risers) + In(40);

    /// <summary>Half an inch of board hangs over it.</summary>
    public static Distance WellBoard => In(0.5m);

    /// <summary>From the lower subfloor to the ceiling framing: a storey of 8 ft on top of the lower one.</summary>
    public static Distance WellHeight(Distance rise) => rise + In(97.125m);

    public SetWall Build()
    {
        WallDraft wall = new("flight", storey);
        _ = wall.Put(BoxPurpose.Switch, climbsLeft ? Length.Inches - 18 : 18, DeviceKind.ThreeWaySwitch).Gap(Length.Inches - 16);
        SetWall set = wall.Build(room);
        set = set with { Wall = set.Wall.WithBoards(storey.BoardsUnder((WellHeight(rise) - WellBoard).Inches)) };
        return storey.Site.Chance(60) ? set with { Wall = set.Wall.WithBoxes(set.Wall.Boxes.Concat(Lights(set)).ToArray()) } : set;
    }

    public StairFlight Flight(string upper)
    {
        StairFlight flight = new StairFlight(room + "-flight", storey.Id, upper, Risers).WithWall(room + "/flight").WithFirstNosing(FirstNosing).WithNosing(In(1)).WithTreadFinish(In(0.75m))
            .WithClimbs(climbsLeft ? WallEnd.Left : storey.Site.One<WallEnd?>(null, WallEnd.Right));
        return storey.Site.Chance(50) ? flight.WithTread(tread) : flight.WithRun(tread * (Risers - 1));
    }

    /// <summary>Lights beside every second tread, at one place on it; none where each place would put one of them on a stud or across a seam.</summary>
    private DeviceBox[] Lights(SetWall set)
    {
        Distance above = In(storey.Site.One(8m, 10m, 12m));
        decimal[] seams = [.. storey.SeamsUnder((WellHeight(rise) - WellBoard).Inches)];
        for (Distance place = In(2); place <= tread - In(2); place += In(0.25m))
        {
            List<DeviceBox> lights = [];
            for (int step = 1; step < Risers - 2; step += 2)
            {
                Distance up = (tread * step) + place;
                decimal height = above.Inches + (rise.Inches / Risers * (1 + (up.Inches / tread.Inches)));
                Distance at = climbsLeft ? FirstNosing - up : FirstNosing + up;
                if (set.Timber.Pieces(null).Exists(piece => at - In(1.25m) < piece.Right && piece.Left < at + In(1.25m)) || seams.Any(seam => height - 4 < seam && seam < height + 4)
                    || storey.UprightSeams(Length).Any(seam => (seam - at).Abs() < In(1.5m)))
                {
                    break;
                }

                lights.Add(new DeviceBox(storey.NextId(), BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire }).WithMounting(new Mounting(MountingMethod.Blocking))
                    .WithAt(at).WithHeight(BoxHeight.ToCenter(above, Datum.Nosing)));
            }

            if (lights.Count == (Risers - 2) / 2)
            {
                return [.. lights];
            }
        }

        return [];
    }
}
