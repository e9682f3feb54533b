using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>What a room, an outside face, a flight of stairs, a storey or the whole dwelling has to provide, whether or not any box is there.</summary>
/// <remarks>Its remedy adds boxes, or sets one that is there where it belongs.</remarks>
public abstract record SpaceRule : Rule
{
    /// <inheritdoc cref="Rule(string, string, Severity, Citation)"/>
    protected SpaceRule(string id, string summary, Severity severity, Citation citation)
        : base(id, summary, severity, citation)
    {
    }

    /// <summary>What the rule is judged for, one after another.</summary>
    public abstract SpaceKind Subject { get; }

    /// <summary>Whether it is judged for a space; what it asks is told by the description alone.</summary>
    internal virtual bool SpeaksOf(SpaceView space) => space.Kind == Subject;

    /// <summary>Whether it looks at no other boxes than those of its subject: then a box that is added elsewhere leaves what it says as it is.</summary>
    public virtual bool LooksAtOwnBoxesOnly => false;

    /// <summary>Whether a box that is added, taken away or described otherwise may change what it says of a space that has others. It does, unless a form says otherwise.</summary>
    internal virtual bool LooksAt(BoxTraits box, DwellingMemo whole) => true;

    /// <summary>Whether what it asks for is added before what other rules ask for, because it may serve them as well.</summary>
    public virtual bool IsPlannedFirst => false;

    /// <summary>What may never be known, so that a planner adds what is asked for although it depends on that.</summary>
    public virtual MissingFacts PlannedDespite => MissingFacts.None;

    /// <summary>A box like the one that mends what it finds lacking, without its place; null where that takes several, or where no box is offered.</summary>
    public DeviceBox? Adds { get; init; }

    /// <summary>Judges one subject from where its boxes are now.</summary>
    /// <param name="space">The subject.</param>
    /// <param name="statement">Takes what it lacks.</param>
    public abstract void Judge(SpaceView space, SpaceStatement statement);

    /// <summary>Where along its wall a box may go, at the height that it has, without making this rule's answer worse. Everywhere, unless a form says otherwise: then trying it out decides.</summary>
    /// <param name="space">The subject.</param>
    /// <param name="box">One of its boxes.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public virtual DistanceSet KeepAlong(SpaceView space, SpaceBox box)
    {
        _ = space ?? throw new ArgumentNullException(nameof(space));
        _ = box ?? throw new ArgumentNullException(nameof(box));
        return DistanceSet.All;
    }

    /// <summary>The stretches of a room's runs that it speaks of: those that are served whatever isn't known, and the rest.</summary>
    internal virtual (List<WallStretch> Served, List<WallStretch> Open) ServedIn(SpaceView space) => ([], []);

    /// <summary>Whether a box in another place than a finding offers gives what is lacking too. A planner asks this of places nearby; false unless a form says more.</summary>
    /// <param name="space">The subject.</param>
    /// <param name="lacking">What the finding is about: its subject.</param>
    /// <param name="box">The box where it would be, which is none of the subject's yet.</param>
    /// <param name="offered">Where along that wall the finding offers it.</param>
    public virtual bool ServesFrom(SpaceView space, string lacking, SpaceBox box, Distance offered) => false;
}

/// <summary>What a space rule is judged for.</summary>
public enum SpaceKind
{
    /// <summary>Every room of a kind in the rule's scope.</summary>
    Room = 0,

    /// <summary>Every outside face.</summary>
    OutsideFace = 1,

    /// <summary>Every flight of stairs.</summary>
    Flight = 2,

    /// <summary>Every storey.</summary>
    Storey = 3,

    /// <summary>The dwelling.</summary>
    Dwelling = 4,
}

/// <summary>Takes what a space rule finds.</summary>
public sealed class SpaceStatement
{
    // So many are looked through sooner than listed.
    private const int Few = 8;

    private readonly List<SpaceAnswer> answers = [];
    private HashSet<string>? subjects;
    private List<SpaceStatement>? asRead;
    private readonly List<OpenPart> open = [];
    private readonly List<(string Subject, string Address, Wording? LetOffBecause)> met = [];

    /// <summary>Whether what is met is taken down too: only where somebody asks for it, so that judging again and again allocates nothing.</summary>
    internal bool TellsAll { get; init; }

    internal List<SpaceAnswer> Answers => answers;

    /// <summary>The boxes that are tried while all others stay as they were: what none of them bears on may be passed over, and says what it said. Null where all is asked.</summary>
    internal List<SpaceBox>? Tried { get; set; }

