using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Each outside face needs outlets: for itself, or for the entrances in it.</summary>
public sealed record FaceSubject : OutletSubject
{
    private static readonly Wording TooFarToTell = $"whether the one that is nearest reaches it only a look on site could tell";

    private static readonly Wording NoFaceBefore = $"no outside face is described before its entrance";

    /// <summary>The ids of the faces that the row speaks of; every face where none is named.</summary>
    public Items<string> Faces { get; init; }

    /// <summary>Whether only faces with an entrance need it, and it goes beside that.</summary>
    public bool AtEntrances { get; init; }

    /// <summary>Doors of these kinds are no entrances.</summary>
    public Items<OpeningKind> ExceptOpenings { get; init; }

    /// <summary>How far from an entrance, straight in plan, one surely serves it, itself allowed; null where any on its face does.</summary>
    public Distance? SurelyWithin { get; init => field = value is { } reach ? RoomAnchor.CheckReach(reach, nameof(SurelyWithin)) : null; }

    /// <summary>How far from an entrance one may serve it at the most, itself allowed: between the two only a look on site could tell.</summary>
    public Distance? PerhapsWithin { get; init => field = value is { } reach ? RoomAnchor.CheckReach(reach, nameof(PerhapsWithin)) : null; }

    /// <inheritdoc/>
    public override SpaceKind Kind => SpaceKind.OutsideFace;

    /// <inheritdoc/>
    public override string Numbers => (AtEntrances ? "the entrances of a face" : "a face") + (Faces.Count == 0 ? "" : " named " + Faces) + (ExceptOpenings.Count == 0 ? "" : ", not " + ExceptOpenings)
        + (SurelyWithin is { } near ? ", within " + near + " of each" : "") + (PerhapsWithin is { } far ? ", perhaps within " + far : "");

    internal override Items<string> KindsNamed => ExceptOpenings.Select(kind => kind.Name);

    internal override void Judge(RequiredOutlet row, SpaceView space, SpaceStatement statement)
    {
        if (space.Face is not { } face)
        {
            LeftOut(space, statement);
        }
        else if ((Faces.Count > 0 && !Faces.Contains(face.Id)) || (AtEntrances && EntranceOf(face, ExceptOpenings) is null) || !row.IsDescribed(space, statement))
        {
            return;
        }
        else if (AtEntrances)
        {
            Entrances(row, space, face, statement);
        }
        else if (Count(space, row.Outlet, out int possible, out MissingFacts needs) is var sure && sure >= row.Count.Least)
        {
            statement.Meets(face.Id, face.Id);
        }
        else
        {
            Lacks(row, space, sure, possible >= row.Count.Least, needs, statement);
        }
    }

    /// <summary>Where every box is described, a face that isn't has none: that is told of the dwelling. So it is where faces are described, and none is called what the row speaks of.</summary>
    internal override bool SpeaksOf(SpaceView space) => space.Kind == SpaceKind.Dwelling
        && (AtEntrances ? space.IsWhole && LeftOutEntrances.In(space, ExceptOpenings).Count > 0
            : Faces.Count > 0 && (space.IsWhole || space.Dwelling.Outside.Count > 0) && !space.Dwelling.Outside.Exists(face => Faces.Contains(face.Id)));

    /// <summary>What serves the face goes anywhere on it; what serves entrances, where all that it would serve from the place that is offered are near it, too.</summary>
    internal override bool ServesFrom(RequiredOutlet row, SpaceView space, string lacking, SpaceBox box, Distance offered) => space.Face is { } face
        && (!AtEntrances || face.Walls.Exists(wall => wall.Id == box.WallId && !wall.Openings.Exists(
            opening => ThingInPlan.IsDoorway(opening) && !ExceptOpenings.Contains(opening.Kind) && !(Off(opening, offered) > SurelyWithin) && Reaches(space, wall, opening, box) != true)));

    private void LeftOut(SpaceView space, SpaceStatement statement)
    {
        if (!AtEntrances)
        {
            statement.LeavesOpen($"no outside face is described that is called {Wording.Or(Faces.Select(Wording.Term)):names}");
            return;
        }

        foreach (string? room in LeftOutEntrances.In(space, ExceptOpenings))
        {
            statement.LeavesOpen(NoFaceBefore, room);
        }
    }

    // On its own, because what a lambda captures is allocated where its method begins. What serves the face as a whole goes anywhere on it.
    private static void Lacks(RequiredOutlet row, SpaceView space, int sure, bool mayBeMet, MissingFacts needs, SpaceStatement statement) =>
        row.Lacks(
            statement, space.Id, space.Id, sure, row.Count.Least, mayBeMet, needs, () => row.Counted(0),
            added => OutletPlace.OnFace(space, added, Distance.Zero, Distance.MaxValue, null));

    /// <summary>The first entrance in a face.</summary>
    internal static Opening? EntranceOf(OutsideFace face, Items<OpeningKind> except)
    {
        foreach (Wall wall in face.Walls)
        {
            foreach (Opening opening in wall.Openings)
            {
                if (ThingInPlan.IsDoorway(opening) && !except.Contains(opening.Kind))
                {
                    return opening;
                }
            }
        }

        return null;
    }

