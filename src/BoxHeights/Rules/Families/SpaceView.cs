using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>What a space rule is judged for, with its boxes where they are now.</summary>
/// <remarks>Boxes that a fault keeps from being judged aren't in it. Where a box is must be asked anew each time a rule is judged; all else stays.</remarks>
public sealed class SpaceView
{
    private readonly Dictionary<Type, object> prepared = [];
    private readonly SettledOptions options;

    internal SpaceView(SettledOptions options, SpaceKind kind, string id, Dwelling dwelling, Levels levels, Items<SpaceBox> boxes)
    {
        this.options = options;
        Kind = kind;
        Id = id;
        Dwelling = dwelling;
        Levels = levels;
        Boxes = boxes;
    }

    /// <summary>What it is.</summary>
    public SpaceKind Kind { get; }

    /// <summary>Its id; the dwelling's name for the dwelling.</summary>
    public string Id { get; }

    /// <summary>The whole description, with openings that one face of a wall has described of its other face too. Its boxes are where they were when it was resolved: read <see cref="Boxes"/> instead.</summary>
    public Dwelling Dwelling { get; }

    /// <summary>The room; null unless it is one.</summary>
    public Room? Room { get; internal init; }

    /// <summary>The outside face; null unless it is one.</summary>
    public OutsideFace? Face { get; internal init; }

    /// <summary>The flight of stairs; null unless it is one.</summary>
    public StairFlight? Flight { get; internal init; }

    /// <summary>The storey; null unless it is one.</summary>
    public Storey? Storey { get; internal init; }

    /// <summary>Where the datums of the room or outside face are; the usual ones elsewhere.</summary>
    public Levels Levels { get; }

    /// <summary>From the subfloor to the underside of the ceiling framing; null where that isn't stated, and for what is no room.</summary>
    public DistanceRange? Framing { get; internal init; }

    /// <summary>The boxes on its surfaces: of a storey, of all its rooms; of a flight, of the dwelling.</summary>
    public Items<SpaceBox> Boxes { get; private set; }

    /// <summary>Whether every box that there will be is described, so that what isn't described is lacking.</summary>
    public bool IsWhole => options.AllBoxesAreDescribed;

    /// <summary>The units in which findings are printed.</summary>
    public LengthUnits Units => options.Units;

    /// <summary>Every box of the dwelling.</summary>
    internal IReadOnlyList<SpaceBox> OfDwelling { get; init; } = [];

    /// <summary>What places of boxes to add are rounded to along a wall.</summary>
    internal Distance AlongStep => options.AlongStep;

    /// <summary>Which faces of the dwelling are two sides of one wall.</summary>
    internal BackFaces Backs { get; init; } = BackFaces.None;

    /// <summary>Whether something that is described on one of its walls can't be.</summary>
    internal bool HasBrokenParts { get; init; }

    /// <summary>Takes in a box that was added while the layout is open.</summary>
    internal void Enter(SpaceBox box) => Boxes = Boxes.With(box);

    /// <summary>Something worked out once from the description and kept while the layout is open, such as the runs of a room's walls.</summary>
    /// <typeparam name="T">What is worked out; one of each type is kept.</typeparam>
    /// <param name="prepare">Works it out. It must not read where boxes are.</param>
    public T Prepared<T>(Func<SpaceView, T> prepare)
        where T : class
    {
        if (!prepared.TryGetValue(typeof(T), out object? kept))
        {
            prepared.Add(typeof(T), kept = prepare(this));
        }

        return (T)kept;
    }
}

/// <summary>A box as a space rule sees it: its traits, and where it is now.</summary>
public sealed class SpaceBox
{
    private readonly LayoutState state;

    internal SpaceBox(LayoutState state, int index)
    {
        this.state = state;
        Index = index;
    }

    /// <summary>Everything about it except where it is.</summary>
    public BoxTraits Traits => state.SitesOf(Index)[0].Site.Box;

    /// <summary>Its id.</summary>
    public string Id => state.Boxes[Index].Source.Id;

    /// <summary>The id of its room or outside face.</summary>
    public string SpaceId => state.Boxes[Index].Surface.Space.Id;

    /// <summary>The kind of its room; the empty kind outside.</summary>
    public RoomKind Room => state.Boxes[Index].Surface.RoomKind;

    /// <summary>The address of the wall, ceiling or floor that it is listed under.</summary>
    public string Address => state.Boxes[Index].Surface.Address;

    /// <summary>Its center along its wall; null where that isn't known.</summary>
    public Distance? Along => state.AtOf(Index);

    /// <summary>Where it is in plan, on a ceiling or a floor; null where that isn't stated.</summary>
    public PlanPoint? Plan => state.Boxes[Index].Source.Plan;

    internal int Index { get; }

    /// <summary>The storey that it is on.</summary>
    internal string StoreyId => state.Boxes[Index].Surface.Space.StoreyId;

    /// <summary>Its height as it is now, in the terms in which it was given; null where it has none.</summary>
    internal BoxHeight? Height => state.HeightOf(Index);

    /// <summary>The top of the counter that stands where it is on its wall; null where none does, or its top isn't known.</summary>
    internal Level? CounterTop =>
        Along is { } along && state.Boxes[Index].Surface.CounterOn(along, along) is { } counter && ResolvedSurface.TopOf(counter) is { } top && top.Datum != Datum.Countertop ? top : null;

    /// <summary>How far one of its lines lies above a datum.</summary>
    /// <param name="line">The line.</param>
    /// <param name="datum">The datum.</param>
    /// <param name="height">The height; a range where something isn't known exactly.</param>
    /// <param name="needs">What isn't known exactly, or at all.</param>
    /// <returns>False when the box has no height, or the datum or the line isn't known there.</returns>
    public bool TryHeightOf(TargetLine line, Datum datum, out DistanceRange height, out Facts needs)
    {
        height = default;
        needs = Facts.None;
        if (!state.HasReading(Index) || !state.SitesOf(Index)[0].Site.TryReading(line, Distance.Zero, datum, out DistanceRange zero, out needs))
        {
            return false;
        }

        height = state.PlaceOf(Index).Readings - zero;
        if (state.SitesOf(Index) is { Length: > 1 } edges)
        {
            // The edge isn't stated: anywhere from what the first means to what the last does.
            foreach (StatedSite edge in edges)
            {
                if (!edge.Site.TryReading(line, Distance.Zero, datum, out zero, out Facts more))
                {
                    return false;
                }

                needs |= more | Facts.EdgeMeant;
                DistanceRange one = state.PlaceOf(Index).Readings - zero;
                height = new(one.From < height.From ? one.From : height.From, one.To > height.To ? one.To : height.To);
            }
        }

        return true;
    }

    /// <summary>Whether one of its lines lies between two heights above a datum, both allowed.</summary>
    /// <param name="line">The line.</param>
    /// <param name="datum">The datum.</param>
    /// <param name="low">The lowest.</param>
    /// <param name="high">The highest.</param>
    /// <param name="needs">Takes what would decide it where that isn't known.</param>
    internal Verdict IsWithin(TargetLine line, Datum datum, Distance low, Distance high, ref Facts needs)
    {
        if (!TryHeightOf(line, datum, out DistanceRange height, out Facts missing))
        {
            needs |= missing == Facts.None ? Facts.Datum : missing;
            return Verdict.Unknown;
        }

        if (height.From >= low && height.To <= high)
        {
            return Verdict.Passes;
        }

        bool some = height.To >= low && height.From <= high;
        needs |= some ? missing : Facts.None;
        return some ? Verdict.Unknown : Verdict.Fails;
    }
}
