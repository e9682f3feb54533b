using System;
using System.Collections.Generic;
using System.Threading;

namespace BoxHeights.Rules;

/// <summary>The one engine: a resolved dwelling, what the rules state about it, and where its boxes are now.</summary>
/// <remarks>
/// A box is first asked about where it is: most pass, and nothing is kept of what was stated. What is allowed elsewhere is stated once per site, when somebody
/// asks. All that a passing box costs when it moves is then a comparison with the rectangle of places around it that every placement rule surely allows;
/// only a box outside its rectangle is judged rule by rule.
/// </remarks>
internal sealed partial class LayoutState : BoxesNow
{
    private const long NotKnown = long.MinValue;

    private readonly StatedSites stated;
    private readonly List<ResolvedSurface> surfaces;
    private BoxState[] now;
    private List<Finding>?[] groupFindings;
    private DistanceSet[] keeps;
    private readonly ProvisionStatement answer = new();

    public LayoutState(Dwelling dwelling, CompiledRules rules, SettledOptions options, CancellationToken cancellation = default)
    {
        Cancellation = cancellation;
        Gate = new();
        Dwelling = dwelling;
        Rules = rules;
        Options = options;
        LayoutFault? tooLarge = SizeCaps.Beyond(dwelling, options.Caps);
        Dwelling judged = tooLarge is null ? dwelling : new Dwelling(dwelling.Name).WithUnits(dwelling.Units);
        Resolver resolved = Resolver.Resolve(judged, options.Catalog, options.Units);
        Boxes = resolved.Boxes;
        Faults = resolved.Faults;
        if (tooLarge is not null)
        {
            Faults.Add(tooLarge);
        }

        UnknownKinds.AddTo(Faults, judged, Boxes, rules.KindsWith(options.Catalog, options.OwnKinds));
        surfaces = resolved.Surfaces;
        stated = new(resolved.Surfaces.Count, rules, options.Catalog);
        int count = Boxes.Count;
        now = new BoxState[count];
        for (int i = 0; i < count; i++)
        {
            cancellation.ThrowIfCancellationRequested();
            Enter(i);
        }

        Groups = new(this);
        groupFindings = new List<Finding>?[Groups.Count];
        keeps = new DistanceSet[Groups.Count];
        Spaces = new(this, resolved);
    }

    /// <summary>Puts a box where it is described. One whose measures can't be added up any more is at fault, and the rest goes on.</summary>
    private void Enter(int box)
    {
        try
        {
            Put(box, Boxes[box].Height, Boxes[box].TryAlong(Options.Catalog, out Distance along) ? along : null);
            JudgeLimits(box);
            AskAll(box);
            if (!HasRelief)
            {
                // Else when all others are there.
                JudgeMissed(box);
            }
        }
        catch (OverflowException)
        {
            Boxes[box] = new(Boxes[box].Source, Boxes[box].Surface, true);
            Faults.Add(new(LayoutFaultKind.BeyondMeasure, Boxes[box].Source.Id, Boxes[box].Surface.Address, $"a measure around it is larger than anything in a house"));
            now[box].PlacementFindings = null;
            now[box].LimitFindings = null;
            Put(box, null, null);
        }
    }

    /// <summary>Held while anything is worked out with it, by whoever shares it: layouts that differ in their boxes alone share what is stated, and this with it.</summary>
    public object Gate { get; }

    /// <summary>Ends whatever is worked out with it, for whoever asked for it.</summary>
    public CancellationToken Cancellation { get; set; }

    /// <summary>Looks up what would mend a finding: whatever its cause offers.</summary>
    public Func<Finding, Items<Remedy>>? RemediesOf { get; set; }

    public Dwelling Dwelling { get; }

    public CompiledRules Rules { get; }

    public SettledOptions Options { get; }

    public List<ResolvedBox> Boxes { get; }

    public List<LayoutFault> Faults { get; }

    /// <summary>How many surfaces there are, each with an index of its own.</summary>
    public int SurfaceCount => surfaces.Count;

    public GroupIndex Groups { get; }

    /// <summary>What space rules are judged for.</summary>
    public SpaceIndex Spaces { get; }

    /// <summary>What is stated for a box: one site, three where its edge isn't stated, none where a fault keeps it from being judged.</summary>
    public SitesOfBox SitesOf(int box) => now[box].Sites;

