namespace BoxHeights.Rules;

/// <summary>Where boxes are now: what the engine lets the views ask that it hands to rules.</summary>
internal abstract class BoxesNow
{
    /// <summary>The units in which findings are printed.</summary>
    public abstract LengthUnits Units { get; }

    /// <summary>Whether every box that there will be is described.</summary>
    public abstract bool IsWhole { get; }

    /// <summary>What places of boxes to add are rounded to along a wall.</summary>
    public abstract Distance AlongStep { get; }

    /// <summary>The slack that is kept along a wall.</summary>
    public abstract Distance AlongMargin { get; }

    public abstract PartsCatalog Catalog { get; }

    /// <summary>How much room an added box is given.</summary>
    public abstract RoomForBoxes RoomForBoxes { get; }

    public abstract ResolvedBox BoxAt(int box);

    /// <summary>Which of two boxes comes first in the dwelling's order; negative for the first.</summary>
    public abstract int InOrder(int one, int other);

    /// <summary>Where along a wall every row surely allows a box at the height that it has; everywhere where nothing is stated of it.</summary>
    public abstract DistanceSet PlacesFor(string address, DeviceBox box);

    /// <summary>Where along a surface the rules may allow a box that may be added, at some height.</summary>
    public abstract DistanceSet PlacesAtAnyHeight(string address, DeviceBox box);

    /// <summary>For how many edges a box is judged: several where none is stated.</summary>
    public abstract int EdgesOf(int box);

    /// <summary>A box and its surroundings, set by one of the edges that may be meant.</summary>
    public abstract PlacementSite SiteAt(int box, int edge);

    /// <summary>What isn't known of where its center is above the edge that it is set by.</summary>
    public abstract MissingFacts NeedsOfCenter(int box);

    public abstract Distance? AtOf(int box);

    public abstract BoxHeight? HeightOf(int box);

    public abstract bool HasHeight(int box);

    public abstract Place PlaceOf(int box);

    public abstract bool IsMeasured(int box);

    public abstract bool IsPlacedByAssumedStud(int box);

    /// <summary>The height of a box's center above the storey's subfloor; a range where something isn't known.</summary>
    public abstract bool TryCenter(int box, out DistanceRange above);

    /// <summary>The same, taken for exact, as it was measured.</summary>
    public abstract bool TryNominalCenter(int box, out Distance above);

    /// <summary>The heights above the storey's subfloor at which firm placement rules may let a box have its center, where it is along its wall.</summary>
    public abstract DistanceSet PossibleCentersOf(int box);

    /// <summary>Whether the placement rules leave a box a center among some heights.</summary>
    public abstract Verdict CanBeWithin(int box, in DistanceSet above, bool habitsToo, out MissingFacts needs);

    /// <summary>Notes that what is judged now asks where a box is.</summary>
    public abstract void NoteReader(int box);
}
