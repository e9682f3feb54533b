using System;

namespace BoxHeights.Rules;

/// <summary>A box is cut into one sheet of wall board, never across a seam. An edge right on a seam is fine.</summary>
/// <remarks>Butt joints aren't judged: where they fall is the hanger's choice on the day. A box nailed to a stud can't straddle a vertical seam, which lies on a stud.</remarks>
[Row]
public sealed partial record BoardSeam : PlacementRule
{
    private static readonly Wording NoSheetWidths = $"how wide the upright sheets are isn't stated";
    private static readonly Wording NoDatum = $"it isn't stated where the surface lies that its height is taken from";
    private static readonly Wording NoCeiling = $"no rough height and ceiling board is stated";
    private static readonly Wording NotSaidHow = $"how the board is hung isn't stated";
    private static readonly Wording SlopedTop = $"the wall doesn't end at a level ceiling, and its board isn't said to be hung from the floor or upright";

    /// <summary>A wall of more sheets is no wall of a house.</summary>
    private const int MostSheets = 1000;

    /// <summary>Rooms that may never get board, or get it in other ways: judged there only where the way of hanging is stated.</summary>
    public Items<RoomKind> OnlyIfStatedIn { get; init; }

    /// <inheritdoc/>
    public override bool ReadsWallParts => false;

    /// <inheritdoc/>
    public override string Numbers => "top of the box at or under each seam, or its bottom at or over it; where the courses leave a strip, the edge of the last is a seam"
        + (OnlyIfStatedIn.Count == 0 ? "" : "; only if the way of hanging is stated in: " + OnlyIfStatedIn);

    /// <inheritdoc/>
    public override void State(PlacementSite site, PlacementStatement statement)
    {
        if (site.IsOutside)
        {
            // Wall board hangs inside.
            return;
        }

        // A layout without widths tells no more than a thickness.
        HungBoards? told = site.Boards is { Layout: { } layout } && (layout.Widths.Count > 0 || layout.Hung == BoardDirection.Vertical) ? site.Boards : null;
        if (site.Surface.Wall is { Top.Count: > 0 } && told is not { StartsAtTop: false })
        {
            statement.NotJudged(SlopedTop);
            return;
        }

        if (told is not { } boards)
        {
            Items<HungBoards> usual = site.CommonBoards;
            if (usual.Count == 0 || OnlyIfStatedIn.Contains(site.Room))
            {
                statement.NotJudged(site.Surface.Space.BoardWall is null && !OnlyIfStatedIn.Contains(site.Room) ? NoCeiling : NotSaidHow);
                return;
            }

            // Not said how: silent but for a box that every common way of hanging would cut in two.
            AllowedHeights any = AllowedHeights.Nothing;
            foreach (HungBoards common in usual)
            {
                any |= Clear(site, common);
            }

            statement.Everywhere(any);
            return;
        }

        if (boards.Layout.Hung == BoardDirection.Vertical)
        {
            StateVertical(site, boards.Layout, statement);
            return;
        }

        if (!site.TryHeightOf(new Level(Distance.Zero, Datum.Subfloor), site.Box.Datum, out _))
        {
            statement.NotJudged(NoDatum);
            return;
        }

        statement.Everywhere(Clear(site, boards));
    }

    /// <summary>Heights at which a box straddles no seam.</summary>
    private static AllowedHeights Clear(PlacementSite site, HungBoards boards)
    {
        AllowedHeights allowed = AllowedHeights.Anything;
        MissingFacts unsure = boards.StartsAtTop ? MissingFacts.Ceiling : MissingFacts.Boards;
        foreach (DistanceRange seam in boards.Seams)
        {
            AllowedHeights one = site.AtMost(TargetLine.BoxTop, seam, Datum.Subfloor) | site.AtLeast(TargetLine.BoxBottom, seam, Datum.Subfloor);
            allowed &= seam.IsExact ? one : new(one.Sure, one.Possible, one.Needs | unsure);
        }

        if (boards.MaybeSeam is { } edge)
        {
            allowed &= AllowedHeights.OneOf(site.AtMost(TargetLine.BoxTop, edge, Datum.Subfloor) | site.AtLeast(TargetLine.BoxBottom, edge, Datum.Subfloor), AllowedHeights.Anything, unsure);
        }

        if (boards.NothingBeyond is { } end)
        {
            AllowedHeights described = boards.StartsAtTop ? site.AtLeast(TargetLine.BoxBottom, end, Datum.Subfloor) : site.AtMost(TargetLine.BoxTop, end, Datum.Subfloor);
            allowed &= AllowedHeights.OneOf(described, AllowedHeights.Anything, MissingFacts.Boards);
        }

        return allowed;
    }

    private static void StateVertical(PlacementSite site, BoardLayout layout, PlacementStatement statement)
    {
        if (site.Box.Mounting is null or MountingMethod.Stud)
        {
            statement.Everywhere(AllowedHeights.Anything);
            return;
        }

        if (!site.Box.Size.IsStated)
        {
            statement.Everywhere(AllowedHeights.DependsOn(MissingFacts.BoxSize));
            return;
        }

        if (layout.Widths.Count == 0)
        {
            statement.NotJudged(NoSheetWidths);
            return;
        }

        Distance length = site.Surface.Length;
        Distance along = Distance.Zero;
        DistanceRange wide = site.Box.Size.WidthRange;
        for (int course = 0; course < MostSheets; course++)
        {
            along += layout.Widths[Math.Min(course, layout.Widths.Count - 1)];
            if (along >= length)
            {
                return;
            }

            Distance seam = layout.From == BoardOrigin.Right ? length - along : along;
            Across(seam, wide.To, AllowedHeights.DependsOn(MissingFacts.BoxSize));
            Across(seam, wide.From, AllowedHeights.Nothing);
        }

        void Across(Distance seam, Distance width, AllowedHeights allowed)
        {
            Distance reach = Distance.FromTicks((width.Ticks / 2) - 1);
            statement.Within(seam - reach, seam + reach, allowed);
        }
    }
}