    /// <summary>Entrances one after another: one light may serve several that are close to each other. Those without are told together where one more would serve them.</summary>
    private void Entrances(RequiredOutlet row, SpaceView space, OutsideFace face, SpaceStatement statement)
    {
        int count = 0;
        bool areAllMet = true;
        List<Bare>? bare = null;
        foreach (Wall wall in face.Walls)
        {
            foreach (Opening opening in wall.Openings)
            {
                if (!ThingInPlan.IsDoorway(opening) || ExceptOpenings.Contains(opening.Kind))
                {
                    continue;
                }

                count++;
                (int sure, int perhaps, int possible, MissingFacts needs) = At(row, space, wall, opening);
                if (sure >= row.Count.Least)
                {
                    continue;
                }

                areAllMet = false;
                if (sure + perhaps >= row.Count.Least)
                {
                    statement.LeavesOpen(TooFarToTell, face.Id + " " + opening.Id);
                }
                else if (bare is null || !bare.Exists(other => other.TakesIn(wall, opening, SurelyWithin)))
                {
                    (bare ??= []).Add(new(wall, opening, sure, possible, needs));
                }
            }
        }

        if (areAllMet)
        {
            statement.Meets(face.Id, face.Id);
        }

        foreach (Bare one in bare ?? [])
        {
            Lacks(row, space, one, one.Doors.Count == count ? face.Id : face.Id + " " + one.Doors[0].Id, statement);
        }
    }

    /// <summary>A light goes beside the first of its entrances, where it serves the others too.</summary>
    private void Lacks(RequiredOutlet row, SpaceView space, Bare bare, string subject, SpaceStatement statement)
    {
        bool isSomeFurther = Count(space, row.Outlet, out int some, out _) > 0 || some > 0;
        row.Lacks(
            statement, subject, space.Id, bare.Sure, row.Count.Least, bare.Possible >= row.Count.Least, bare.Needs, () => isSomeFurther && bare.Possible == 0 ? $"{row.Counted(0):none} near it" : row.Counted(0),
            added => OutletPlace.Beside(space, added, bare.Doors[0], at => bare.Doors.TrueForAll(door => !(Off(door, at) > SurelyWithin))));
    }

    /// <summary>How many there are that surely serve an entrance, how many beside them of which only a look on site could tell, and how many may be one at all.</summary>
    private (int Sure, int Perhaps, int Possible, MissingFacts Needs) At(RequiredOutlet row, SpaceView space, Wall wall, Opening entrance)
    {
        (int sure, int perhaps, int possible, MissingFacts needs) = (0, 0, 0, MissingFacts.None);
        foreach (SpaceBox box in space.Boxes)
        {
            Verdict counts = row.Outlet.Of(box, out MissingFacts missing);
            bool? reaches = counts == Verdict.Fails ? false : Reaches(space, wall, entrance, box);
            if (reaches != false)
            {
                sure += counts == Verdict.Passes && reaches == true ? 1 : 0;
                perhaps += counts == Verdict.Passes && reaches is null ? 1 : 0;
                possible++;
                needs |= counts == Verdict.Unknown ? missing : MissingFacts.None;
            }
        }

        return (sure, perhaps, possible, needs);
    }

    /// <summary>Whether a box is near enough to an entrance; null where that isn't known.</summary>
    private bool? Reaches(SpaceView space, Wall wall, Opening entrance, SpaceBox box)
    {
        if (SurelyWithin is not { } near)
        {
            return true;
        }

        WallPlan plan = RoomInPlan.Of(space).Plan;
        if (box.Along is not { } at || plan.IsTooLarge || plan.IndexOf(box.WallId) is not (>= 0 and var face))
        {
            return null;
        }

        PlanGap gap = plan.Gap(face, at, PlanPatch.Stretch(plan.IndexOf(wall.Id), entrance.Left, entrance.Right));
        return gap.IsWithin(near) == true ? true : PerhapsWithin is { } far && gap.IsWithin(far) == false ? false : null;
    }

    private static Distance Off(Opening door, Distance at) => Distance.Max(Distance.Zero, Distance.Max(door.Left - at, at - door.Right));

    /// <summary>Entrances in one wall that nothing serves, and that one box more would.</summary>
    private sealed class Bare(Wall wall, Opening first, int sure, int possible, MissingFacts needs)
    {
        public List<Opening> Doors { get; } = [first];

        public int Sure => sure;

        public int Possible => possible;

        public MissingFacts Needs => needs;

        /// <summary>Takes in another entrance, if a box between it and all of these is near enough to each.</summary>
        public bool TakesIn(Wall its, Opening other, Distance? reach)
        {
            (Distance left, Distance right) = (other.Left, other.Right);
            foreach (Opening door in Doors)
            {
                (left, right) = (Distance.Max(left, door.Left), Distance.Min(right, door.Right));
            }

            bool isNear = its == wall && !(left - right > reach);
            if (isNear)
            {
                Doors.Add(other);
            }

            return isNear;
        }
    }
}
