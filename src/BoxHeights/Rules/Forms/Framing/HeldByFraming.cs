namespace BoxHeights.Rules;

/// <summary>What of the framing a box is held by.</summary>
public enum FramingHold
{
    /// <summary>Whatever its way of mounting asks for: nailed against a stud with room for it in the bay, in a bay clear of studs, or cut in well clear of them; and between the plates.</summary>
    Mounting = 0,

    /// <summary>Of a metal stud the closed side, the web: the open side has nothing but lips to hold a box that is screwed to it.</summary>
    Web = 1,

    /// <summary>A bay that the bar or the bracket it is on is stated to span: neither wider nor narrower.</summary>
    Bay = 2,
}

/// <summary>A box is where the framing can hold it.</summary>
/// <remarks>
/// Silent where no studs are stated, for masonry, surface and cabinet boxes, and over openings. Of a box that is set into the wall, and of which it isn't stated how it is
/// held, only that no stud goes through it. Where studs are only assumed nobody knows
/// which stud a box will be nailed to: then only those places are left out in which something surely stands, whichever end the layout was pulled from.
/// A nailed box sits a little off a stud's face, and marks are rounded: a small distance from it counts as on it. Studs that stand at an opening may be turned,
/// so that nothing is said of their web. A bay's width isn't sure where a stud may or may not stand, a post or a duct fills some of it, or an opening is in it.
/// </remarks>
[Row(nameof(By))]
public sealed partial record HeldByFraming : PlacementRule
{
    private static readonly Wording TooManyStuds = $"the wall has more studs than can be judged";

    /// <summary>What it is held by.</summary>
    public FramingHold By { get; init; }

    /// <summary>How far from a stud's face the side of a nailed box may be and count as on it: stand-offs, widths of generic boxes, rounded marks.</summary>
    public Distance Within { get; init; }

    /// <summary>How far from a stud a cut-in box keeps, so that its ears close behind the board.</summary>
    public Distance Clear { get; init; }

    /// <inheritdoc/>
    public override bool AsksForAPlace => true;

    /// <inheritdoc/>
    public override string? Covers { get => field ?? (By == FramingHold.Mounting ? "studs, headers, pockets and whatever else fills a wall" : null); init; }

    /// <inheritdoc/>
    public override HeldInstead HeldInstead => By switch
    {
        FramingHold.Web => HeldInstead.Bracket,
        FramingHold.Bay => HeldInstead.LongerBar | HeldInstead.Blocking,
        _ => HeldInstead.Blocking,
    };

    // Nothing holds a box elsewhere.
    internal override bool GivesWay => false;

    /// <inheritdoc/>
    public override string Numbers => By switch
    {
        FramingHold.Web => "a box within " + Within + " of a metal stud's face on the side of its web",
        FramingHold.Bay => "the clear bay at least and at most what the bar is stated to span",
        _ => "a nailed box within " + Within + " of a stud's face and no wider than the bay; boxes on brackets, bars and blocks clear of studs, and those held in a way that isn't stated but for that distance; cut-in boxes " + Clear + " clear of them; none in a plate",
    };

    /// <inheritdoc/>
    public override void State(PlacementSite site, PlacementStatement statement)
    {
        switch (By)
        {
            case FramingHold.Web:
                StateWebs(site, statement);
                break;
            case FramingHold.Bay:
                StateBays(site, statement);
                break;
            default:
                StateMounting(site, statement);
                break;
        }
    }

    private void StateWebs(PlacementSite site, PlacementStatement statement)
    {
        if (site.Box is { Surface: BoxSurface.Wall, Mounting: MountingMethod.Stud, Size.IsStated: true }
            && site.Framing is { OpenSide: not null, Known: not StudKnowledge.Assumed, Members.Count: > 0 and <= WallFraming.MostWorkedThrough } framing)
        {
            NailedStretches.StateOpenSides(site, framing, Within, statement);
        }
    }