    public override LengthUnits Units => Options.Units;

    public override bool IsWhole => Options.AllBoxesAreDescribed;

    public override Distance AlongStep => Options.AlongStep;

    public override Distance AlongMargin => Options.AlongMargin;

    public override PartsCatalog Catalog => Options.Catalog;

    public override RoomForBoxes RoomForBoxes => Rules.RoomForBoxes;

    public override ResolvedBox BoxAt(int box) => Boxes[box];

    public override int EdgesOf(int box) => now[box].Sites.Length;

    public override PlacementSite SiteAt(int box, int edge) => now[box].Sites[edge].Site;

    public override MissingFacts NeedsOfCenter(int box) => now[box].Sites[0].CenterNeeds;

    public override void NoteReader(int box) => Spaces.Readers?.Note(box);

    public BoxSize SizeOf(int box) => now[box].Sites.Length > 0 ? now[box].Sites[0].Site.Box.Size : default;

    public override Distance? AtOf(int box) => now[box].At == NotKnown ? null : Distance.FromTicks(now[box].At);

    /// <summary>Whether a box's height was read from a tape, with the tape's error.</summary>
    public override bool IsMeasured(int box) => now[box].IsMeasured;

    public override bool HasHeight(int box) => now[box].Reading != NotKnown;

    /// <summary>The height a box is at now, in the terms in which it was given; null where it has none.</summary>
    public override BoxHeight? HeightOf(int box) => HasHeight(box) ? Boxes[box].Height!.Value.WithValue(Distance.FromTicks(now[box].Reading)) : null;

    /// <summary>Where a box is: anywhere along its wall if that isn't known, within the tape's error if it was measured, anywhere at all if it has no height.</summary>
    public override Place PlaceOf(int box)
    {
        if (!HasHeight(box))
        {
            return new(0, Boxes[box].Surface.Length.Ticks, new(Distance.MinValue, Distance.MaxValue));
        }

        ref readonly BoxState here = ref now[box];
        Distance reading = Distance.FromTicks(here.Reading);
        DistanceRange readings = here.IsMeasured ? new DistanceRange(reading - Boxes[box].Spread, reading + Boxes[box].Spread) : reading;
        return here.At == NotKnown ? new(0, Boxes[box].Surface.Length.Ticks, readings) : new(here.At, here.At, readings);
    }

    /// <summary>Where boxes of a group may go without making its own answer worse: centers above the storey's subfloor.</summary>
    public DistanceSet KeepOf(int group) => keeps[group];

    public StatedSite SiteOf(int box, Edge edge, Datum datum, Distance? along) => SiteOf(Boxes[box], edge, datum, along);

    /// <summary>The same for a box that may be described nowhere.</summary>
    public StatedSite SiteOf(ResolvedBox box, Edge edge, Datum datum, Distance? along) => stated.Of(box, edge, datum, along);

    /// <summary>Puts a box at a place. A height in other terms than the box's own brings it to another site.</summary>
    public void Put(int box, BoxHeight? height, Distance? along)
    {
        ref BoxState here = ref now[box];
        here.At = along?.Ticks ?? NotKnown;
        here.Reading = height?.Value.Ticks ?? NotKnown;
        puts++;
        here.IsUntouched = Boxes[box].IsUntouched;
        here.IsMeasured = Boxes[box].Spread != Distance.Zero;
        if (Boxes[box].IsBroken)
        {
            here.NotJudged = 0;
            here.Sites = default;
            here.Safe = SureArea.Empty;
            here.MayMissLimits = false;
            return;
        }

        Datum datum = height?.Datum ?? Datum.Subfloor;
        if (here.Sites is not { Length: 1 } held || held[0].Site.Box.Edge != (height is { } stated ? stated.Edge : Edge.Bottom)
            || held[0].Site.Box.Datum != datum || ResolvedSurface.IsOfAThing(datum) || Boxes[box].Surface.Stair is not null)
        {
            StatedSite first = SiteOf(box, height?.Edge ?? Edge.Bottom, datum, along);
            here.Sites = height is { Edge: null } ? new([first, SiteOf(box, Edge.Center, datum, along), SiteOf(box, Edge.Top, datum, along)]) : new(first);
            here.Safe = SureArea.Empty;
            here.NotJudged = BoxState.NotCounted;
        }

        // Kept beside the box: asking its site costs more than judging it.
        here.MayMissLimits = here.Sites.Length > 1 || here.Sites[0].MayMissLimits;
        here.HasCenter = here.Sites.Length == 1 && HasHeight(box) && here.Sites[0].HasCenter;
        here.Center = here.HasCenter ? here.Sites[0].CenterAboveHeight + PlaceOf(box).Heights : default;
    }

