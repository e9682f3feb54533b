using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Where the seams of wall board fall: a layout of courses, hung under a ceiling or from the floor.</summary>
/// <remarks>
/// Boards hung from the top start at the underside of the ceiling board, so a seam lies at the board-wall height less the widths above it;
/// what is left over is at the floor, and a last course that doesn't fit is ripped there without moving the seam above it. Where more than 1 in is left
/// (and more than the gap that is stated), a strip has to fill it, whose seam is the last course's edge: 48 and 48 in under 108-1/2 in leave one at 12-1/2.
/// Boards hung from the floor leave their strip at the ceiling, and start anywhere up to 1 in above the subfloor where no gap is stated.
/// Common practice, no source.
/// </remarks>
[Told]
public sealed partial class HungBoards
{
    /// <summary>Where its seams are.</summary>
    public override string ToString() => Seams.Count == 0 ? "no seams" : "seams at " + Seams;

    /// <summary>The layout that this is worked out from.</summary>
    public BoardLayout Layout { get; }

    /// <summary>
    /// The horizontal seams above the subfloor, in hanging order, the last of them along the strip that fills what the courses leave, if they leave one for certain;
    /// none for boards that run vertically.
    /// </summary>
    public Items<DistanceRange> Seams { get; }

    /// <summary>What the last course leaves: below it where board is hung from the top, above it where it is hung from the bottom. Null while that isn't known.</summary>
    /// <remarks>Hung from the top: from the subfloor to the underside of the last course; negative where that course has to be ripped by this and the floor gap. Hung from the bottom: from its top to the ceiling board.</remarks>
    public DistanceRange? Leftover { get; }

    /// <summary>The edge of the last course, where it isn't known whether it leaves a strip: of a ceiling that isn't known exactly.</summary>
    internal DistanceRange? MaybeSeam { get; private init; }

    /// <summary>The edge of the last course, where it may leave more than one sheet fills: how the rest is hung isn't described.</summary>
    internal DistanceRange? NothingBeyond { get; private init; }

    /// <summary>Whether the seams are counted down from the ceiling.</summary>
    public bool StartsAtTop => CountsFromTop(Layout);

    /// <summary>Works out the seams.</summary>
    /// <param name="layout">How the boards are hung.</param>
    /// <param name="boardWall">From the subfloor to the underside of the ceiling board; null where it isn't known, which leaves what is hung from the floor and what is hung upright.</param>
    /// <exception cref="ArgumentNullException"><paramref name="layout"/> is null.</exception>
    /// <exception cref="ArgumentException">The courses are counted down from a ceiling of unknown height.</exception>
    public static HungBoards Under(BoardLayout layout, DistanceRange? boardWall) => Under(layout, boardWall, UsualMeasures.Generic);

    /// <summary>The same where sheets and what is left under them measure otherwise.</summary>
    internal static HungBoards Under(BoardLayout layout, DistanceRange? boardWall, UsualMeasures usual)
    {
        Guard.NotNull(layout, nameof(layout));

        return layout.Hung == BoardDirection.Vertical ? new(layout, Items<DistanceRange>.None, boardWall) : Across(layout, boardWall, usual, fillsUp: true);
    }

    private static HungBoards Across(BoardLayout layout, DistanceRange? boardWall, UsualMeasures usual, bool fillsUp)
    {
        bool fromTop = CountsFromTop(layout);
        DistanceRange at = !fromTop ? layout.FloorGap ?? new DistanceRange(Distance.Zero, usual.BoardGap)
            : boardWall ?? throw new ArgumentException("Where the boards start isn't known: state the height of the ceiling board.", nameof(boardWall));
        DistanceRange[] between = new DistanceRange[Math.Max(0, layout.Widths.Count - 1)];
        for (int course = 0; course < layout.Widths.Count; course++)
        {
            if (course > 0)
            {
                between[course - 1] = at;
            }

            at = fromTop ? at - layout.Widths[course] : at + layout.Widths[course];
        }

        DistanceRange? left = fromTop ? at : boardWall - at;
        Distance gap = fromTop && layout.FloorGap is { } stated && stated > usual.BoardGap ? stated : usual.BoardGap;
        bool fills = fillsUp && layout.Widths.Count > 0;

        // A box over the last course of boards that stand on the floor shows that the wall goes on, whatever its height is.
        bool isSure = fills && (left is not { } rest || rest.From > gap);
        Items<DistanceRange> seams = Items<DistanceRange>.Own(between);
        return new(layout, isSure ? seams.With(at) : seams, left)
        {
            MaybeSeam = fills && !isSure && left is { } some && some.To > gap ? at : null,
            NothingBeyond = fills && left is { } much && much.To > (usual.WidestSheet ?? gap) ? at : null,
        };
    }

    /// <summary>The ways in which board is commonly hung from the ceiling of a wall.</summary>
    /// <param name="boardWall">From the subfloor to the underside of the ceiling board.</param>
    /// <param name="usual">The sheets that there are.</param>
    internal static Items<HungBoards> Common(DistanceRange boardWall, UsualMeasures usual)
    {
        List<HungBoards> hung = [];
        foreach (BoardCourses way in usual.Courses)
        {
            if ((way.Above is not { } low || boardWall.To > low) && (way.UpTo is not { } high || boardWall.To <= high))
            {
                hung.Add(Across(new BoardLayout().WithWidths(way.Widths), boardWall, usual, fillsUp: false));
            }
        }

        return new(hung);
    }

    /// <summary>From the subfloor to the underside of the ceiling board: the rough height less everything that is fastened under it.</summary>
    /// <param name="ceiling">The ceiling.</param>
    /// <param name="boardWall">The height found.</param>
    /// <returns>False when the rough height or the board isn't stated. Strapping that isn't stated counts as none.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="ceiling"/> is null.</exception>
    public static bool TryBoardWall(Ceiling ceiling, out DistanceRange boardWall)
    {
        Guard.NotNull(ceiling, nameof(ceiling));

        boardWall = default;
        if (ceiling.Framing is not { } framing || ceiling.Board is not { } board)
        {
            return false;
        }

        boardWall = framing - board - (ceiling.Strapping ?? Distance.Zero);
        return true;
    }

    internal static bool CountsFromTop(BoardLayout layout) => layout.Hung == BoardDirection.Horizontal && layout.From != BoardOrigin.Bottom;
}