    /// <summary>The parts that were looked at, by the names that findings about them have, where the rest was passed over; null where nothing was.</summary>
    internal HashSet<string>? LookedAt { get; set; }

    /// <summary>Why the rule couldn't be judged, or not in every part.</summary>
    internal List<OpenPart> Open => open;

    /// <summary>What is met, or let off; empty unless <see cref="TellsAll"/>.</summary>
    internal List<(string Subject, string Address, Wording? LetOffBecause)> Met => met;

    /// <summary>Something isn't met, or may not be.</summary>
    /// <param name="subject">What it is about, by a name that stays while boxes move: a room's id, a stretch of wall.</param>
    /// <param name="address">The room or wall that it belongs to.</param>
    /// <param name="verdict">Fails or unknown.</param>
    /// <param name="measured">What was measured.</param>
    /// <param name="allowed">What is allowed, in the same terms.</param>
    /// <param name="what">Says how it is now, in one line that goes before "must be …"; asked only when a finding is read.</param>
    /// <param name="needs">What would have to be known, where the verdict is unknown.</param>
    /// <param name="added">Boxes that, added, would meet the rule; none where no box would.</param>
    /// <exception cref="ArgumentException">What passes is no finding.</exception>
    public void Finds(string subject, string address, Verdict verdict, Quantity measured, QuantitySet allowed, Func<Wording> what, MissingFacts needs = MissingFacts.None, Items<PlacedBox> added = default)
    {
        if (verdict == Verdict.Passes)
        {
            throw new ArgumentException("What passes is no finding.", nameof(verdict));
        }

        answers.Add(new(subject, address, verdict, measured, allowed, what, needs, () => added));
    }

    /// <summary>The same with boxes that are looked for only when a remedy is asked for: at once, for every room and reading, it was 39 % of evaluating a house.</summary>
    internal void Finds(string subject, string address, Verdict verdict, Quantity measured, QuantitySet allowed, Func<Wording> what, MissingFacts needs, Func<Items<PlacedBox>> added, Items<string> involves = default) =>
        answers.Add(new(subject, address, verdict, measured, allowed, what, needs, added) { Involves = involves });

    /// <summary>The same of what no box that is added mends, with what to do instead.</summary>
    internal void Finds(string subject, string address, Verdict verdict, Quantity measured, QuantitySet allowed, Func<Wording> what, Func<Wording> elseDo, MissingFacts needs = MissingFacts.None) =>
        answers.Add(new(subject, address, verdict, measured, allowed, what, needs, static () => default) { ElseDo = elseDo });

    /// <summary>The same of a run, with the stretches of it that aren't reached, the id of the first box that would be added, wherever that is, and whether it serves no other run.</summary>
    internal void Finds(string subject, Func<Wording> named, string address, Verdict verdict, Quantity measured, QuantitySet allowed, Func<Wording> what, MissingFacts needs, Func<RunGap> gap, Func<Items<PlacedBox>> added, Func<string> firstAdded, bool isApart) =>
        answers.Add(new(subject, address, verdict, measured, allowed, what, needs, added) { Named = named, Gap = gap, FirstAdded = firstAdded, IsApart = isApart });

    /// <summary>A box isn't where it has to be among those that are there.</summary>
    /// <param name="box">The box as it should be set: its exact place along its wall and its exact height. It is marked on steps.</param>
    /// <param name="address">The wall that it is on.</param>
    /// <param name="measured">How far off it is.</param>
    /// <param name="allowed">How far off it may be.</param>
    /// <param name="what">Says how it is now, in one line that goes before "must be …"; asked only when a finding is read.</param>
    internal void FindsAmiss(DeviceBox box, string address, Quantity measured, QuantitySet allowed, Func<Wording> what) =>
        answers.Add(new(box.Id, address, Verdict.Fails, measured, allowed, what, MissingFacts.None, static () => default) { Moved = box });

    /// <summary>Something was looked at and is met. A rule that stays silent about its subject counts as not about it.</summary>
    /// <param name="subject">What is met, by the name that a finding about it would have.</param>
    /// <param name="address">The room or wall that it belongs to.</param>
    public void Meets(string subject, string address)
    {
        if (TellsAll)
        {
            met.Add((subject, address, null));
        }
    }

    /// <summary>A run was looked at and is met: named only where somebody asks.</summary>
    internal void Meets(Run run, LengthUnits units)
    {
        if (TellsAll)
        {
            met.Add((run.NameIn(units), run.Stretches[0].Address, null));
        }
    }

