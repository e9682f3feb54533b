using System;
using System.Collections.Generic;
using System.Threading;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>A plan in the making: one open layout that boxes are added to, and what was added why.</summary>
internal sealed partial class RoughInDraft
{
    private readonly Dwelling dwelling;
    private readonly int described;
    private readonly Dictionary<ResolvedSpace, WallEnd> hands = [];
    private readonly Dictionary<string, List<ResolvedSurface>> surfacesOf = new(StringComparer.Ordinal);
    private readonly HashSet<string> ids = new(StringComparer.Ordinal);
    private readonly Dictionary<(string Storey, BoxPurpose Purpose), List<int>> alike = [];
    private readonly Dictionary<ResolvedSpace, List<BoxPurpose>> oldIn = [];
    private readonly List<PlannedBox> reasons = [];
    private readonly List<string> obstacles = [];
    private readonly List<string> notes = [];
    private readonly List<string> notPlanned = [];
    private readonly Dictionary<(StatedSite Site, bool OnBlocking, Distance Wanted), TriedHeights> tried = [];
    private readonly WiredBoxes wired;
    private SwitchedLights? switched;

    public RoughInDraft(Dwelling dwelling, LayoutEvaluator evaluator, RoughInOptions options, CancellationToken cancellation)
    {
        this.dwelling = dwelling;
        Evaluator = evaluator;
        Options = options;
        State = evaluator.StateOf(dwelling, cancellation);
        State.Spaces.NoteReaders();
        State.JudgeEntered();
        Levels = new(State);
        described = State.Boxes.Count;
        Described = SharedWalls.In(dwelling, BackFaces.Of(dwelling), State.Options.Catalog.UsualMeasures);
        foreach (ResolvedSurface surface in State.Surfaces)
        {
            surfacesOf.ListOf(surface.Space.Id).Add(surface);
        }

        Doors = new(State);
        Furniture = new(this);
        wired = new(this);
        for (int box = 0; box < described; box++)
        {
            ids.Add(State.Boxes[box].Source.Id);
            Note(box);
        }
    }

    public LayoutEvaluator Evaluator { get; }

    public RoughInOptions Options { get; }

    /// <summary>The dwelling without what is planned, every opening on both faces of its wall.</summary>
    public Dwelling Described { get; }

    /// <summary>What the rules state of the dwelling as it is planned so far.</summary>
    public LayoutState State { get; }

    /// <summary>Which openings are two sides of one.</summary>
    public DoorsThrough Doors { get; }

    /// <summary>Which rooms have a level of their own.</summary>
    public RoomLevels Levels { get; }

    private FurnitureBoxes Furniture { get; }

    /// <summary>Whether a box was planned, and not described.</summary>
    public bool IsPlanned(int box) => box >= described;

    /// <summary>The boxes of a purpose on the walls of a storey, by their places in the layout.</summary>
    public IReadOnlyList<int> Alike(string? storey, BoxPurpose purpose) => storey is not null && alike.TryGetValue((storey, purpose), out List<int>? found) ? found : [];

    /// <summary>Whether there are boxes on walls that were there before.</summary>
    public bool HasOld => oldIn.Count > 0;

    /// <summary>Whether there are boxes for its purpose in a box's room that were there before, so that it is level with those.</summary>
    public bool IsBesideOld(ResolvedBox box) => oldIn.TryGetValue(box.Surface.Space, out List<BoxPurpose>? old) && old.Contains(box.Source.Purpose);

    /// <summary>A planned box whose devices have changed, with the cables that these need.</summary>
    public DeviceBox Rewired(int box, DeviceBox changed) => wired.Wired(State.Boxes[box].Surface.Address, changed.WithCables(default).WithVolume(null));

    /// <summary>The heights worth trying on a wall, worked out once for all boxes that are alike.</summary>
    public TriedHeights HeightsAt(StatedSite site, bool onBlocking, Distance wanted)
    {
        if (!tried.TryGetValue((site, onBlocking, wanted), out TriedHeights? heights))
        {
            SettledOptions options = State.Options;
            tried.Add((site, onBlocking, wanted), heights = new(site, new(site, onBlocking, options.AlongMargin, options.AlongStep), wanted, options));
        }

        return heights;
    }

    /// <summary>A planned box that more cables enter than are usual, in the smallest size that holds them.</summary>
    public DeviceBox Resized(int box, DeviceBox changed) => wired.Wired(State.Boxes[box].Surface.Address, changed.WithVolume(null));

    /// <summary>The boxes of a room or an outside face, on all its surfaces.</summary>
    public IEnumerable<int> BoxesOf(string space)
    {
        foreach (ResolvedSurface surface in surfacesOf.TryGetValue(space, out List<ResolvedSurface>? surfaces) ? surfaces : [])
        {
            foreach (int box in State.BoxesOn(surface))
            {
                yield return box;
            }
        }
    }

    /// <summary>The storey of the room that a surface is in; null outside.</summary>
    public string? StoreyOf(string address) => State.SurfaceAt(address) is { Space: { IsOutside: false } space } ? space.StoreyId : null;

    public void Obstacle(string what)
    {
        if (!obstacles.Contains(what))
        {
            obstacles.Add(what);
        }
    }

    /// <summary>Tells what wasn't planned though nothing is lacking for it.</summary>
    public void Note(string what)
    {
        if (!notes.Contains(what))
        {
            notes.Add(what);
        }
    }

