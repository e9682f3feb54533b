using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Which boxes of a wall may be in each other's way.</summary>
public enum BoxPairs
{
    /// <summary>Two boxes on one face: bodies and plates lie side by side or over one another.</summary>
    OnOneFace = 0,

    /// <summary>Two boxes on the two faces of a wall: bodies lie behind one another only if the wall is deep enough for both.</summary>
    BackToBack = 1,
}

/// <summary>Two boxes of a wall don't take the same room. Touching is fine.</summary>
/// <remarks>
/// A body of which only a range of sizes is known is taken at its smallest. Plates count for boxes that hold switches, receptacles or jacks. Across a wall
/// the rule is silent where its cavity isn't stated or a depth isn't known; it depends on the box where one of the two depths is stated and the other decides.
/// Of two boxes the one is reported that isn't fixed, else the later by its id.
/// </remarks>
[Row(nameof(Pairs))]
public sealed partial record BoxAgainstBox : ProvisionRule
{
    private const int FewBoxes = 16;

    private static readonly Wording NoDepth = $"how deep the wall, its board or one of the boxes is isn't stated";

    /// <summary>Which boxes are compared.</summary>
    public BoxPairs Pairs { get; init; }

    /// <inheritdoc/>
    public override bool MendsAside => true;

    /// <inheritdoc/>
    public override string? Covers { get; init; } = "box against box";

    /// <inheritdoc/>
    public override bool IsForEachAlone => true;

    // The other box is there already.
    internal override bool GivesWay => false;

    /// <inheritdoc/>
    public override string Numbers => Pairs == BoxPairs.OnOneFace
        ? "bodies, and plates, of two boxes on one face side by side or over one another"
        : "bodies on the two faces of a wall side by side or over one another, or together no deeper than its cavity from the faces of the studs";

    /// <inheritdoc/>
    public override string? GroupOf(BoxTraits box, GroupPlace place) =>
        box.Surface != BoxSurface.Wall ? null
        : Pairs == BoxPairs.OnOneFace ? place.Wall
        : box.IsRecessed ? place.WholeWall : null;

    /// <inheritdoc/>
    public override void Judge(ProvisionGroup group, ProvisionStatement statement)
    {
        statement.LeavesUnplaced(group);
        List<Overlap>? found = null;
        Overlap?[] of = [];

        // On a wall of many boxes each is compared with those near it: all pairs grew with their square.
        bool areMany = group.Count > FewBoxes && group.OrderByPlace();
        Distance reach = areMany ? WidestOf(group) : Distance.Zero;
        for (int i = 1; i < group.Count; i++)
        {
            int others = areMany ? group.FindBefore(i, reach) : i;
            for (int k = 0; k < others; k++)
            {
                int j = areMany ? group.FoundBefore(k) : k;
                Verdict? verdict = Judge(group, i, j, out Distance between, out MissingFacts needs);
                if (verdict is null)
                {
                    statement.NotJudged(i, NoDepth);
                    statement.NotJudged(j, NoDepth);
                }
                else if (verdict != Verdict.Passes)
                {
                    (int subject, int other) = Reported(group, i, j);
                    if (found is null)
                    {
                        found = [];
                        of = new Overlap?[group.Count];
                    }

                    if (of[subject] is not { } overlap)
                    {
                        found.Add(overlap = of[subject] = new(subject));
                    }

                    overlap.Add(group, other, between, verdict.Value, needs);
                }
            }
        }

        if (found is not null)
        {
            State(group, found, statement);
        }
    }

    private void State(ProvisionGroup group, List<Overlap> found, ProvisionStatement statement)
    {
        foreach (Overlap overlap in found)
        {
            group.TryCenter(overlap.Subject, out DistanceRange center);
            statement.Finds(overlap.Subject, overlap.Verdict, center.From, overlap.Allowed, overlap.Needs, () => Said(overlap), new(overlap.Ids));
        }
    }

    private Wording Said(Overlap overlap)
    {
        Wording said = Pairs == BoxPairs.OnOneFace ? $"in the way of {overlap.Others:others}" : (Wording)$"back to back with {overlap.Others:others}";
        return overlap.AssumedStuds is { } studs ? $"{said} ({studs})" : said;
    }

