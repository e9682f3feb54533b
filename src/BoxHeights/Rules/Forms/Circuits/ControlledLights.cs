using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>What of lights and their switches a row asks for.</summary>
public enum ControlAsked
{
    /// <summary>In each room that has lights or switched receptacles a switch controls at least one.</summary>
    InEachRoom = 0,

    /// <summary>A switch controls each light, in rooms where one controls some.</summary>
    OfEachLight = 1,

    /// <summary>Each switch controls something.</summary>
    OfEachSwitch = 2,

    /// <summary>What is controlled from one place has a switch for that; from several places, two that go together and others between (<see cref="ControlledLights.Ways"/>).</summary>
    OfWays = 3,
}

/// <summary>Lights and their switches belong together, as <see cref="DeviceBox.Controls"/> says. Silent until some switch of the dwelling says what it controls.</summary>
/// <remarks>Work that was there before isn't asked. A switch in one box may control lights in any room. Boxes of several switches count for each light that they control.</remarks>
[Row(nameof(Lights), nameof(Asked))]
public sealed partial record ControlledLights : SpaceRule
{
    private static readonly Wording NotSaidWhichLight = $"which light a switch controls isn't described";
    private static readonly Wording NotSaidWhichItsSwitch = $"which light its switch controls isn't described";

    /// <summary>Devices that are lights.</summary>
    public Items<DeviceKind> Lights { get; init; }

    /// <summary>What is asked for.</summary>
    public ControlAsked Asked { get; init; }

    /// <summary>Which switches go together; null where that isn't asked.</summary>
    public SwitchWays? Ways { get; init; }

    /// <summary>Rooms that are asked; every room where none is named.</summary>
    public Items<RoomKind> Rooms { get; init; }

    /// <inheritdoc/>
    public override SpaceKind Subject => SpaceKind.Dwelling;

    /// <inheritdoc/>
    public override bool LooksAtOwnBoxesOnly => true;

    // What a box is matters wherever any of them says what it controls.
    internal override bool LooksAt(BoxTraits box, DwellingMemo whole) => whole.AreControlsSaid || box.Source.Controls.Count > 0;

    /// <inheritdoc/>
    public override Items<string> KindsNamed => KindNames.Joined(Lights.Select(kind => kind.Name), Ways?.KindsNamed ?? default);

    /// <inheritdoc/>
    public override string Numbers => AskedInWords + " of " + Lights + (Rooms.Count == 0 ? "" : " in " + Rooms);

    private string AskedInWords => Asked switch
    {
        ControlAsked.InEachRoom => "a switch for one at least in each room",
        ControlAsked.OfEachLight => "a switch for each",
        ControlAsked.OfEachSwitch => "something that each switch controls,",
        _ => "switches that go together for each",
    };

    /// <inheritdoc/>
    protected override IEnumerable<string> Mistakes()
    {
        if (Asked == ControlAsked.OfWays && Ways is null)
        {
            yield return "it asks for switches that go together, and has no Ways that say which do";
        }
    }

    /// <inheritdoc/>
    public override void Judge(SpaceView space, SpaceStatement statement)
    {
        Dictionary<string, List<SpaceBox>>? controllers = null;
        foreach (SpaceBox box in space.Boxes)
        {
            foreach (string controlled in box.Source.Controls)
            {
                controllers ??= new(StringComparer.Ordinal);
                List<SpaceBox> list = controllers.TryGetValue(controlled, out List<SpaceBox>? there) ? there : controllers[controlled] = [];
                if (!list.Contains(box))
                {
                    list.Add(box);
                }
            }
        }

        if (controllers is null)
        {
            // Few say it; a habit or an advice that nobody asked about has nothing to tell then.
            if (Severity == Severity.Violation)
            {
                statement.LeavesOpen(NotSaidWhichLight);
            }

            return;
        }

        if (Asked is ControlAsked.OfEachSwitch)
        {
            OfSwitches(space, statement);
        }
        else if (Asked is ControlAsked.OfWays)
        {
            OfWays(Ways!, space, controllers, statement);
        }
        else
        {
            OfRooms(space, controllers, statement);
        }
    }

