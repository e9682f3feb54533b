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

    /// <summary>The same of those rules alone that don't give way to a violation.</summary>
    public abstract DistanceSet PlacesInNeed(string address, DeviceBox box);

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

    /// <summary>Whether there are boxes that were there before, and a rule lets new ones off that are level with them.</summary>
    public abstract bool LooksAtOld { get; }

    /// <summary>The readings of a box's stick at which it is level, center with center, with one for its purpose that was there before on a wall of its room or outside face; none where there is none.</summary>
    /// <param name="site">The box.</param>
    /// <param name="index">Its place among the boxes; −1 where it is none of them.</param>
    /// <param name="within">How far off it may be, up or down, itself allowed.</param>
    public abstract AllowedHeights LevelWithOld(PlacementSite site, int index, Distance within);

    /// <summary>How far the center of a box that isn't where it is described would lie above that of another, more than what its stick reads: exact where both are set from one surface, whatever that will be.</summary>
    public bool TryAbove(PlacementSite site, int other, out DistanceRange above)
    {
        above = default;
        if (!HasHeight(other) || EdgesOf(other) == 0)
        {
            return false;
        }

        PlacementSite there = SiteAt(other, 0);
        if (site.Box.Datum == there.Box.Datum && site.Surface.Space == there.Surface.Space && !IsMeasured(other) && EdgesOf(other) == 1 && !ResolvedSurface.IsOfAThing(site.Box.Datum))
        {
            above = PlacementSite.CenterAboveEdge(site.Box) - PlacementSite.CenterAboveEdge(there.Box) - PlaceOf(other).Heights.From;
            return true;
        }

        if (!TryCenter(other, out DistanceRange center) || !site.TryCenterAboveHeight(out DistanceRange own))
        {
            return false;
        }

        bool alike = site.Box.Datum == there.Box.Datum && site.Surface.Space == there.Surface.Space && own.Width == center.Width && !IsMeasured(other);
        above = alike ? own.From - center.From : own - center;
        return true;
    }

    /// <summary>The heights above the storey's subfloor at which firm placement rules may let a box have its center, where it is along its wall.</summary>
    public abstract DistanceSet PossibleCentersOf(int box);

    /// <summary>Whether the placement rules leave a box a center among some heights.</summary>
    public abstract Verdict CanBeWithin(int box, in DistanceSet above, bool habitsToo, out MissingFacts needs);

    /// <summary>Notes that what is judged now asks where a box is.</summary>
    public abstract void NoteReader(int box);
}