    /// <summary>A run isn't met, and is let off.</summary>
    internal void LetsOff(Run run, LengthUnits units, Wording because)
    {
        if (TellsAll)
        {
            met.Add((run.NameIn(units), run.Stretches[0].Address, because));
        }
    }

    /// <summary>The rule can't be judged, because something that it needs isn't described or contradicts itself. Where it weighs as a violation, that is a finding.</summary>
    /// <param name="reason">What isn't described, in one phrase.</param>
    /// <param name="subject">What alone isn't judged, or not in every part, by the name that a finding about it has; null where nothing here is.</param>
    public void NotJudged(Wording reason, string? subject = null) => open.Add(new(reason, subject, true));

    /// <summary>What the rule is about isn't described, or only a look on site could tell. The report lists it as not judged, without a finding.</summary>
    /// <param name="reason">What isn't described, in one phrase.</param>
    /// <param name="subject">What alone isn't judged, by the name that a finding about it has; null where nothing here is.</param>
    public void LeavesOpen(Wording reason, string? subject = null) => open.Add(new(reason, subject, false));

    /// <summary>Whether something that another reading finds is met here: nothing is found of it, and nothing more of it is left open.</summary>
    internal bool IsMet(string subject, SpaceStatement reading) =>
        !Speaks(subject) && open.TrueForAll(one => (one.Subject is { } only && only != subject) || reading.open.Contains(one));

    /// <summary>What another reading of the rule says: used again for each.</summary>
    internal SpaceStatement AsRead(int reading)
    {
        asRead ??= [];
        while (asRead.Count <= reading)
        {
            asRead.Add(new());
        }

        return asRead[reading];
    }

    private bool Speaks(string subject)
    {
        if (answers.Count > Few)
        {
            return (subjects ??= new(answers.ConvertAll(answer => answer.Subject), StringComparer.Ordinal)).Contains(subject);
        }

        return answers.Exists(answer => answer.Subject == subject);
    }

    internal void Clear()
    {
        answers.Clear();
        LookedAt = null;
        subjects = null;
        open.Clear();
        met.Clear();
    }
}

/// <summary>Something that a space rule couldn't judge, and whether that keeps it from saying what it was asked.</summary>
internal readonly record struct OpenPart(Wording Reason, string? Subject, bool Blocks);

/// <summary>One thing that a space rule found.</summary>
/// <remarks>What would mend it is looked for when it is asked for. Only whoever finds remedies and plans asks, one at a time, and before a box moves.</remarks>
internal sealed record SpaceAnswer(string Subject, string Address, Verdict Verdict, Quantity Measured, QuantitySet Allowed, Func<Wording> What, MissingFacts Needs, Func<Items<PlacedBox>> FindAdded)
{
    private Items<PlacedBox>? added;
    private string? said;

    /// <summary>How it was when it was found, printed once: whoever compares findings asks for both each time a box is dragged.</summary>
    public string Said => said ??= What().ToString();

    /// <summary>Boxes that, added, would meet the rule; none where no box would.</summary>
    public Items<PlacedBox> Adds => added ??= Found();

    /// <summary>The id of the first of those boxes, if there are any; null where only looking for them tells.</summary>
    public Func<string>? FirstAdded { get; init; }

    /// <summary>What to do where no box is added; null where nothing that is known here mends it.</summary>
    public Func<Wording>? ElseDo { get; init; }

    /// <summary>Whether those boxes are no answer to anything else that the rule finds of the room: then both get theirs at once.</summary>
    public bool IsApart { get; init; }

    /// <summary>The box that isn't where it has to be, as it should be set; null where something is lacking.</summary>
    public DeviceBox? Moved { get; init; }

    /// <summary>The subject as one sees it on site; null where its name says that.</summary>
    public Func<Wording>? Named { get; init; }

    /// <summary>What of a run isn't reached; null where it isn't about a run.</summary>
    public Func<RunGap>? Gap { get; init; }

    /// <summary>The ids or addresses of what else it is about.</summary>
    public Items<string> Involves { get; init; }

    /// <summary>Why nothing could be judged; null where something was.</summary>
    public Wording? NotJudgedBecause { get; init; }

    /// <summary>Of what couldn't be judged.</summary>
    public static SpaceAnswer Of(OpenPart open, string space) => new(open.Subject ?? space, space, Verdict.Unknown, default, default, () => open.Reason, MissingFacts.None, static () => default) { NotJudgedBecause = open.Reason };

    private Items<PlacedBox> Found()
    {
        try
        {
            return FindAdded();
        }
        catch (OverflowException)
        {
            // Where it can't be added up, no box can be put.
            return default;
        }
    }
}
