using System.Collections.Generic;

namespace BoxHeights;

/// <content>Boxes that aren't where the last of their purpose were.</content>
internal sealed partial class RoughInDraft
{
    /// <summary>Where some room of the storey has a level of its own: a box on that level there, or elsewhere on its own, either of which may be off others'.</summary>
    private bool TryAddOffLevel(string address, DeviceBox box)
    {
        List<string> rooms = Levels.RoomsIn(StoreyOf(address), box.Purpose);
        bool isThere = Levels.Of(State.SurfaceAt(address)?.Space, box.Purpose) is { } own && own == box.Height;
        if (rooms.Count == 0 || !State.TryAdd(address, box, [], finding => Levels.MayBeMissed(finding) && (isThere || finding.Group >= 0)))
        {
            return false;
        }

        if (!Levels.AreAll(StoreyOf(address), box.Purpose))
        {
            Note(StoreyOf(address) + ": its " + box.Purpose + " boxes aren't all level, since " + string.Join(", ", rooms) + (rooms.Count == 1 ? " has its own level" : " have their own levels") + " as described");
        }

        return true;
    }

    /// <summary>The boxes of a purpose that were planned in a storey at another height than the last, and aren't level with what was there before: one room may not allow the height that did for those before, and then all are set by its stick.</summary>
    private List<int> OnOneStick(string address, DeviceBox last)
    {
        List<int> others = [];
        foreach (int box in Alike(StoreyOf(address), last.Purpose))
        {
            if (IsPlanned(box) && State.Boxes[box].Source.Height != last.Height && !IsBesideOld(State.Boxes[box]) && !Levels.Has(State.Boxes[box]))
            {
                others.Add(box);
            }
        }

        return others;
    }
}