    private void OfRooms(SpaceView space, Dictionary<string, List<SpaceBox>> controllers, SpaceStatement statement)
    {
        Dictionary<string, List<SpaceBox>> dark = new(StringComparer.Ordinal);
        HashSet<string> switched = new(StringComparer.Ordinal);
        HashSet<string> untold = new(StringComparer.Ordinal);
        foreach (SpaceBox box in space.Boxes)
        {
            if (box.Source.Controls.Count == 0 && Holds(box, DeviceKind.Switches))
            {
                untold.Add(box.SpaceId);
            }

            bool isLight = Holds(box, Lights);
            if (box.Traits.IsExisting || (Rooms.Count > 0 && !Rooms.Contains(box.Room)) || !(isLight || box.Source.Switched is not (null or SwitchedPart.None)))
            {
                continue;
            }

            if (controllers.ContainsKey(box.Id))
            {
                switched.Add(box.SpaceId);
            }
            else if (isLight)
            {
                (dark.TryGetValue(box.SpaceId, out List<SpaceBox>? there) ? there : dark[box.SpaceId] = []).Add(box);
            }
        }

        foreach (KeyValuePair<string, List<SpaceBox>> room in dark)
        {
            bool hasOne = switched.Contains(room.Key);
            if (Asked == ControlAsked.InEachRoom && !hasOne && untold.Contains(room.Key))
            {
                statement.LeavesOpen(NotSaidWhichItsSwitch, room.Key);
            }
            else if (Asked == ControlAsked.InEachRoom && !hasOne)
            {
                Lacks(statement, room.Key, room.Key, $"lights, and no switch said to control one", $"let a switch control one of them, or add a switch that does");
            }
            else if (Asked == ControlAsked.OfEachLight && hasOne)
            {
                room.Value.ForEach(box => Lacks(statement, box.Id, box.Address, $"a light without a switch", $"let a switch control {box.Id:light}, or add a switch that does"));
            }
        }

        foreach (string room in switched)
        {
            if (Asked == ControlAsked.InEachRoom || !dark.ContainsKey(room))
            {
                statement.Meets(room, room);
            }
        }
    }

    private static void OfSwitches(SpaceView space, SpaceStatement statement)
    {
        foreach (SpaceBox box in space.Boxes)
        {
            if (!box.Traits.IsExisting && Holds(box, DeviceKind.Switches))
            {
                if (box.Source.Controls.Count == 0)
                {
                    Lacks(statement, box.Id, box.Address, $"a switch that controls nothing", $"say what {box.Id:switch} controls, or leave it out");
                }
                else
                {
                    statement.Meets(box.Id, box.Address);
                }
            }
        }
    }

    private static void OfWays(SwitchWays ways, SpaceView space, Dictionary<string, List<SpaceBox>> controllers, SpaceStatement statement)
    {
        foreach (SpaceBox box in space.Boxes)
        {
            if (!controllers.TryGetValue(box.Id, out List<SpaceBox>? places) || box.Traits.IsExisting)
            {
                continue;
            }

            int count = places.Count, single = 0, atEnds = 0, onlyAtEnds = 0, between = 0;
            bool isKnown = true;
            foreach (SpaceBox place in places)
            {
                bool one = Holds(place, ways.Alone), end = Holds(place, ways.AtEnds), inner = Holds(place, ways.Between);
                isKnown &= one || end || inner;
                single += one ? 1 : 0;
                atEnds += end ? 1 : 0;
                onlyAtEnds += end && !inner ? 1 : 0;
                between += inner ? 1 : 0;
            }

            int ends = Math.Min(2, atEnds);
            int fitting = count == 1 ? single : ends + Math.Min(count - 2, between - Math.Max(0, ends - onlyAtEnds));
            if (!isKnown)
            {
                statement.LeavesOpen($"whether each of its switches is {Wording.Term(ways.EndName):ways} isn't described", box.Id);
            }
            else if (fitting < count)
            {
                statement.Finds(box.Id, box.Address, Verdict.Fails, Quantity.Of(fitting), QuantitySet.AtLeast(count), () => count == 1 ? $"controlled from one place by a switch that needs a mate"
                    : (Wording)$"controlled from {count} places by switches that don't go together", () => Together(ways, places, box.Id));
            }
            else
            {
                statement.Meets(box.Id, box.Address);
            }
        }
    }

    /// <summary>Which switches go together in so many places.</summary>
    private static Wording Together(SwitchWays ways, List<SpaceBox> places, string light)
    {
        Wording ids = Wording.And(places.ConvertAll(place => Wording.Name(place.Id)));
        Wording atEnds = Wording.Term(ways.EndName);
        return places.Count == 1 ? $"take a switch that needs no mate in {ids:boxes}, or let its mate control {light:light} too"
            : places.Count == 2 ? $"take {atEnds:ways} switches in {ids:boxes}"
            : (Wording)$"of {ids:boxes}, take {atEnds:ways} switches in two, those at the ends, and {Wording.Term(ways.BetweenName):between} switches in the others";
    }

    private static bool Holds(SpaceBox box, Items<DeviceKind> kinds) => box.Traits.Devices.Exists(kinds.Contains);

    private static void Lacks(SpaceStatement statement, string subject, string address, Wording what, Wording elseDo) =>
        statement.Finds(subject, address, Verdict.Fails, Quantity.Of(0), QuantitySet.AtLeast(1), () => what, () => elseDo);
}
