using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Something has so many outlets of a kind: a room, a storey, an outside face, a passage, an island, a fixture, a flight of stairs.</summary>
/// <remarks>
/// Where no box of the subject is described, or none of the kind in the whole dwelling, most subjects aren't judged: someone who describes receptacles alone
/// asks nothing about lights.
/// </remarks>
[Row(nameof(Outlet), nameof(Of))]
public sealed partial record RequiredOutlet : SpaceRule
{
    /// <summary>What counts. For platforms its highest is taken above the platform's own surface.</summary>
    public CountedOutlet Outlet { get; init => field = Guard.NotNull(value, nameof(Outlet)); }

    /// <summary>What needs it.</summary>
    public OutletSubject Of { get; init => field = Guard.NotNull(value, nameof(Of)); }

    /// <summary>How many each needs; one unless a row says otherwise.</summary>
    public OutletCount Count { get; init; } = OutletCount.One;

    /// <summary>Dwellings that the row speaks of, where theirs is stated; every dwelling where none is named.</summary>
    public Items<Occupancy> Occupancies { get; init; }

    /// <summary>Whether it speaks only of dwellings that list such an outlet, even where every box is described: of others nobody can tell whether they need one.</summary>
    public bool OnlyWhereListed { get; init; }

    /// <summary>What makes one needed in a dwelling that lists none; null where <see cref="OnlyWhereListed"/> alone decides.</summary>
    public NeededWhere? NeededWhere { get; init; }

    /// <summary>Whether its box may serve what other rows ask for too, so that a plan has it before theirs.</summary>
    public bool MayServeOthers { get; init; }

    /// <summary>Where in a ceiling its box is added: at this part of the room's length and depth, 2 for the middle, 4 where that is left to a light.</summary>
    public int AddedInPart { get; init => field = Guard.Count(value, nameof(AddedInPart)); } = 2;

    /// <inheritdoc/>
    public override SpaceKind Subject => Of.Kind;

    internal override bool SpeaksOf(SpaceView space) => base.SpeaksOf(space) || (Of.SpeaksOf(space) && IsAskedIn(space));

    /// <inheritdoc/>
    public override bool LooksAtOwnBoxesOnly => true;

    internal override bool LooksAt(BoxTraits box, DwellingMemo whole) => Outlet.MayBe(box) || Of.LooksAt(box);

    /// <inheritdoc/>
    public override bool IsPlannedFirst => Of.IsPlannedFirst || MayServeOthers;

    /// <inheritdoc/>
    public override MissingFacts PlannedDespite => Of.PlannedDespite;

    /// <inheritdoc/>
    public override Items<string> KindsNamed => KindNames.Joined(Outlet.KindsNamed, Count.OneForEach.Select(kind => kind.Name), Of.KindsNamed, NeededWhere?.KindsNamed ?? default);

    /// <inheritdoc/>
    public override string Numbers => Count + " " + Outlet.Numbers + (OnlyWhereListed ? " where one is listed" : "") + (NeededWhere is { } where ? ", or where there is " + where : "") + " for " + Of.Numbers + (Occupancies.Count == 0 ? "" : "; in " + Occupancies);

    /// <inheritdoc/>
    protected override IEnumerable<string> Mistakes() => Of.Mistakes;

    /// <inheritdoc/>
    public override void Judge(SpaceView space, SpaceStatement statement)
    {
        if (IsAskedIn(space))
        {
            Of.Judge(this, space, statement);
        }
    }

    /// <inheritdoc/>
    public override bool ServesFrom(SpaceView space, string lacking, SpaceBox box, Distance offered) =>
        Of.ServesFrom(this, space, lacking, box, offered) && Outlet.Of(box, out _) != Verdict.Fails;

    /// <summary>Said where outlets of the kind are left out of the description.</summary>
    internal static Wording NoneInTheDwelling { get; } = $"no such outlet is described in the dwelling";

    /// <summary>How many of its outlets there are: "no receptacle that counts".</summary>
    internal Wording Counted(int sure) => sure == 0 ? $"no {OutletName:outlet}" : (Wording)$"{sure:count} {OutletName:outlet}";

    /// <summary>What its outlets are called.</summary>
    internal Wording OutletName => Wording.Term(Outlet.Name);

    /// <summary>Whether enough is described for something to be lacking; what isn't is told.</summary>
    internal bool IsDescribed(SpaceView space, SpaceStatement statement)
    {
        Wording? missing = space.IsWhole && (!OnlyWhereListed || NeededWhere?.IsThere(space) == true) ? null
            : space.Boxes.Count == 0 ? $"no box is described there"
            : space.Face is not null && !space.Whole.ListsOutside(Outlet) ? $"no such outlet is described outside"
            : space.Whole.Lists(Outlet) ? null : NoneInTheDwelling;
        if (missing is not null)
        {
            statement.LeavesOpen(missing);
        }

        return missing is null;
    }

    private bool IsAskedIn(SpaceView space) => Occupancies.Count == 0 || space.Dwelling.Occupancy is not { } of || Occupancies.Contains(of);

    /// <summary>Says what is lacking of a part. The box to add is looked for when somebody asks.</summary>
    internal void Lacks(
        SpaceStatement statement, string subject, string address, int sure, int needed, bool mayBeMet, MissingFacts needs, Func<Wording> what, Func<DeviceBox, Items<PlacedBox>>? added = null) =>
        statement.Finds(
            subject, address, mayBeMet ? Verdict.Unknown : Verdict.Fails, Quantity.Of(sure), QuantitySet.AtLeast(needed), what, mayBeMet ? needs : MissingFacts.None,
            () => Adds is { } box && added is not null ? added(box) : default);
}

/// <summary>What needs outlets: row data. Each kind of it says which boxes serve it, and where one could be added.</summary>
public abstract record OutletSubject
{
    private protected OutletSubject()
    {
    }

    /// <summary>What is judged, one after another.</summary>
    public abstract SpaceKind Kind { get; }

    /// <summary>What needs the outlets, in words.</summary>
    public abstract string Numbers { get; }

    /// <summary>What it is, in words.</summary>
    public override string ToString() => Numbers;

    internal virtual Items<string> KindsNamed => default;

    internal virtual IEnumerable<string> Mistakes => [];

    internal virtual bool IsPlannedFirst => false;

    internal virtual MissingFacts PlannedDespite => MissingFacts.None;

    internal abstract void Judge(RequiredOutlet row, SpaceView space, SpaceStatement statement);

    /// <summary>Whether it is judged for a space of another kind too, to tell that what it is about is left out of the description.</summary>
    internal virtual bool SpeaksOf(SpaceView space) => false;

    /// <summary>Whether it looks at a box besides those that may count.</summary>
    internal virtual bool LooksAt(BoxTraits box) => false;

    internal virtual bool ServesFrom(RequiredOutlet row, SpaceView space, string lacking, SpaceBox box, Distance offered) => false;

    /// <summary>How many boxes of a space surely count, and how many may.</summary>
    internal static int Count(SpaceView space, CountedOutlet outlet, out int possible, out MissingFacts needs)
    {
        int sure = 0;
        possible = 0;
        needs = MissingFacts.None;
        foreach (SpaceBox box in space.Boxes)
        {
            Verdict counts = outlet.Of(box, out MissingFacts missing);
            sure += counts == Verdict.Passes ? 1 : 0;
            possible += counts == Verdict.Fails ? 0 : 1;
            needs |= counts == Verdict.Unknown ? missing : MissingFacts.None;
        }

        return sure;
    }
}
