namespace BoxHeights.Rules;

/// <summary>Each deck, porch and balcony before an outside face needs outlets within reach.</summary>
public sealed record PlatformSubject : OutletSubject
{
    /// <summary>The widest gap to the wall with which a platform counts, itself included; null where any does.</summary>
    public Distance? MostGap { get; init; }

    /// <summary>Whether only platforms that a door leads to count.</summary>
    public bool NeedsDoor { get; init; }

    /// <summary>How far beyond a platform's end an outlet on its wall is still reached from it, itself allowed.</summary>
    public Distance Beyond { get; init; }

    /// <inheritdoc/>
    public override SpaceKind Kind => SpaceKind.OutsideFace;

    /// <inheritdoc/>
    public override string Numbers => "each platform, up to " + Beyond + " beyond its ends" + (MostGap is { } gap ? ", no further than " + gap + " from the wall" : "") + (NeedsDoor ? ", that a door leads to" : "");

    internal override void Judge(RequiredOutlet row, SpaceView space, SpaceStatement statement)
    {
        if (space.Face is not { Platforms.Count: > 0 } face || !row.IsDescribed(space, statement))
        {
            return;
        }

        foreach (Platform platform in face.Platforms)
        {
            if (!(platform.Gap > MostGap) && face.Walls.Count > 0 && (!NeedsDoor || HasDoor(face.Walls[0], platform)))
            {
                Judge(row, space, face, platform, statement);
            }
        }
    }

    internal override bool ServesFrom(RequiredOutlet row, SpaceView space, string lacking, SpaceBox box, Distance offered)
    {
        MissingFacts missing = MissingFacts.None;
        return space.Face is { } face && box.Address == SurfaceAddress.Of(face.Id, face.Walls[0].Id)
            && face.Platforms.Exists(platform => SubjectOf(space, platform) == lacking && IsReached(platform, box.Along) && LowEnough(row.Outlet, box, platform, ref missing) == Verdict.Passes);
    }

    private static string SubjectOf(SpaceView space, Platform platform) => space.Id + " " + platform.Id;

    private bool IsReached(Platform platform, Distance? along) => along is { } at && at >= platform.Left - Beyond && at <= platform.Right + Beyond;

    private void Judge(RequiredOutlet row, SpaceView space, OutsideFace face, Platform platform, SpaceStatement statement)
    {
        string address = SurfaceAddress.Of(face.Id, face.Walls[0].Id);
        int sure = 0;
        int possible = 0;
        MissingFacts needs = MissingFacts.None;
        foreach (SpaceBox box in space.Boxes)
        {
            MissingFacts missing = MissingFacts.None;
            Verdict counts = box.Address == address ? row.Outlet.Of(box, null, out missing) : Verdict.Fails;
            counts = counts == Verdict.Fails ? counts : counts.And(LowEnough(row.Outlet, box, platform, ref missing));
            if (counts != Verdict.Fails && (box.Along is null || IsReached(platform, box.Along)))
            {
                missing |= box.Along is null ? MissingFacts.Along : MissingFacts.None;
                sure += counts == Verdict.Passes && box.Along is not null ? 1 : 0;
                needs |= missing;
                possible++;
            }
        }

        if (sure < row.Count.Least)
        {
            // Whether it is near enough to need one isn't always said.
            bool isNear = MostGap is null || platform.Gap is not null;
            Lacks(row, space, platform, address, sure, possible >= row.Count.Least || !isNear, needs | (isNear ? MissingFacts.None : MissingFacts.PlanPlace), statement);
        }
        else if (statement.TellsAll)
        {
            statement.Meets(SubjectOf(space, platform), address);
        }
    }

    private static void Lacks(RequiredOutlet row, SpaceView space, Platform platform, string address, int sure, bool mayBeMet, MissingFacts needs, SpaceStatement statement) =>
        row.Lacks(
            statement, SubjectOf(space, platform), address, sure, row.Count.Least, mayBeMet, needs, () => row.Counted(0),
            added => OutletPlace.OnFace(space, added, platform.Left, platform.Right, platform.Surface));

    /// <summary>Whether a box is above a platform, and low enough. Where its surface isn't stated, that is known of a box that is low enough above the ground under it.</summary>
    private static Verdict LowEnough(CountedOutlet outlet, SpaceBox box, Platform platform, ref MissingFacts needs)
    {
        if (outlet.Highest is not { } highest)
        {
            return Verdict.Passes;
        }

        if (platform.Surface is { } surface)
        {
            return box.IsWithin(TargetLine.Center, surface.Datum, surface.Offset, surface.Offset + highest.Offset, ref needs);
        }

        MissingFacts unknown = MissingFacts.None;
        if (box.IsWithin(TargetLine.Center, highest.Datum, Distance.MinValue, highest.Offset, ref unknown) == Verdict.Passes)
        {
            return Verdict.Passes;
        }

        needs |= MissingFacts.Datum;
        return Verdict.Unknown;
    }

    private static bool HasDoor(Wall wall, Platform platform) =>
        wall.Openings.Exists(opening => ThingInPlan.IsDoorway(opening) && opening.Left < platform.Right && platform.Left < opening.Right);
}