    /// <summary>What is said of a pair, and how far apart their centers have to be in height where they are along the wall; null where nothing can be said.</summary>
    private Verdict? Judge(ProvisionGroup group, int i, int j, out Distance between, out MissingFacts needs)
    {
        needs = MissingFacts.None;
        between = Distance.Zero;
        BoxTraits one = group.BoxOf(i);
        BoxTraits other = group.BoxOf(j);
        if (!group.TryAlong(i, out Distance place, out bool isBack) || !group.TryAlong(j, out Distance otherPlace, out bool otherIsBack)
            || (isBack != otherIsBack) != (Pairs == BoxPairs.BackToBack) || (one.IsExisting && other.IsExisting))
        {
            return Verdict.Passes;
        }

        between = Apart(one, other, (place - otherPlace).Abs());
        if (between == Distance.Zero || !group.TryAbove(i, j, out DistanceRange above))
        {
            return Verdict.Passes;
        }

        bool mayMeet = above.From < between && -between < above.To;
        bool meet = -between < above.From && above.To < between;
        Verdict? deep = !mayMeet ? Verdict.Passes : Depths(one, group.SurfaceOf(i), other, group.SurfaceOf(j));
        if (deep is null or Verdict.Passes)
        {
            return deep;
        }

        needs = (deep == Verdict.Unknown ? MissingFacts.BoxSize : MissingFacts.None) | (meet ? MissingFacts.None : group.NeedsOf(i) | group.NeedsOf(j) | group.TapeOf(i) | group.TapeOf(j));
        return meet ? deep : Verdict.Unknown;
    }

    /// <inheritdoc/>
    internal override AllowedHeights? Around(ProvisionGroup group, int except, AskedBox box)
    {
        AllowedHeights all = AllowedHeights.Anything;
        PlacementSite site = box.Site;
        BoxTraits one = site.Box;
        Distance place = site.Surface.Body?.Along(box.Along) ?? box.Along;
        for (int j = 0; j < group.Count; j++)
        {
            BoxTraits other = group.BoxOf(j);
            Distance between = IsOther(group, j, except, site, out Distance otherPlace) ? Apart(one, other, (place - otherPlace).Abs()) : Distance.Zero;
            if (between == Distance.Zero || !group.TryAbove(site, j, out DistanceRange above)
                || Depths(one, site.Surface, other, group.SurfaceOf(j)) is not { } deep || deep == Verdict.Passes)
            {
                continue;
            }

            DistanceSet sure = DistanceSet.AtMost(-between - above.To) | DistanceSet.AtLeast(between - above.From);
            DistanceSet possible = deep == Verdict.Fails ? DistanceSet.AtMost(-between - above.From) | DistanceSet.AtLeast(between - above.To) : DistanceSet.All;
            all &= new AllowedHeights(sure, possible, (deep == Verdict.Unknown ? MissingFacts.BoxSize : MissingFacts.None) | (above.IsExact ? MissingFacts.None : MissingFacts.FloorFinish | group.NeedsOf(j) | group.TapeOf(j)));
        }

        return all;
    }

    /// <inheritdoc/>
    internal override void AddEdgesTo(List<long> edges, ProvisionGroup group, int except, PlacementSite site)
    {
        BoxTraits one = site.Box;
        for (int j = 0; j < group.Count; j++)
        {
            if (IsOther(group, j, except, site, out Distance place))
            {
                BoxTraits other = group.BoxOf(j);
                Add(place, one.Size.IsStated && other.Size.IsStated ? Halves(one.Size.WidthRange.From, other.Size.WidthRange.From) : Distance.Zero);
                Add(place, one.Plate is { } plate && other.Plate is { } second ? Halves(plate.Width, second.Width) : Distance.Zero);
            }
        }

        void Add(Distance place, Distance off)
        {
            edges.Add((site.Surface.Body?.OnFace(place - off) ?? place - off).Ticks);
            edges.Add((site.Surface.Body?.OnFace(place + off) ?? place + off).Ticks);
        }
    }

    /// <summary>Whether a box of a group is one that another may be in the way of, and where it is along the wall.</summary>
    private bool IsOther(ProvisionGroup group, int index, int except, PlacementSite site, out Distance place)
    {
        place = default;
        return group.Member(index) != except && group.TryAlong(index, out place, out bool isBack)
            && (isBack != site.Surface.Body is { IsBack: true }) == (Pairs == BoxPairs.BackToBack) && !(site.Box.IsExisting && group.BoxOf(index).IsExisting);
    }

    /// <summary>How far apart in height two boxes have to be that are so far apart along the wall; zero where they aren't in each other's way.</summary>
    private Distance Apart(BoxTraits one, BoxTraits other, Distance aside)
    {
        Distance between = Bodies(one, other, aside);
        return Pairs == BoxPairs.OnOneFace ? Distance.Max(between, Plates(one, other, aside)) : between;
    }

    /// <summary>How far apart in height two bodies have to be that overlap along the wall; zero where they don't.</summary>
    private static Distance Bodies(BoxTraits one, BoxTraits other, Distance aside) =>
        one.Size.IsStated && other.Size.IsStated && aside < Halves(one.Size.WidthRange.From, other.Size.WidthRange.From)
            ? Halves(one.Size.HeightRange.From, other.Size.HeightRange.From)
            : Distance.Zero;

