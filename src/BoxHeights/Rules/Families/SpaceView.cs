using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>What a space rule is judged for, with its boxes where they are now.</summary>
/// <remarks>Boxes that a fault keeps from being judged aren't in it. Where a box is must be asked anew each time a rule is judged; all else stays.</remarks>
public sealed class SpaceView
{
    private readonly Dictionary<Type, object> prepared;
    private readonly SpaceBoxes boxes;
    private readonly BoxesNow state;

    internal SpaceView(BoxesNow state, SpaceKind kind, string id, DwellingMemo whole, Levels levels, SpaceBoxes boxes)
    {
        Whole = whole;
        this.boxes = boxes;
        this.state = state;
        Kind = kind;
        Id = id;
        Levels = levels;
        prepared = [];
    }

    /// <summary>The same in a layout that differs in its boxes alone: what was worked out from the description is kept.</summary>
    internal SpaceView(BoxesNow state, SpaceView like, DwellingMemo whole, SpaceBoxes boxes)
    {
        Whole = whole;
        this.boxes = boxes;
        this.state = state;
        Kind = like.Kind;
        Id = like.Id;
        Levels = like.Levels;
        prepared = like.prepared;
        Flight = like.Flight;
        Storey = like.Storey;
        Framing = like.Framing;
        Backs = like.Backs;
        HasBrokenParts = like.HasBrokenParts;
    }

    /// <summary>What it is.</summary>
    public SpaceKind Kind { get; }

    /// <summary>Its id; the dwelling's name for the dwelling.</summary>
    public string Id { get; }

    /// <summary>The whole description, with openings that one face of a wall has described of its other face too. Its boxes are where they were when it was resolved: read <see cref="Boxes"/> instead.</summary>
    public Dwelling Dwelling => Whole.Dwelling;

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
    public Items<SpaceBox> Boxes => Whole.Read(boxes);

    /// <summary>Whether every box that there will be is described, so that what isn't described is lacking.</summary>
    public bool IsWhole => state.IsWhole;

    /// <summary>The units in which findings are printed.</summary>
    public LengthUnits Units => state.Units;

    /// <summary>The boxes of a room or outside face: a rule that asks for those of a few rooms isn't judged again for what is added elsewhere.</summary>
    internal Items<SpaceBox> BoxesIn(string space) => Whole.BoxesIn(space);

    /// <summary>The boxes on the wall of a flight of stairs.</summary>
    internal Items<SpaceBox> BoxesOnStairWall(string address) => Whole.BoxesOnStairWall(address);

    /// <summary>What is known and worked out once of the whole dwelling.</summary>
    internal DwellingMemo Whole { get; }

    /// <summary>What places of boxes to add are rounded to along a wall.</summary>
    internal Distance AlongStep => state.AlongStep;

    /// <summary>From one place that is tried for a box to the next: no finer than the slack that is kept along a wall.</summary>
    internal Distance TryStep => Distance.Max(state.AlongMargin, state.AlongStep);

    /// <summary>What measures as it usually does, where the description doesn't say.</summary>
    internal UsualMeasures Usual => state.Catalog.UsualMeasures;

    /// <summary>How much room an added box is given.</summary>
    internal RoomForBoxes RoomForBoxes => state.RoomForBoxes;

    /// <summary>Where along a wall every row surely allows a box at the height that it has; everywhere where nothing is stated of it.</summary>
    internal DistanceSet PlacesFor(string address, DeviceBox box) => state.PlacesFor(address, box);

    /// <summary>Where along a wall the rows may allow a box at some height; everywhere where nothing is stated of it.</summary>
    internal DistanceSet PlacesAtAnyHeight(string address, DeviceBox box) => state.PlacesAtAnyHeight(address, box);

    /// <summary>The same of those rows alone that don't give way to a violation.</summary>
    internal DistanceSet PlacesInNeed(string address, DeviceBox box) => state.PlacesInNeed(address, box);

    /// <summary>How wide a box or its plate is, whichever is wider; zero where neither is known.</summary>
    internal Distance WidthOf(DeviceBox box) => Distance.Max(ResolvedBox.SizeOf(box, state.Catalog).Width, ResolvedBox.PlateOf(box, state.Catalog)?.Width ?? Distance.Zero);

    /// <summary>Which faces of the dwelling are two sides of one wall.</summary>
    internal BackFaces Backs { get; init; } = BackFaces.None;

    /// <summary>Whether something that is described on one of its walls can't be.</summary>
    internal bool HasBrokenParts { get; init; }

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