    /// <summary>Adds a box, unless it brings a finding with it or its plate comes too near another's.</summary>
    /// <param name="address">The surface.</param>
    /// <param name="box">The box.</param>
    /// <param name="reason">Why it is there, in one clause.</param>
    /// <param name="rule">What asks for it, named after the reason.</param>
    /// <param name="need">What it needn't meet, because it is required and has no better place.</param>
    /// <returns>Whether it stayed.</returns>
    public bool TryAdd(string address, DeviceBox box, string reason, Rule? rule = null, Need need = Need.None)
    {
        string wanted = SurfaceAddress.Read(address).Space + "-" + box.Purpose;
        string id = wanted;
        for (int n = 2; ids.Contains(id); n++)
        {
            id = wanted + "-" + n.ToString(System.Globalization.CultureInfo.InvariantCulture);
        }

        DeviceBox named = HeldOnWall.At(State, address, wired.Wired(address, box.WithId(id)));
        List<Finding> gaveWay = [];
        if (!PlateGap.IsKept(this, address, named)
            || (!State.TryAdd(address, named, []) && !TryAddOffLevel(address, named) && (OnOneStick(address, named) is not { Count: > 0 } others || !State.TryAdd(address, named, others))
                && !(need != Need.None && State.TryAdd(address, named, [], finding => State.GivesWay(finding) && (need == Need.OfAdvice || finding.Group >= 0), gaveWay))))
        {
            return false;
        }

        foreach (Finding finding in gaveWay)
        {
            Rule missed = Evaluator.Rules.Row(finding.RuleId);
            Obstacle(SurfaceAddress.Read(address).Space + ": what is required has no place where its " + box.Purpose + " box would be " + Asked(missed) + " (" + missed.Id + "); it is planned where it isn't");
        }

        ids.Add(id);
        reason += Levels.Told(State.Boxes[State.Boxes.Count - 1]);
        reasons.Add(new(id, address, reason + (rule is null ? "" : " (" + rule.Id + ")"), rule?.Id));
        Note(State.Boxes.Count - 1);
        return true;
    }

    /// <summary>Adds to what is told of why a planned box is there.</summary>
    public void Tell(int box, string more)
    {
        int reason = reasons.FindIndex(one => one.Id == State.Boxes[box].Source.Id);
        PlannedBox told = reasons[reason];
        string rule = told.RuleId is { } id ? " (" + id + ")" : "";
        reasons[reason] = new(told.Id, told.Address, told.Reason.Substring(0, told.Reason.Length - rule.Length) + more + rule, told.RuleId);
    }

    /// <summary>Ends the plan of a room, or of the dwelling.</summary>
    public RoomPlan Finish(string? room)
    {
        AddLacking([.. room is null ? All : State.Spaces.Wide], finding => (room is null || IsOf(finding, room)) && !notPlanned.Exists(one => IsOf(finding, one)));
        switched?.Adopt();
        Furniture.TellWhatIsntTied(room);
        HashSet<string> planned = [.. reasons.ConvertAll(box => box.Id)];
        List<Finding> found = [];
        State.CollectInto(found);
        foreach (Finding finding in found)
        {
            if (finding.Severity == Severity.Violation && finding.Fault is null && (finding.Space is null ? planned.Contains(finding.Subject) : room is null || IsOf(finding, room)))
            {
                Obstacle(finding.Message);
            }
        }

        foreach (LayoutFault fault in State.Faults)
        {
            if (fault.Kind != LayoutFaultKind.UnknownKind)
            {
                Obstacle(fault.Subject + ": " + fault.Message);
            }
        }

        return new(Planned(), new(reasons), new(Requirements()), new(obstacles), new(notes));
    }

    /// <summary>What the rules that boxes were added for ask, in the order in which they first did.</summary>
    private List<string> Requirements()
    {
        List<string> found = [];
        foreach (PlannedBox box in reasons)
        {
            if (box.RuleId is { } id && !found.Contains(id))
            {
                found.Add(id);
            }
        }

        return found.ConvertAll(id => id + ": must be " + Asked(Evaluator.Rules.Row(id)) + " [" + Evaluator.Rules.Row(id).Citation + "]");
    }

    /// <summary>To which side what ties goes on a wall.</summary>
    public WallEnd HandAt(string address)
    {
        if (State.SurfaceAt(address)?.Space is not { Room: { } room } space)
        {
            return WallEnd.Left;
        }

        if (!hands.TryGetValue(space, out WallEnd hand))
        {
            hands.Add(space, hand = RoomHand.Of(room, space.Storey?.Studs, space.Usual));
        }

        return hand;
    }

    /// <summary>How measures are printed.</summary>
    public LengthUnits Units => State.Options.Units;

    /// <summary>What a rule asks, in the units that the dwelling is marked in.</summary>
    public string Asked(Rule rule) => BothUnits.Of(rule.Summary, Units);

    /// <summary>The dwelling with what was planned.</summary>
    private Dwelling Planned()
    {
        List<PlacedBox> added = [];
        for (int box = described; box < State.Boxes.Count; box++)
        {
            added.Add(new(State.Boxes[box].Surface.Address, State.Boxes[box].Source));
        }

        return dwelling.WithBoxes(added);
    }

    private void Note(int box)
    {
        if (State.Boxes[box].Surface is { Kind: BoxSurface.Wall, Space: { IsOutside: false } space })
        {
            alike.ListOf((space.StoreyId, State.Boxes[box].Source.Purpose)).Add(box);
            if (State.Boxes[box].IsExisting)
            {
                oldIn.ListOf(space).Add(State.Boxes[box].Source.Purpose);
            }
        }
    }

    private static bool IsOf(Finding finding, string room) => finding.Address == room || SurfaceAddress.Read(finding.Address).IsPartOf(room);
}
