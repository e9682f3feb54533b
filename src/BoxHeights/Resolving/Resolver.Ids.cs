using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <content>What has to have an id of its own in the dwelling.</content>
internal sealed partial class Resolver
{
    /// <summary>After the boxes are resolved.</summary>
    private void UniqueIds(Dwelling dwelling)
    {
        Dictionary<string, string> seen = new(Boxes.Count + dwelling.Rooms.Count, StringComparer.Ordinal);
        foreach (Storey storey in dwelling.Storeys)
        {
            Once(storey.Id, storey.Id, "a storey");
        }

        foreach (Room room in dwelling.Rooms)
        {
            Once(room.Id, room.Id, "a room");
        }

        foreach (OutsideFace face in dwelling.Outside)
        {
            Once(face.Id, face.Id, "an outside face");
        }

        foreach (StairFlight flight in dwelling.Flights)
        {
            Once(flight.Id, flight.Id, "a flight");
        }

        foreach (ResolvedBox box in Boxes)
        {
            Once(box.Source.Id, box.Surface.Address, null);
        }

        foreach (ResolvedBox box in Boxes)
        {
            foreach (string controlled in box.Source.Controls)
            {
                Refers(seen.ContainsKey(controlled), box.Source.Id, "controls", controlled, "box");
            }
        }

        // What names a place is put into words only for a fault: a house has many boxes.
        void Once(string id, string address, string? what)
        {
            if (!seen.TryGetValue(id, out string? first))
            {
                seen.Add(id, what ?? address);
                return;
            }

            Wording Worded(string where) => SurfaceAddress.Read(where).Surface is null ? Wording.Term(where) : $"a box on {where:surface}";
            Fault(LayoutFaultKind.DuplicateId, id, $"{Worded(first):first} and {Worded(what ?? address):second} have the same id", address);
        }
    }
}
