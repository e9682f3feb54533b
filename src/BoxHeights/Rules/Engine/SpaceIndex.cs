using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>What the space rules are judged for, and which box belongs to what.</summary>
internal sealed partial class SpaceIndex
{
    /// <summary>Said of what is broken: the fault is a finding itself.</summary>
    internal static readonly Wording AtFault = $"a fault of the description keeps it from being judged";

    private static readonly List<int> None = [];

    private readonly List<JudgedSpace> judged = [];
    private readonly List<SpaceView> views = [];

    // Used again for each of them: only one is judged at a time.
    private readonly SpaceStatement statement = new();
    private readonly List<SpaceBox?> boxOf = [];
    private readonly BoxLists lists;
    private readonly DwellingMemo? whole;

    // Which of what is judged a room or outside face, a storey, and every box belongs to: kept once for all its boxes.
    private readonly Dictionary<string, List<int>> ofSpace = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<int>> ofStorey = new(StringComparer.Ordinal);
    private readonly List<int> ofAll = [];
    private readonly List<int> wide = [];

    public SpaceIndex(LayoutState state, Resolver resolved)
    {
        Dwelling dwelling = resolved.Dwelling;
        lists = new(dwelling, state.Boxes.Count);
        if (state.Rules.Space.Length == 0)
        {
            return;
        }

        EnterBoxes(state);
        whole = new(dwelling, lists);
        (Dictionary<string, ResolvedSpace> rooms, Dictionary<string, ResolvedSpace> faces) = ById(resolved.Spaces);
        foreach (Room room in dwelling.Rooms)
        {
            SpaceView view = View(SpaceKind.Room, room.Id, lists.OfSpace(room.Id), room: room, space: rooms.TryGetValue(room.Id, out ResolvedSpace? space) ? space : null);
            Enter(state, view, room.Kind, ofSpace.ListOf(room.Id));
        }

        foreach (OutsideFace face in dwelling.Outside)
        {
            SpaceView view = View(SpaceKind.OutsideFace, face.Id, lists.OfSpace(face.Id), face: face, space: faces.TryGetValue(face.Id, out ResolvedSpace? space) ? space : null);
            Enter(state, view, default, ofSpace.ListOf(face.Id));
        }

        int firstWide = judged.Count;
        foreach (StairFlight flight in dwelling.Flights)
        {
            Enter(state, View(SpaceKind.Flight, flight.Id, lists.All, flight: flight), default, ofAll);
        }

        foreach (Storey storey in dwelling.Storeys)
        {
            Enter(state, View(SpaceKind.Storey, storey.Id, lists.OfStorey(storey.Id), storey: storey), default, ofStorey.ListOf(storey.Id));
        }

        Enter(state, View(SpaceKind.Dwelling, dwelling.Name, lists.All), default, ofAll);
        for (int one = firstWide; one < judged.Count; one++)
        {
            wide.Add(one);
        }

        SpaceView View(SpaceKind kind, string id, SpaceBoxes own, Room? room = null, OutsideFace? face = null, StairFlight? flight = null, Storey? storey = null, ResolvedSpace? space = null)
        {
            SpaceView view = new(state, kind, id, whole, space?.Levels ?? Levels.Default, own)
            {
                Room = room,
                Face = face,
                Flight = flight,
                Storey = storey,
                Backs = resolved.Backs,
                Framing = space?.Framing,
                HasBrokenParts = space is { HasBrokenParts: true },
            };
            views.Add(view);
            return view;
        }
    }

    public int Count => judged.Count;

    public JudgedSpace this[int index] => judged[index];

    /// <summary>What a box belongs to: its room or outside face, its storey, flights and the dwelling.</summary>
    public IEnumerable<int> Of(int box)
    {
        if (box >= boxOf.Count || boxOf[box] is not { } one)
        {
            yield break;
        }

        foreach (List<int> some in new[] { ListIn(ofSpace, one.SpaceId), ListIn(ofStorey, BoxLists.StoreyOf(one)), ofAll })
        {
            foreach (int space in some)
            {
                yield return space;
            }
        }
    }

    /// <summary>What has to be judged again after a box was added or described anew: what asked for a list that it is in. All that it belongs to, where that isn't noted.</summary>
    public IEnumerable<int> ReadersOfListsWith(int box)
    {
        if (whole?.Readers is not { } readers || box >= boxOf.Count || boxOf[box] is not { } one)
        {
            foreach (int space in Of(box))
            {
                yield return space;
            }

            yield break;
        }

        foreach (SpaceBoxes list in lists.Of(one))
        {
            foreach (int space in readers.Of(list.Number))
            {
                yield return space;
            }
        }
    }

    /// <summary>What is judged for a room or an outside face by itself.</summary>
    public List<JudgedSpace> OfSpace(string id) => ListIn(ofSpace, id).ConvertAll(one => judged[one]);

    /// <summary>What is judged for flights, storeys and the dwelling.</summary>
    public List<JudgedSpace> Wide => wide.ConvertAll(one => judged[one]);

