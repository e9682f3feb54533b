using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>
/// Rooms in which all boxes for a purpose that are described as new hang at one height, which isn't the usual one or the storey's: somebody wants them so. What is added there
/// is level with them, and what is added elsewhere in the storey isn't, unless all of several such rooms have the same level and none another.
/// </summary>
internal sealed class RoomLevels
{
    // One box by itself may be for a thing that isn't described, one room by itself for somebody.
    private const int FewestAlike = 2;

    private readonly LayoutState state;
    private readonly Dictionary<(ResolvedSpace Room, BoxPurpose Purpose), BoxHeight> heights = [];
    private readonly Dictionary<(ResolvedSpace Room, BoxPurpose Purpose), BoxHeight> shared = [];
    private readonly Dictionary<(string Storey, BoxPurpose Purpose), BoxHeight> ofStoreys = [];

    /// <param name="state">The dwelling before anything is planned.</param>
    public RoomLevels(LayoutState state)
    {
        this.state = state;
        Dictionary<(ResolvedSpace, BoxPurpose), List<int>> alike = [];
        for (int box = 0; box < state.Boxes.Count; box++)
        {
            if (state.Boxes[box].Surface is { Kind: BoxSurface.Wall, Space: { IsOutside: false } room })
            {
                alike.ListOf((room, state.Boxes[box].Source.Purpose)).Add(box);
            }
        }

        Dictionary<int, List<Finding>>? found = null;
        foreach (KeyValuePair<(ResolvedSpace, BoxPurpose), List<int>> boxes in alike)
        {
            List<int> all = boxes.Value.FindAll(box => !state.Boxes[box].IsExisting);
            if (all.Count >= FewestAlike && state.HeightOf(all[0]) is { Edge: not null } height && all.TrueForAll(box => state.HeightOf(box) == height))
            {
                shared.Add(boxes.Key, height);
                if (all.Count == boxes.Value.Count && IsWanted(FoundOf(all)))
                {
                    heights.Add(boxes.Key, height);
                }
            }
        }

        HashSet<(string Storey, BoxPurpose Purpose)> seen = [];
        foreach (KeyValuePair<(ResolvedSpace Room, BoxPurpose Purpose), BoxHeight> own in heights)
        {
            (string storey, BoxPurpose purpose) = (own.Key.Room.StoreyId, own.Key.Purpose);
            if (seen.Add((storey, purpose)) && RoomsIn(storey, purpose).Count >= FewestAlike && state.Boxes.TrueForAll(box => box.Source.Purpose != purpose || box.Surface.Space.StoreyId != storey || box.Source.Height == own.Value))
            {
                ofStoreys[(storey, purpose)] = own.Value;
            }
        }

        // By boxes, once somebody asks: mostly there is no such room.
        List<Finding> FoundOf(List<int> boxes)
        {
            if (found is null)
            {
                found = [];
                List<Finding> every = [];
                state.CollectInto(every);
                foreach (Finding finding in every)
                {
                    if (finding.Limit is null && finding.Box >= 0)
                    {
                        found.ListOf(finding.Box).Add(finding);
                    }
                }
            }

            List<Finding> some = [];
            boxes.ForEach(box => some.AddRange(found.TryGetValue(box, out List<Finding>? its) ? its : []));
            return some;
        }
    }

    /// <summary>The height that a room has of its own for a purpose, or shares with all of its storey that is described; null where it has none.</summary>
    public BoxHeight? Of(ResolvedSpace? room, BoxPurpose purpose) =>
        room is { IsOutside: false } && (heights.TryGetValue((room, purpose), out BoxHeight height) || ofStoreys.TryGetValue((room.StoreyId, purpose), out height)) ? height : null;

    /// <summary>The height that several new boxes for a purpose are described at in a room, and none otherwise: whatever was there before, what is new is level with them. Null where there is none.</summary>
    public BoxHeight? OfNew(ResolvedSpace? room, BoxPurpose purpose) => room is not null && shared.TryGetValue((room, purpose), out BoxHeight height) ? height : null;

    /// <summary>Whether a box is on the level that its room has of its own.</summary>
    public bool Has(ResolvedBox box) => Of(box.Surface.Space, box.Source.Purpose) is { } own && own == box.Source.Height;

    /// <summary>The same of a box that is held to a place.</summary>
    public bool Has(SpaceBox box) => Has(state.Boxes[box.Index]) && state.HeightOf(box.Index) == state.Boxes[box.Index].Source.Height;

    /// <summary>What goes to the reason of a box that is on such a level; nothing of any other.</summary>
    public string Told(ResolvedBox box) => !Has(box) ? "" : heights.ContainsKey((box.Surface.Space, box.Source.Purpose)) ? ", level with what is described there" : ", level with what is described in its storey";

    /// <summary>Whether all of a storey that is described has one level for a purpose, which is to be that of the rest too.</summary>
    public bool AreAll(string? storey, BoxPurpose purpose) => storey is not null && ofStoreys.ContainsKey((storey, purpose));

    /// <summary>The rooms of a storey that have a height of their own for a purpose.</summary>
    public List<string> RoomsIn(string? storey, BoxPurpose purpose)
    {
        List<string> rooms = [];
        foreach ((ResolvedSpace Room, BoxPurpose Purpose) one in heights.Keys)
        {
            if (one.Purpose == purpose && one.Room.StoreyId == storey)
            {
                rooms.Add(one.Room.Id);
            }
        }

        return rooms;
    }

    /// <summary>Whether a finding is of a habit of heights, or of how boxes look together: what a height that somebody wants may miss.</summary>
    public bool MayBeMissed(Finding finding) => state.GivesWay(finding) && (finding.Group >= 0 || state.Rules.Set.Row(finding.RuleId) is PlacementRule { YieldsWhenForced: true, Anchor: null });

    /// <summary>Whether something is found of where boxes hang, and nothing that a height may not miss.</summary>
    private bool IsWanted(List<Finding> found) => found.Count > 0 && found.TrueForAll(MayBeMissed);
}