    private static Distance Plates(BoxTraits one, BoxTraits other, Distance aside) =>
        IsPlated(one) && IsPlated(other) && one.Plate is { } plate && other.Plate is { } second && aside < Halves(plate.Width, second.Width)
            ? Halves(plate.Height, second.Height)
            : Distance.Zero;

    private static Distance Halves(Distance one, Distance other) => EvenSize.Half(one) + EvenSize.Half(other);

    private static bool IsPlated(BoxTraits box) => box.Devices.Exists(device => device.IsSwitch || device.IsReceptacle || device == DeviceKind.DataJack || device == DeviceKind.TvJack);

    /// <summary>Whether two boxes that lie behind one another have room in the wall together, as on one face none have; null where what would tell isn't stated.</summary>
    private Verdict? Depths(BoxTraits box, ResolvedSurface surface, BoxTraits otherBox, ResolvedSurface otherSurface)
    {
        if (Pairs == BoxPairs.OnOneFace)
        {
            return Verdict.Fails;
        }

        if (CavityOf(surface.Wall!, otherSurface.Wall!) is not { } cavity || !CavityReach.TryOf(box, surface, out DistanceRange one) || !CavityReach.TryOf(otherBox, otherSurface, out DistanceRange other))
        {
            return null;
        }

        DistanceRange together = one + other;
        bool oneIsStated = box.Size.Depth is not null || otherBox.Size.Depth is not null;
        bool boardsAreStated = surface.BoardThickness is not null && otherSurface.BoardThickness is not null;
        return together.From > cavity ? Verdict.Fails : together.To <= cavity ? Verdict.Passes
            : oneIsStated && boardsAreStated ? Verdict.Unknown
            : null;
    }

    /// <summary>The wall is one: where its faces say different things of it, the narrower.</summary>
    private static Distance? CavityOf(Wall one, Wall other) => one.Cavity is { } first && other.Cavity is { } second ? Distance.Min(first, second) : one.Cavity ?? other.Cavity;

    /// <summary>The width of the widest body or plate: two boxes whose centers are further apart along the wall aren't in each other's way.</summary>
    private static Distance WidestOf(ProvisionGroup group)
    {
        Distance widest = Distance.Zero;
        for (int i = 0; i < group.Count; i++)
        {
            BoxTraits box = group.BoxOf(i);
            widest = box.Size.IsStated ? Distance.Max(widest, box.Size.WidthRange.To) : widest;
            widest = box.Plate is { } plate ? Distance.Max(widest, plate.Width) : widest;
        }

        return widest;
    }

    /// <summary>Whichever can be moved; of two the same box whatever the order in which they are described.</summary>
    private static (int Subject, int Other) Reported(ProvisionGroup group, int i, int j) =>
        group.IsUntouched(i) != group.IsUntouched(j) ? (group.IsUntouched(i) ? (j, i) : (i, j))
        : group.IsFixed(i) != group.IsFixed(j) ? (group.IsFixed(i) ? (j, i) : (i, j))
        : string.CompareOrdinal(group.IdOf(i), group.IdOf(j)) > 0 ? (i, j) : (j, i);

    /// <summary>A box and all that it is in the way of.</summary>
    private sealed class Overlap(int subject)
    {
        public int Subject { get; } = subject;

        public Verdict Verdict { get; private set; }

        public DistanceSet Allowed { get; private set; } = DistanceSet.All;

        public MissingFacts Needs { get; private set; }

        public string Others { get; private set; } = "";

        /// <summary>Their ids.</summary>
        public List<string> Ids { get; } = [];

        /// <summary>How studs are assumed to stand, where they tell where one of them is.</summary>
        public Wording? AssumedStuds { get; private set; }

        public void Add(ProvisionGroup group, int other, Distance between, Verdict verdict, MissingFacts needs)
        {
            group.TryCenter(Subject, out DistanceRange own);
            group.TryAbove(Subject, other, out DistanceRange above);
            Distance center = own.From - above.From;
            Allowed &= DistanceSet.Outside(center - between, center + between);
            Verdict = verdict > Verdict ? verdict : Verdict;
            Needs |= needs;
            AssumedStuds ??= group.AssumedStudsOf(Subject) ?? group.AssumedStudsOf(other);
            Others += (Others.Length == 0 ? "" : ", ") + group.IdOf(other) + (group.AddressOf(other) == group.AddressOf(Subject) ? "" : " (" + group.AddressOf(other) + ")");
            Ids.Add(group.IdOf(other));
        }
    }
}
