using System;

namespace BoxHeights.Rules;

/// <summary>Each island and peninsula needs outlets that serve its top, by its sides or by its area.</summary>
/// <remarks>
/// A box on an island is listed under the room's floor, sits on the cabinet, and has its place in plan on the island's outline or within it. What is set into a
/// top is a fixture of the room with its corners in plan.
/// </remarks>
public sealed record IslandSubject : OutletSubject
{
    /// <summary>What it speaks of.</summary>
    public Items<FreestandingKind> Kinds { get; init; } = new[] { FreestandingKind.Island, FreestandingKind.Peninsula };

    /// <summary>The shortest long side that asks for an outlet, itself included.</summary>
    public Distance LongSide { get; init; }

    /// <summary>The shortest short side that asks for an outlet, itself included.</summary>
    public Distance ShortSide { get; init; }

    /// <summary>How far above its top an outlet may be, itself allowed.</summary>
    public Distance Above { get; init; }

    /// <summary>How far below its top an outlet may be, itself allowed.</summary>
    public Distance Below { get; init; }

    /// <summary>How far its top may reach beyond its base where an outlet is below the top, itself allowed.</summary>
    public Distance OverhangAtMost { get; init; }

    /// <summary>From where a peninsula is measured.</summary>
    public PeninsulaMeasure Peninsulas { get; init; }

    /// <summary>How near a peninsula ends to the wall or counter that it joins, itself included.</summary>
    public Distance MeetsWithin { get; init => field = Guard.NotNegative(value, nameof(MeetsWithin)); }

    /// <summary>Whether an outlet on the wall that a peninsula joins serves it too, where it stands between its sides and not below its top.</summary>
    public bool WallServes { get; init; }

    /// <summary>How near its outer end one outlet of a peninsula has to be, itself allowed; null where it may be anywhere.</summary>
    public Distance? EndWithin { get; init; }

    /// <summary>What is set into a top may part it into spaces that each need their own.</summary>
    public Items<FixtureKind> Dividing { get; init; }

    /// <summary>With less than this of the top left behind it, what is set in parts it; null where nothing does.</summary>
    public Distance? DividedBelow { get; init; }

    /// <inheritdoc/>
    public override SpaceKind Kind => SpaceKind.Room;

    internal override Items<string> KindsNamed => KindNames.Joined(Kinds.Select(kind => kind.Name), Dividing.Select(kind => kind.Name));

    /// <inheritdoc/>
    public override string Numbers => "each " + Kinds + " of " + LongSide + " by " + ShortSide + " or more"
        + "; up to " + Above + " above the top, " + Below + " below it where it reaches out " + OverhangAtMost + " or less"
        + Peninsulas switch { PeninsulaMeasure.ConnectedWall => "; peninsulas from the wall", PeninsulaMeasure.ConnectingEdge => "; peninsulas from their connecting edge", _ => "" }
        + (WallServes ? "; on that wall too" : "") + (EndWithin is { } end ? "; one within " + end + " of a peninsula's outer end" : "")
        + (DividedBelow is { } behind ? "; parted by " + Dividing + " with less than " + behind + " behind" : "");

    internal override void Judge(RequiredOutlet row, SpaceView space, SpaceStatement statement)
    {
        foreach (Freestanding one in space.Room?.Freestanding ?? default)
        {
            if (!Kinds.Contains(one.Kind))
            {
                continue;
            }

            if (IslandTop.Of(one, space.Room!, RoomInPlan.Of(space).Plan, Peninsulas, MeetsWithin, space.Usual) is not { } top)
            {
                statement.NotJudged($"the outline of {one.Id:island} isn't described", SurfaceAddress.Of(space.Id, one.Id));
                continue;
            }

            string subject = SurfaceAddress.Of(space.Id, one.Id);
            bool serves = false;
            int part = 0;
            foreach ((Distance from, Distance to) in top.Spaces(space.Room!.Fixtures, Dividing, DividedBelow))
            {
                bool isWhole = from == top.From && to == top.To;
                part++;
                int needed = Needed(row.Count, top, from, to);
                int sure = Count(row.Outlet, space, one, top, from, to, out int may, out MissingFacts needs);
                serves |= needed > 0 && sure > 0;
                if (needed > 0 && sure >= needed && statement.TellsAll)
                {
                    statement.Meets(subject + (isWhole ? "" : FormattableString.Invariant($" part {part}")), subject);
                }

                if (sure < needed)
                {
                    Distance wished = from + Distance.FromTicks((to - from).Ticks * ((2 * sure) + 1) / (2 * needed));
                    // A part is counted and not measured in its name: where a peninsula begins is a matter of how the text is read.
                    Finds(row, statement, subject, isWhole ? "" : FormattableString.Invariant($" part {part}"), sure, needed, may < needed ? MissingFacts.None : needs,
                        () => isWhole ? $"{sure} of {needed} outlets that serve its top"
                            : (Wording)$"{sure} of {needed} outlets that serve its top from {Printed.Of(from, space.Units):left} to {Printed.Of(to, space.Units):right} along it",
                        added => AddedOn(space, one, top, added, wished, from, to));
                }
            }

            if (EndWithin is { } within && one.Kind == FreestandingKind.Peninsula && serves)
            {
                End(row, space, one, top, within, subject, statement);
            }
        }
    }

