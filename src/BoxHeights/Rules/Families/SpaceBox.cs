namespace BoxHeights.Rules;

/// <summary>A box as a space rule sees it: its traits, and where it is now.</summary>
/// <remarks>Whatever tells where it is has to note who asks: see <see cref="SpaceReaders"/>.</remarks>
public sealed class SpaceBox
{
    private readonly BoxesNow state;

    internal SpaceBox(BoxesNow state, int index)
    {
        this.state = state;
        Index = index;
    }

    /// <summary>Everything about it except where it is.</summary>
    public BoxTraits Traits => state.SiteAt(Index, 0).Box;

    /// <summary>Its id.</summary>
    public string Id => state.BoxAt(Index).Source.Id;

    /// <summary>The id of its room or outside face.</summary>
    public string SpaceId => state.BoxAt(Index).Surface.Space.Id;

    /// <summary>The kind of its room; the empty kind outside.</summary>
    public RoomKind Room => state.BoxAt(Index).Surface.RoomKind;

    /// <summary>The address of the wall, ceiling or floor that it is listed under.</summary>
    public string Address => state.BoxAt(Index).Surface.Address;

    /// <summary>The id of the wall that it is listed under; empty elsewhere.</summary>
    internal string WallId => state.BoxAt(Index).Surface.Wall?.Id ?? "";

    /// <summary>Its center along its wall; null where that isn't known.</summary>
    public Distance? Along => state.AtOf(Read);

    /// <summary>Where it is in plan, on a ceiling or a floor; null where that isn't stated.</summary>
    public PlanPoint? Plan => state.BoxAt(Index).Source.Plan;

    internal int Index { get; }

    /// <summary>Whether it comes before another in the dwelling's order.</summary>
    internal int InOrder(SpaceBox other) => state.InOrder(Index, other.Index);

    /// <summary>The box as it is described.</summary>
    internal DeviceBox Source => state.BoxAt(Index).Source;

    /// <summary>Its index, for whoever asks where it is: they have to be judged again when it moves.</summary>
    private int Read
    {
        get
        {
            state.NoteReader(Index);
            return Index;
        }
    }

    /// <summary>Whether it is seen from outside the building.</summary>
    internal bool IsOutside => state.BoxAt(Index).Surface.Space.IsOutside;

    /// <summary>The storey that it is on.</summary>
    internal string StoreyId => state.BoxAt(Index).Surface.Space.StoreyId;

    /// <summary>Its height as it is now, in the terms in which it was given; null where it has none.</summary>
    internal BoxHeight? Height => state.HeightOf(Read);

    /// <summary>The top of the counter that stands where it is on its wall; null where none does, or its top isn't known.</summary>
    internal Level? CounterTop =>
        Along is { } along && state.BoxAt(Index).Surface.CounterOn(along, along) is { Top: { } top } && top.Datum != Datum.Countertop ? top : null;

    /// <summary>How far one of its lines lies above a datum.</summary>
    /// <param name="line">The line.</param>
    /// <param name="datum">The datum.</param>
    /// <param name="height">The height; a range where something isn't known exactly.</param>
    /// <param name="needs">What isn't known exactly, or at all.</param>
    /// <returns>False when the box has no height, or the datum or the line isn't known there.</returns>
    public bool TryHeightOf(TargetLine line, Datum datum, out DistanceRange height, out MissingFacts needs)
    {
        height = default;
        needs = MissingFacts.None;
        if (!state.HasHeight(Read) || !state.SiteAt(Index, 0).TryHeight(line, Distance.Zero, datum, out DistanceRange zero, out needs))
        {
            return false;
        }

        height = state.PlaceOf(Index).Heights - zero;
        if (state.EdgesOf(Index) is > 1 and var edges)
        {
            // The edge isn't stated: anywhere from what the first means to what the last does.
            for (int edge = 0; edge < edges; edge++)
            {
                if (!state.SiteAt(Index, edge).TryHeight(line, Distance.Zero, datum, out zero, out MissingFacts more))
                {
                    return false;
                }

                needs |= more | MissingFacts.EdgeMeant;
                DistanceRange one = state.PlaceOf(Index).Heights - zero;
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
    internal Verdict IsWithin(TargetLine line, Datum datum, Distance low, Distance high, ref MissingFacts needs)
    {
        if (!TryHeightOf(line, datum, out DistanceRange height, out MissingFacts missing))
        {
            needs |= missing == MissingFacts.None ? MissingFacts.Datum : missing;
            return Verdict.Unknown;
        }

        if (height.From >= low && height.To <= high)
        {
            return Verdict.Passes;
        }

        bool some = height.To >= low && height.From <= high;
        needs |= some ? missing : MissingFacts.None;
        return some ? Verdict.Unknown : Verdict.Fails;
    }
}

/// <summary>The boxes of a space: shared by all that is judged for it. Others may join them while the layout is open.</summary>
/// <param name="number">Its number among all such lists, for those who note who asks for it.</param>
/// <param name="atFirst">How many of them there are at first, where that is known.</param>
internal sealed class SpaceBoxes(int number, int atFirst = 0)
{
    private readonly System.Collections.Generic.List<SpaceBox> boxes = new(atFirst);
    private Items<SpaceBox> listed;
    private bool isListed = true;

    /// <summary>Its number among all such lists.</summary>
    public int Number => number;

    /// <summary>All of them, in the dwelling's order, then in the order in which they joined.</summary>
    public Items<SpaceBox> Listed
    {
        get
        {
            // Only an open layout, which belongs to one caller, gets more boxes: an evaluation's were listed when it was made.
            if (!isListed)
            {
                listed = new(boxes);
                isListed = true;
            }

            return listed;
        }
    }

    /// <summary>How many there are.</summary>
    public int Count => boxes.Count;

    /// <summary>Whether there is such a box: for whoever isn't judged by it.</summary>
    public bool Exists(System.Predicate<SpaceBox> which) => boxes.Exists(which);

    /// <summary>Takes in a box that was added.</summary>
    public void Add(SpaceBox box)
    {
        boxes.Add(box);
        isListed = false;
    }

    /// <summary>Takes in a box where it comes in the dwelling's order.</summary>
    public void Join(SpaceBox box)
    {
        (int place, int end) = (0, boxes.Count);
        while (place < end)
        {
            int middle = (place + end) / 2;
            (place, end) = boxes[middle].InOrder(box) > 0 ? (place, middle) : (middle + 1, end);
        }

        boxes.Insert(place, box);
        isListed = false;
    }

    /// <summary>Takes out a box, whichever it is.</summary>
    public void Part(SpaceBox box)
    {
        boxes.Remove(box);
        isListed = false;
    }

    /// <summary>Takes the box out again that was added last.</summary>
    public void RemoveLast()
    {
        boxes.RemoveAt(boxes.Count - 1);
        isListed = false;
    }
}
