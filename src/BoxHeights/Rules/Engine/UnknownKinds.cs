using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Names of kinds that nobody knows, where a rule would have read them: kinds are open, so a name that is misspelled is one that no rule speaks of.</summary>
internal static class UnknownKinds
{
    /// <summary>A fault for each part of a kind that isn't known: with the name that may have been meant, or as a note where none is near.</summary>
    public static void AddTo(List<LayoutFault> faults, Dwelling dwelling, List<ResolvedBox> boxes, KnownKinds known)
    {
        Add(faults, known.Occupancies, dwelling.Occupancy?.Name, dwelling.Name, dwelling.Name);
        foreach (Room room in dwelling.Rooms)
        {
            Add(faults, known.Rooms, room.Kind.Name, room.Id, room.Id);
            Fixtures(faults, known, room.Id, room.Fixtures);
            OnWalls(faults, known, room.Id, room.Walls);
            foreach (Freestanding one in room.Freestanding)
            {
                Add(faults, known.Freestanding, one.Kind.Name, SurfaceAddress.Of(room.Id, one.Id), room.Id);
            }
        }

        foreach (OutsideFace face in dwelling.Outside)
        {
            Fixtures(faults, known, face.Id, face.Fixtures);
            OnWalls(faults, known, face.Id, face.Walls);
        }

        foreach (ResolvedBox box in boxes)
        {
            OfBox(faults, known, box);
        }
    }

    /// <summary>Whether something of a box is of a kind that isn't known.</summary>
    public static bool Has(ResolvedBox box, KnownKinds known)
    {
        List<LayoutFault> faults = [];
        OfBox(faults, known, box);
        return faults.Count > 0;
    }

    private static void OfBox(List<LayoutFault> faults, KnownKinds known, ResolvedBox box)
    {
        string id = box.Source.Id;
        Add(faults, known.Purposes, box.Source.Purpose.Name, id, box.Surface.Address);
        Add(faults, known.Boxes, box.Source.Kind?.Name, id, box.Surface.Address);
        Add(faults, known.Plates, box.Source.Plate?.Name, id, box.Surface.Address);
        if (known.AreRatingsRead && box.Source.Rating is { } rating && !ReceptacleRating.Read(rating).IsReadable)
        {
            faults.Add(new(LayoutFaultKind.UnknownKind, id, box.Surface.Address, $"rating \"{rating}\" names neither volts nor amperes, as \"125 V 20 A\" does, so that whether its receptacle counts isn't known"));
        }

        for (int i = 0; i < box.Source.Devices.Count; i++)
        {
            // Several of a kind in a box are told once.
            if (i == 0 || box.Source.Devices[i] != box.Source.Devices[i - 1])
            {
                Add(faults, known.Devices, box.Source.Devices[i].Name, id, box.Surface.Address);
            }
        }
    }

    private static void Fixtures(List<LayoutFault> faults, KnownKinds known, string space, Items<Fixture> fixtures)
    {
        foreach (Fixture fixture in fixtures)
        {
            Add(faults, known.Fixtures, fixture.Kind.Name, SurfaceAddress.Of(space, fixture.Id), space);
        }
    }

    private static void OnWalls(List<LayoutFault> faults, KnownKinds known, string space, Items<Wall> walls)
    {
        foreach (Wall wall in walls)
        {
            foreach (Opening one in wall.Openings)
            {
                Add(faults, known.Openings, one.Kind.Name, space, wall.Id, one.Id);
            }

            foreach (Counter one in wall.Counters)
            {
                Add(faults, known.Counters, one.Kind.Name, space, wall.Id, one.Id);
                foreach (CounterInterruption part in one.Interruptions)
                {
                    Add(faults, known.Interruptions, part.Kind.Name, space, wall.Id, one.Id);
                }
            }

            foreach (Finish one in wall.Finishes)
            {
                Add(faults, known.Finishes, one.Kind.Name, space, wall.Id, one.Id);
            }

            foreach (Covering one in wall.Coverings)
            {
                Add(faults, known.Coverings, one.Kind.Name, space, wall.Id, one.Id);
            }
        }
    }

    /// <summary>The same of a part of a wall: addresses are put together only for what isn't known.</summary>
    private static void Add(List<LayoutFault> faults, KnownKinds.Family family, string name, string space, string wall, string id)
    {
        if (!family.Knows(name))
        {
            Add(faults, family, name, SurfaceAddress.Of(SurfaceAddress.Of(space, wall), id), SurfaceAddress.Of(space, wall));
        }
    }

    private static void Add(List<LayoutFault> faults, KnownKinds.Family family, string? name, string subject, string address)
    {
        if (name is not null && !family.Knows(name))
        {
            string? meant = name.Length == 0 ? null : family.Meant(name);
            if (family.NearOnly && meant is null && name.Length > 0)
            {
                return;
            }

            faults.Add(new(meant is null && name.Length > 0 ? LayoutFaultKind.UnknownKind : LayoutFaultKind.MisspelledKind, subject, address, Said(family.What, name, meant)));
        }
    }

    private static Wording Said(string what, string name, string? meant) =>
        name.Length == 0 ? $"{Wording.Term(what):family} without a name"
        : meant is not null ? $"{Wording.Term(what):family} \"{name}\" isn't known here: is \"{meant}\" meant?"
        : (Wording)$"{Wording.Term(what):family} \"{name}\" isn't known here, so that nothing is judged that goes by it; if it is meant, a row's scope, the catalog or the evaluator's own kinds may name it";
}
