using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Pieces of a wall, and what stands before it, that a box or its plate keeps clear of.</summary>
[Flags]
public enum WallPieces
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>Finishes on the wall: wainscot, tile, chair rail; not the splash on a counter. A plate may lie wholly on one, never across its edge.</summary>
    Finishes = 1,

    /// <summary>What hides the wall: cabinets, mirrors, panels. A plate may be wholly inside one only if it can be reached there, never across its edge.</summary>
    Coverings = 2,

    /// <summary>Openings with their casing, reveal and stool. No plate lies on one.</summary>
    Openings = 4,

    /// <summary>Casing that is stated: between it and a plate some wall is seen, <see cref="KeepClear.Least"/> of it. A plate that laps onto it is <see cref="Openings"/>' concern.</summary>
    Casings = 8,

    /// <summary>Countertops and the splashes on them: box and plate lie over or under, on or off, never across, where the counter couldn't be set.</summary>
    Countertops = 16,

    /// <summary>What fills the cavity: headers, posts, ducts, the pocket of a pocket door, headers of bearing walls. The body of a box that is set into the wall isn't in it.</summary>
    FilledCavity = 32,

    /// <summary>The wall that the leaf of an open door stands before: no center of a device is behind it.</summary>
    OpenLeaves = 64,

    /// <summary>The wall that the panel of an open barn door covers.</summary>
    OpenPanels = 128,

    /// <summary>Corners that a room's walls turn inward at: the center of a box is <see cref="KeepClear.Least"/> away from them along its wall.</summary>
    InsideCorners = 256,

    /// <summary>What is above the top of a half wall, a knee wall or a wall along a stair: a plate lies wholly under it.</summary>
    AboveTheWall = 512,

    /// <summary>What stands on the floor before the wall, of the kinds that a row names (<see cref="KeepClear.Things"/>): no center of a device is behind it, under its top.</summary>
    StandingThings = 1024,
}

/// <summary>A box, its plate or its devices are clear of pieces of the wall. Touching is fine.</summary>
/// <remarks>
/// An edge that isn't stated is where the wall ends: at the floor, at the ceiling, in the corner. Only what is stated is known to be there: no header is made up
/// over an opening of a wall that isn't said to bear, no casing round one, and a door whose hinges, swing or leaf aren't stated hides nothing.
/// </remarks>
[Row(nameof(Of))]
public sealed partial record KeepClear : PlacementRule
{
    /// <summary>What it keeps clear of.</summary>
    public WallPieces Of { get; init; }

    /// <summary>How far from casings and corners, itself allowed; not negative.</summary>
    public Distance Least { get; init => field = Guard.NotNegative(value, nameof(Least)); }

    /// <summary>How thick countertops are that aren't stated.</summary>
    public DistanceRange UsualTopThickness { get; init; }

    /// <summary>How tall the headers are, at the least and at the most, that stand over the openings of a bearing wall.</summary>
    public DistanceRange Headers { get; init; }

    /// <summary>Fixtures of these kinds stand on the floor before the wall. Of those whose top isn't stated it isn't known what they hide.</summary>
    public Items<FixtureKind> Things { get; init; }

    /// <inheritdoc/>
    public override Items<string> KindsNamed => Things.Select(kind => kind.Name);

    /// <summary>A plate isn't sent onto the casing, whether or not the set has a row against that.</summary>
    internal override PlacementRule? ClearOf => Has(WallPieces.Casings) ? new KeepClear(Id, Summary, Severity, Citation, WallPieces.Openings) : null;

    /// <summary>What it collides with stands beside it; a countertop or the top of a wall lies under or over it.</summary>
    public override bool MendsAside => Of is not (WallPieces.Countertops or WallPieces.AboveTheWall);

    /// <inheritdoc/>
    public override bool AsksForAPlace => Of == WallPieces.FilledCavity;

    /// <inheritdoc/>
    public override HeldInstead HeldInstead =>
        Has(WallPieces.Finishes | WallPieces.Coverings | WallPieces.Openings | WallPieces.Casings) ? HeldInstead.PackedStud : HeldInstead.Nothing;

    /// <inheritdoc/>
    protected override IEnumerable<string> Mistakes()
    {
        if (Of == WallPieces.None)
        {
            yield return "it keeps clear of nothing";
        }

        if (Has(WallPieces.StandingThings) != Things.Count > 0)
        {
            yield return Things.Count > 0 ? "it names things, and doesn't keep clear of what stands" : "it doesn't name what stands";
        }

        if (Has(WallPieces.Casings | WallPieces.InsideCorners) != Least > Distance.Zero)
        {
            yield return Least > Distance.Zero ? "its Least says how far from casings or corners, and it speaks of neither" : "it doesn't say how far from casings or corners";
        }
    }

    // Something else is there already.
    internal override bool GivesWay => false;