    /// <summary>Where along its wall a box may go without making what its room has to provide worse.</summary>
    public DistanceSet KeepOf(int box)
    {
        DistanceSet keep = DistanceSet.All;
        foreach (int one in Of(box))
        {
            keep &= judged[one].View.HasBrokenParts ? DistanceSet.All : judged[one].Rule.KeepAlong(judged[one].View, boxOf[box]!);
        }

        return keep;
    }

    /// <summary>Takes in a box that was added behind all others. What it belongs to has to be judged again.</summary>
    public void Enter(LayoutState state)
    {
        int index = boxOf.Count;
        SpaceBox box = new(state, index);
        boxOf.Add(box);
        lists.Add(box);
        SetStale(index);
    }

    /// <summary>Takes the box out again that entered last.</summary>
    public void Leave()
    {
        int last = boxOf.Count - 1;
        SetStale(last);
        lists.RemoveLast(boxOf[last]!);
        boxOf.RemoveAt(last);
    }

    /// <summary>Takes in a box that joined behind all others, or one that parted, where it comes in the dwelling's order.</summary>
    public void Join(int index, LayoutState state)
    {
        if (whole is not null)
        {
            SpaceBox box = new(state, index);
            if (index == boxOf.Count)
            {
                boxOf.Add(null);
            }

            boxOf[index] = box;
            lists.Join(box);
        }
    }

    /// <summary>Takes out a box that leaves.</summary>
    public void Part(int index)
    {
        if (whole is not null)
        {
            lists.Part(boxOf[index]!);
            boxOf[index] = null;
        }
    }

    /// <summary>Whether a rule said what it did because the description lists such a box, and no other may be one.</summary>
    public bool IsLastOfItsKind(int index) => whole is not null && whole.IsLastOfItsKind(boxOf[index]!);

    /// <summary>Whether a rule said what it did because the description lists no box as one that is to be added: then it may say something else of other spaces, too.</summary>
    public bool IsFirstOfItsKind(PlacedBox placed) => whole is not null && whole.IsFirstOfItsKind(placed);

    /// <summary>Notes that what a box belongs to has to be judged again.</summary>
    public void SetStale(int box)
    {
        foreach (int one in ReadersOfListsWith(box))
        {
            judged[one].IsStale = true;
        }
    }

    private static List<int> ListIn(Dictionary<string, List<int>> lists, string? id) => id is not null && lists.TryGetValue(id, out List<int>? list) ? list : None;

    /// <summary>Rooms and outside faces by their ids, the first of several.</summary>
    private static (Dictionary<string, ResolvedSpace> Rooms, Dictionary<string, ResolvedSpace> Faces) ById(List<ResolvedSpace> spaces)
    {
        Dictionary<string, ResolvedSpace> rooms = new(StringComparer.Ordinal);
        Dictionary<string, ResolvedSpace> faces = new(StringComparer.Ordinal);
        for (int i = spaces.Count - 1; i >= 0; i--)
        {
            (spaces[i].IsOutside ? faces : rooms)[spaces[i].Id] = spaces[i];
        }

        return (rooms, faces);
    }

    /// <summary>Lists the boxes that there are at first; those that a fault keeps from being judged stand apart.</summary>
    private void EnterBoxes(LayoutState state)
    {
        boxOf.Capacity = state.Boxes.Count;
        for (int i = 0; i < state.Boxes.Count; i++)
        {
            SpaceBox? box = state.SitesOf(i).Length > 0 ? new(state, i) : null;
            boxOf.Add(box);
            lists.Enter(box, state.Boxes[i]);
        }
    }

    private void Enter(LayoutState state, SpaceView view, RoomKind kind, List<int> among)
    {
        if (IsUntouched(view))
        {
            return;
        }

        foreach (SpaceRule rule in state.Rules.Space)
        {
            if (rule.SpeaksOf(view) && (rule.Scope.Rooms.Count == 0 || rule.Scope.Rooms.Contains(kind)))
            {
                among.Add(judged.Count);
                judged.Add(new(rule, view, lists, statement, judged.Count));
            }
        }
    }

    /// <summary>Whether nothing of it is part of this work: a room or face that says so, a storey of such rooms alone, a flight between such storeys.</summary>
    private static bool IsUntouched(SpaceView view) => view.Kind switch
    {
        SpaceKind.Room => view.Room!.Untouched,
        SpaceKind.OutsideFace => view.Face!.Untouched,
        SpaceKind.Storey => IsUntouched(view.Dwelling, view.Id),
        SpaceKind.Flight => IsUntouched(view.Dwelling, view.Flight!.From) && IsUntouched(view.Dwelling, view.Flight.To),
        _ => false,
    };

    private static bool IsUntouched(Dwelling dwelling, string storey)
    {
        bool any = false;
        foreach (Room room in dwelling.Rooms)
        {
            if (room.Storey == storey && !room.Untouched)
            {
                return false;
            }

            any |= room.Storey == storey;
        }

        return any;
    }
}
