using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Something in a room that distances are taken from: where it surely is, and how far it may reach.</summary>
internal sealed class ThingInPlan
{
    private string? address;

    private ThingInPlan(string name, PlanPatch? sure, PlanPatch possible, Fixture? fixture = null, Level? top = null)
    {
        Name = name;
        HasPlace = sure is not null;
        Sure = sure.GetValueOrDefault();
        Possible = possible;
        Fixture = fixture;
        Top = top ?? fixture?.Top;
    }

    /// <summary>Its id, or what and where it is.</summary>
    public string Name { get; }

    /// <summary>Its room and its name: the same however often it is asked, and made once.</summary>
    public string In(string room) => address ??= room + " " + Name;

    /// <summary>Whether it is said where it is.</summary>
    public bool HasPlace { get; }

    /// <summary>Where it is, whatever isn't known.</summary>
    public PlanPatch Sure { get; }

    /// <summary>As far as it may reach.</summary>
    public PlanPatch Possible { get; }

    /// <summary>The fixture, where it is one.</summary>
    public Fixture? Fixture { get; }

    /// <summary>The top of it, or of the counter that it is set into; null where that isn't stated, or is itself taken from a counter.</summary>
    public Level? Top { get; }

    /// <summary>What of a room a zone is tied to.</summary>
    public static List<ThingInPlan> Of(RoomAnchor tied, Room room, WallPlan plan, BackFaces? backs, UsualMeasures usual)
    {
        List<ThingInPlan> found = [];
        foreach (Fixture fixture in room.Fixtures)
        {
            if (tied.Fixtures.Contains(fixture.Kind))
            {
                found.Add(Of(fixture, plan, usual));
            }
        }

        for (int face = 0; face < plan.Count; face++)
        {
            Wall wall = plan.WallOf(face);
            foreach (Counter counter in tied.Interruptions.Count == 0 ? default : wall.Counters)
            {
                foreach (CounterInterruption part in counter.Interruptions)
                {
                    if (tied.Interruptions.Contains(part.Kind))
                    {
                        found.Add(Of(part, counter, face, usual));
                    }
                }
            }

            foreach (Opening opening in tied.DoorsToRoomsWith.Count == 0 || backs is null ? default : wall.Openings)
            {
                if (IsDoorway(opening) && LeadsToRoomWith(tied.DoorsToRoomsWith, backs!.RoomsBehind(SurfaceAddress.Of(room.Id, wall.Id), opening)))
                {
                    found.Add(Exactly(opening.Id, PlanPatch.Stretch(face, opening.Left, opening.Right)));
                }
            }

            if (!wall.Open && tied.EveryWall)
            {
                found.Add(Exactly(wall.Id, PlanPatch.Stretch(face, Distance.Zero, wall.Length)));
            }
        }

        return found;
    }

    /// <summary>A fixture by its corners, or by where it stands against its wall.</summary>
    public static ThingInPlan Of(Fixture fixture, WallPlan plan, UsualMeasures usual)
    {
        if (fixture.Plan.Count >= 2 && IsInAHouse(fixture.Plan))
        {
            PlanPatch around = PlanPatch.Around(fixture.Plan);
            return new(fixture.Id, around, around, fixture);
        }

        int face = fixture.Wall is { } wall ? plan.IndexOf(wall) : -1;
        if (face < 0 || fixture.Left is not { } left || fixture.Right is not { } right || right <= left || right > plan.WallOf(face).Length)
        {
            return new(fixture.Id, null, default, fixture);
        }

        return new(
            fixture.Id,
            PlanPatch.Against(face, left, right, Distance.Zero, fixture.Depth ?? Distance.FromTicks(1)),
            PlanPatch.Against(face, left, right, Distance.Zero, fixture.Depth ?? usual.MostThingDepth),
            fixture);
    }

    /// <summary>Whether a person walks through it.</summary>
    public static bool IsDoorway(Opening opening) =>
        opening.Kind != OpeningKind.Window && opening.Kind != OpeningKind.PassThrough && (opening.Sill is not { } sill || sill.Offset <= Distance.Zero);

    public static bool HasDoorway(Wall wall) => wall.Openings.Exists(IsDoorway);

    private static ThingInPlan Of(CounterInterruption part, Counter counter, int face, UsualMeasures usual)
    {
        string name = part.Kind + " of " + counter.Id + " at " + part.Left;
        Distance depth = counter.Depth ?? usual.MostThingDepth;
        Distance behind = part.Behind ?? Distance.Zero;
        Distance mostBehind = part.Behind ?? Distance.Min(usual.MostBehindABasin, depth);

        // Nearest to the wall is furthest out of the way: what is sure begins where the most counter may be left.
        return part.Right <= part.Left || mostBehind > depth ? new(name, null, default)
            : new(name, PlanPatch.Against(face, part.Left, part.Right, mostBehind, counter.Depth ?? mostBehind), PlanPatch.Against(face, part.Left, part.Right, behind, depth),
                null, counter.Top is { Datum: not Datum.Countertop } top ? top : null);
    }

    private static ThingInPlan Exactly(string name, PlanPatch patch) => new(name, patch, patch);

    private static bool LeadsToRoomWith(Items<FixtureKind> kinds, IEnumerable<Room> rooms)
    {
        foreach (Room room in rooms)
        {
            foreach (Fixture fixture in room.Fixtures)
            {
                if (kinds.Contains(fixture.Kind))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static bool IsInAHouse(Items<PlanPoint> points) => !points.Exists(point => !WallPlan.IsInAHouse(point));
}

/// <summary>The plan of a room, or of what lies before an outside face, and what zones and outlets in it are tied to: worked out once for a space that is judged again and again.</summary>
internal sealed class RoomInPlan
{
    private readonly BackFaces backs;
    private readonly UsualMeasures usual;
    private PlanPoint? middle;
    private bool isMiddleKnown;
    private WallEnd? hand;
    private readonly List<(RoomAnchor Tied, List<ThingInPlan> Things)> known = [];

    private RoomInPlan(Room room, BackFaces backs, UsualMeasures usual)
    {
        this.usual = usual;
        Room = room;
        this.backs = backs;
        Plan = new(room);
    }

    /// <summary>The room; outdoors, one of the face's walls and of what stands before it.</summary>
    public Room Room { get; }

    public WallPlan Plan { get; }

    /// <summary>The middle of a rectangular room; null for one of another shape. Worked out once.</summary>
    public PlanPoint? Middle
    {
        get
        {
            (middle, isMiddleKnown) = (isMiddleKnown ? middle : Plan.MiddleOfRectangle, true);
            return middle;
        }
    }

    /// <summary>To which side what ties in it goes. Worked out once: it tells the whole room.</summary>
    public WallEnd Hand => hand ??= RoomHand.Of(Room, null, usual);

    public static RoomInPlan Of(SpaceView space) => space.Prepared(static view => new RoomInPlan(
        view.Room ?? new Room(view.Id, default, view.Id).WithWalls(view.Face!.Walls).WithFixtures(view.Face.Fixtures), view.Backs, view.Usual));

    public List<ThingInPlan> Things(RoomAnchor tied)
    {
        foreach ((RoomAnchor one, List<ThingInPlan> there) in known)
        {
            if (ReferenceEquals(one, tied))
            {
                return there;
            }
        }

        List<ThingInPlan> things = ThingInPlan.Of(tied, Room, Plan, backs, usual);
        known.Add((tied, things));
        return things;
    }
}