    /// <inheritdoc/>
    public override string Numbers => "clear of " + Pieces + (Things.Count == 0 ? "" : " (" + Things + ")") + (Least > Distance.Zero ? " by " + Least + " or more" : "")
        + (Has(WallPieces.FilledCavity) ? " (headers of bearing walls " + Headers + " tall)" : "")
        + (Has(WallPieces.Countertops) ? " (tops " + UsualTopThickness + " thick unless stated)" : "");

    /// <inheritdoc/>
    public override void State(PlacementSite site, PlacementStatement statement)
    {
        if (site.Surface.Wall is not { } wall)
        {
            return;
        }

        if (Has(WallPieces.Finishes))
        {
            PlateEdges.OfFinishes(site, wall, statement);
        }

        if (Has(WallPieces.Coverings))
        {
            PlateEdges.OfCoverings(site, wall, statement);
        }

        if (Has(WallPieces.Openings))
        {
            PlateEdges.OfOpenings(site, statement);
        }

        if (Has(WallPieces.Casings))
        {
            CasingStrips.State(site, Least, statement);
        }

        if (Has(WallPieces.Countertops))
        {
            CounterEdges.State(site, wall, UsualTopThickness, statement);
        }

        if (Has(WallPieces.FilledCavity))
        {
            FilledCavity.State(site, wall, Headers, statement);
        }

        if (Has(WallPieces.AboveTheWall))
        {
            WallTop.State(site, wall, statement);
        }

        if (Has(WallPieces.InsideCorners))
        {
            foreach ((Distance left, Distance right, bool isSure) in InsideCorners.Strips(site, Distance.Zero, Least - Distance.FromTicks(1)))
            {
                statement.Within(left, right, isSure ? AllowedHeights.Nothing : AllowedHeights.DependsOn(MissingFacts.PlanPlace));
            }
        }

        BehindDoors(site, statement);
        BehindThings(site, statement);
    }

    /// <inheritdoc/>
    public override Wording? Assumes(PlacementSite site, DistanceRange along) => Has(WallPieces.Countertops) ? CounterEdges.AssumedTop(site, along) : null;

    /// <summary>A box is behind a leaf or a panel when the center of one of its devices is. Over the head nothing is hidden; where that isn't stated the door reaches as high as any box.</summary>
    private void BehindDoors(PlacementSite site, PlacementStatement statement)
    {
        foreach (DoorCover cover in Has(WallPieces.OpenLeaves | WallPieces.OpenPanels) ? site.DoorCovers : default)
        {
            if ((cover.Kind == DoorCoverKind.Leaf && Has(WallPieces.OpenLeaves)) || (cover.Kind == DoorCoverKind.Panel && Has(WallPieces.OpenPanels)))
            {
                statement.About = cover;
                Distance inside = DevicesAside(site);
                AllowedHeights over = cover.Opening.Head is { } head ? site.AtLeast(TargetLine.BoxBottom, head, cover.Left, cover.Right) : AllowedHeights.Nothing;
                statement.Within(cover.Left - inside, cover.Right + inside, over);
            }
        }
    }

    /// <summary>Behind what stands is who has to reach over it or pull it out. Of what isn't said to end anywhere it isn't known what it hides.</summary>
    private void BehindThings(PlacementSite site, PlacementStatement statement)
    {
        foreach (Fixture fixture in Has(WallPieces.StandingThings) ? site.Fixtures : default)
        {
            if (Things.Contains(fixture.Kind) && fixture is { Left: { } left, Right: { } right })
            {
                statement.About = fixture;
                Distance inside = DevicesAside(site);
                statement.Within(left - inside, right + inside, fixture.Top is { } top ? site.AtLeast(TargetLine.Center, top, left, right) : AllowedHeights.DependsOn(MissingFacts.ObstructionHeight));
            }
        }
    }

    /// <summary>From the box's center to within a tick of that of its outermost device.</summary>
    private static Distance DevicesAside(PlacementSite site) => (EvenSize.Half(site.Box.GangPitch) * (site.Box.Gangs - 1)) - Distance.FromTicks(1);

    /// <summary>What it keeps clear of, in words.</summary>
    private string Pieces
    {
        get
        {
            List<string> all = [];
            foreach ((WallPieces piece, string name) in Names)
            {
                if (Has(piece))
                {
                    all.Add(name);
                }
            }

            return string.Join(", ", all);
        }
    }

    private static readonly (WallPieces Piece, string Name)[] Names =
    [
        (WallPieces.Finishes, "finishes"), (WallPieces.Coverings, "what covers the wall"), (WallPieces.Openings, "openings with their casing"), (WallPieces.Casings, "casings"),
        (WallPieces.Countertops, "countertops"), (WallPieces.FilledCavity, "what fills the cavity"), (WallPieces.OpenLeaves, "leaves of open doors"),
        (WallPieces.OpenPanels, "panels of open barn doors"), (WallPieces.InsideCorners, "inside corners"), (WallPieces.AboveTheWall, "what is above the wall"),
        (WallPieces.StandingThings, "what stands before the wall"),
    ];

    private bool Has(WallPieces some) => (Of & some) != WallPieces.None;
}