    private static void StateBays(PlacementSite site, PlacementStatement statement)
    {
        if (site.Box is not { Surface: BoxSurface.Wall, Mounting: MountingMethod.Bar or MountingMethod.Bracket, Span: { } span, Size.IsStated: true }
            || site.Framing is not { Members.Count: > 0 and <= WallFraming.MostWorkedThrough } framing)
        {
            return;
        }

        // A box that isn't clear of the studs beside it is its mounting's concern.
        Distance half = EvenSize.Half(site.Box.Size.WidthRange.From);
        foreach (FramingBay bay in FramingBay.Of(site.Surface.Wall!, framing))
        {
            if (!span.Contains(bay.Width))
            {
                AllowedHeights over = AllowedHeights.Nothing;
                foreach (Level top in bay.Tops)
                {
                    over |= site.AtLeast(TargetLine.BoxTop, top, bay.Left, bay.Right);
                }

                statement.Within(bay.Left + half, bay.Right - half, over, bay.IsAssumed);
            }
        }
    }

    private void StateMounting(PlacementSite site, PlacementStatement statement)
    {
        if (site.Framing is not { Members.Count: > 0 } framing || !site.Box.IsRecessed)
        {
            return;
        }

        // However a box is held that is set into the wall, no stud goes through it.
        MountingMethod? method = site.Box.Mounting;
        bool isKnown = framing.Known != StudKnowledge.Assumed;
        if (method == MountingMethod.Masonry || (method is null && !(isKnown && site.Box.Build.IsSetIn)))
        {
            return;
        }

        if (!site.Box.Size.IsStated || framing.Members.Count > WallFraming.MostWorkedThrough)
        {
            statement.NotJudged(site.Box.Size.IsStated ? TooManyStuds : site.Box.Gangs == 1 ? $"no size is known for {Wording.Term(site.Box.Kind.Name):kind} boxes of one gang: state it"
                : (Wording)$"no size is known for {Wording.Term(site.Box.Kind.Name):kind} boxes of {site.Box.Gangs:gangs} gangs: state it");
            return;
        }

        BetweenPlates(site, statement);
        if (method == MountingMethod.Stud && isKnown)
        {
            NailedStretches.State(site, framing, Within, statement);
        }
        else
        {
            Distance keep = method is MountingMethod.Stud or null ? -Within : method == MountingMethod.CutIn ? Clear : Distance.Zero;
            Distance reach = keep + site.Box.Size.WidthRange.To;
            foreach (FramingMember member in framing.Members)
            {
                if (member.IsSure && statement.Matters(member.Left - reach, member.Right + reach))
                {
                    BodyClear.State(site, statement, member.Left - keep, member.Right + keep, null, member.Top, method == MountingMethod.CutIn, framing.IsAssumed(member));
                }
            }
        }
    }

    /// <summary>Over the bottom plate, and under one top plate at least, but along a stair, where the wall goes on to the floor above. The track of metal studs is thinner and isn't judged.</summary>
    private static void BetweenPlates(PlacementSite site, PlacementStatement statement)
    {
        // Nor is a box whose height is taken from something of which it isn't known where it lies: under a ceiling of any height nobody sets one in a plate.
        if (!site.Framing!.IsLumber || !site.TryHeightOf(new Level(Distance.Zero, Datum.BottomPlate), site.Box.Datum, out _))
        {
            return;
        }

        AllowedHeights between = site.AtLeast(TargetLine.BoxBottom, Distance.Zero, Datum.BottomPlate);
        if (site.Surface.Space.Framing is { } framing && site.Surface.Wall is { Top.Count: 0 } && site.Surface.Stair is null)
        {
            AllowedHeights under = site.AtMost(TargetLine.BoxTop, framing - site.Usual.Lumber, Datum.Subfloor);
            between &= framing.IsExact ? under : new(under.Sure, under.Possible, under.Needs | MissingFacts.Ceiling);
        }

        statement.Everywhere(between);
    }
}