    /// <summary>What a placement rule says of a box. Where its edge isn't stated it passes, or fails, only if it does so for every edge.</summary>
    public Verdict VerdictOf(int box, int placement, in Place place)
    {
        SitesOfBox held = now[box].Sites;
        Verdict verdict = SlabJudge.Verdict(held[0].Placements[placement].Slabs, place);
        for (int edge = 1; edge < held.Length; edge++)
        {
            verdict = SlabJudge.Verdict(held[edge].SlabsOf(held[0].Placements[placement].Rule), place) == verdict ? verdict : Verdict.Unknown;
        }

        return verdict;
    }

    /// <summary>What a limit rule says of a box where it is. Where its edge isn't stated it says so only if it does for every edge.</summary>
    public LimitJudgement JudgeLimit(int box, int limit)
    {
        SitesOfBox held = now[box].Sites;
        Place place = PlaceOf(box);
        LimitJudgement judged = held[0].Limits[limit].At(place);
        for (int edge = 1; edge < held.Length; edge++)
        {
            judged = judged.Or(held[edge].LimitAt(held[0].Limits[limit].Rule, place));
        }

        return judged;
    }

    /// <summary>Whether a rule stays silent about a box: others nearby let the box off, it is level with one that was there before, or where it is isn't said and the rule asks for that, or it is a habit that can't be decided, or firm rules leave no height that it allows.</summary>
    public bool Yields(int box, int placement, Verdict verdict)
    {
        StatedSite site = now[box].Sites[0];
        StatedPlacement stated = site.Placements[placement];
        if (verdict == Verdict.Passes)
        {
            return false;
        }

        if (stated.Rule.AsksForAPlace && now[box].At == NotKnown)
        {
            return true;
        }

        if (IsLevelWithOld(box, stated.Rule))
        {
            return true;
        }

        if (!stated.Rule.YieldsWhenForced)
        {
            return IsLetOff(Boxes[box], box, AtOf(box), stated.Rule);
        }

        if (verdict == Verdict.Unknown || now[box].At == NotKnown)
        {
            return true;
        }

        return !LeavesRoomFor(stated, site, now[box].At);
    }

    /// <summary>Whether firm rules leave some height at a place that a habit would have.</summary>
    public static bool LeavesRoomFor(StatedPlacement habit, StatedSite site, long along) => !(site.Places.SureOfFirmRulesAt(along) & SlabJudge.PossibleAt(habit.Slabs, along)).IsEmpty;

    /// <summary>The height of a box's center above the storey's subfloor.</summary>
    public override bool TryCenter(int box, out DistanceRange above)
    {
        above = now[box].Center;
        return now[box].HasCenter;
    }

    /// <summary>The height of a box's center above the storey's subfloor as it was read, whatever the tape's error.</summary>
    public override bool TryNominalCenter(int box, out Distance above)
    {
        above = default;
        if (!now[box].HasCenter || !now[box].Sites[0].CenterAboveHeight.IsExact)
        {
            return false;
        }

        above = Distance.FromTicks(now[box].Reading) + now[box].Sites[0].CenterAboveHeight.From;
        return true;
    }

    /// <summary>Whether the placement rules let a box have its center at some of these heights, where it is along its wall.</summary>
    public override Verdict CanBeWithin(int box, in DistanceSet above, bool habitsToo, out MissingFacts needs)
    {
        needs = MissingFacts.None;
        return now[box].At == NotKnown ? Verdict.Passes : now[box].Sites[0].CanBeWithin(now[box].At, above, habitsToo, out needs);
    }

    /// <summary>The heights above the storey's subfloor at which firm placement rules may let a box have its center, where it is along its wall.</summary>
    public override DistanceSet PossibleCentersOf(int box) => now[box].At == NotKnown ? DistanceSet.All : now[box].Sites[0].PossibleCentersAt(now[box].At);
}
