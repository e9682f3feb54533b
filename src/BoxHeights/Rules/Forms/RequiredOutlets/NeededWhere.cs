namespace BoxHeights.Rules;

/// <summary>What in a dwelling makes an outlet needed anywhere in it.</summary>
public sealed record NeededWhere
{
    /// <summary>Rooms of these kinds from which an opening leads into another.</summary>
    public Items<RoomKind> OpensFrom { get; init; }

    /// <summary>Fixtures of these kinds, in any room.</summary>
    public Items<FixtureKind> Fixtures { get; init; }

    /// <summary>What it is, in words.</summary>
    public override string ToString() => "an opening from a " + OpensFrom + ", or a " + Fixtures;

    internal Items<string> KindsNamed => KindNames.Joined(OpensFrom.Select(kind => kind.Name), Fixtures.Select(kind => kind.Name));

    internal bool IsThere(SpaceView space) => space.Dwelling.Rooms.Exists(room =>
        room.Fixtures.Exists(fixture => Fixtures.Contains(fixture.Kind)) || (OpensFrom.Contains(room.Kind) && room.Walls.Exists(wall => LeadsIn(space, room, wall))));

    private bool LeadsIn(SpaceView space, Room room, Wall wall)
    {
        foreach (Opening opening in wall.Openings)
        {
            foreach (Room behind in ThingInPlan.IsDoorway(opening) ? space.Backs.RoomsBehind(SurfaceAddress.Of(room.Id, wall.Id), opening) : [])
            {
                if (!OpensFrom.Contains(behind.Kind))
                {
                    return true;
                }
            }
        }

        return false;
    }
}