    private void End(RequiredOutlet row, SpaceView space, Freestanding one, IslandTop top, Distance within, string subject, SpaceStatement statement)
    {
        if (!top.IsJoined)
        {
            statement.NotJudged($"what {one.Id:island} joins isn't described, so that its outer end isn't known", subject);
        }
        else if (Count(row.Outlet, space, one, top, top.To - within, top.To, out int may, out MissingFacts needs) == 0)
        {
            Finds(row, statement, subject, " outer end", 0, 1, may == 0 ? MissingFacts.None : needs,
                () => $"no outlet that serves its top within {Printed.Of(within, space.Units):within} of its outer end",
                added => AddedOn(space, one, top, added, top.To - within.Split(2)[0], top.To - within, top.To));
        }
        else if (statement.TellsAll)
        {
            statement.Meets(subject + " outer end", subject);
        }
    }

    private static void Finds(RequiredOutlet row, SpaceStatement statement, string address, string part, int sure, int needed, MissingFacts needs, Func<Wording> what, Func<DeviceBox, Items<PlacedBox>> added) =>
        row.Lacks(statement, address + part, address, sure, needed, needs != MissingFacts.None, needs, what, added);

    /// <summary>In the side of its base, halfway down to where an outlet still serves the top, or else set into the top; as near as may be to where it is wished along it.</summary>
    private Items<PlacedBox> AddedOn(SpaceView space, Freestanding island, IslandTop top, DeviceBox added, Distance wished, Distance from, Distance to)
    {
        if (island.Top is not { } level)
        {
            return default;
        }

        Distance below = island.Overhang is { } beyond && beyond > OverhangAtMost ? Distance.Zero : Below.Split(2)[0];
        DeviceBox box = added.WithId(FreePlaces.FreeId(space, space.Id + "-" + added.Id)).WithHeight(BoxHeight.ToCenter(level.Offset - below, level.Datum));
        Distance step = space.TryStep;
        for (Distance off = Distance.Zero; off <= to - from; off += step)
        {
            foreach (Distance along in new[] { wished - off, wished + off })
            {
                if (along >= from && along <= to && ((below > Distance.Zero ? top.OnASide(along, space.Room!.Fixtures, RoomInPlan.Of(space).Plan) : null) ?? top.At(along, space.Room!.Fixtures)) is { } place)
                {
                    return new[] { new PlacedBox(SurfaceAddress.Of(space.Id, DwellingBoxes.Floor), box.WithPlan(place)) };
                }
            }
        }

        return default;
    }

    private int Needed(OutletCount count, IslandTop top, Distance from, Distance to)
    {
        (Distance longSide, Distance shortSide) = top.Sides(from, to);
        return longSide < LongSide || shortSide < ShortSide ? 0 : count.For(top.Area);
    }

    /// <summary>How many outlets surely serve a part of a top, and how many may.</summary>
    private int Count(CountedOutlet outlet, SpaceView space, Freestanding island, IslandTop top, Distance from, Distance to, out int may, out MissingFacts needs)
    {
        int sure = 0;
        may = 0;
        needs = MissingFacts.None;
        foreach (SpaceBox box in space.Boxes)
        {
            MissingFacts missing = MissingFacts.None;
            Verdict verdict = Serves(outlet, space, box, island, top, from, to, ref missing);
            sure += verdict == Verdict.Passes ? 1 : 0;
            may += verdict != Verdict.Fails ? 1 : 0;
            needs |= verdict == Verdict.Unknown ? missing : MissingFacts.None;
        }

        return sure;
    }

    private Verdict Serves(CountedOutlet outlet, SpaceView space, SpaceBox box, Freestanding island, IslandTop top, Distance from, Distance to, ref MissingFacts needs)
    {
        bool onIt = box.Traits.IsListedFlat && box.Traits.Surface == BoxSurface.Cabinet;
        if (!(onIt ? IsOnTop(box, top, out Distance? place) : IsOnItsWall(space, box, top, out place)) || place < from || place > to)
        {
            return Verdict.Fails;
        }

        Verdict verdict = outlet.Of(box, out MissingFacts missing);
        if (verdict == Verdict.Fails)
        {
            return verdict;
        }

        verdict = place is null ? Verdict.Unknown : verdict;
        needs |= missing | (place is null ? MissingFacts.Along : MissingFacts.None);
        if (island.Top is not { } level)
        {
            needs |= MissingFacts.ObstructionHeight;
            return Verdict.Unknown;
        }

        // Below the top it serves only where the top doesn't reach out too far; unstated, it doesn't.
        Distance below = !onIt || (island.Overhang is { } out1 && out1 > OverhangAtMost) ? Distance.Zero : Below;
        return verdict.And(box.IsWithin(TargetLine.Center, level.Datum, level.Offset - below, level.Offset + Above, ref needs));
    }

    private static bool IsOnTop(SpaceBox box, IslandTop top, out Distance? place)
    {
        place = null;
        if (box.Plan is { } plan)
        {
            bool isOn = top.TryPlace(plan, out Distance along);
            place = along;
            return isOn;
        }

        return true;
    }

    private bool IsOnItsWall(SpaceView space, SpaceBox box, IslandTop top, out Distance? place)
    {
        place = box.Along is null ? null : top.From;
        return WallServes && top.IsJoined && box.Traits.Surface == BoxSurface.Wall && box.Address.Length > space.Id.Length
            && top.Joins(RoomInPlan.Of(space).Plan.IndexOf(box.Address.Substring(space.Id.Length + 1)))
            && (box.Along is not { } along || top.IsBetweenItsSides(along));
    }
}
