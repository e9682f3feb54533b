using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Names of kinds that nothing here knows: kinds are open, so a name that is misspelled is one that no rule speaks of.</summary>
/// <remarks>
/// A kind is known if the library names it, the catalog has a part of it, or a row's scope speaks of it. Kinds that scopes don't choose by (fixtures, openings
/// and whatever is on a wall) may be anything: those are told only where they are nearly spelled like one that is known.
/// </remarks>
internal static class UnknownKinds
{
    /// <summary>What isn't known, and the parts that are of it.</summary>
    public static IEnumerable<(string What, string Subject)> In(LayoutState state)
    {
        Dwelling dwelling = state.Dwelling;
        List<(string What, string Name, string[] Known, bool NearOnly, string Subject)> named = [];
        Names known = new(state.Rules.Set, state.Options.Catalog);
        if (dwelling.Occupancy is { } occupancy)
        {
            named.Add(("occupancy", occupancy.Name, known.Occupancies, false, dwelling.Name));
        }

        foreach (Room room in dwelling.Rooms)
        {
            named.Add(("room kind", room.Kind.Name, known.Rooms, false, room.Id));
            Fixtures(room.Id, room.Fixtures);
            OnWalls(room.Id, room.Walls);
        }

        foreach (OutsideFace face in dwelling.Outside)
        {
            Fixtures(face.Id, face.Fixtures);
            OnWalls(face.Id, face.Walls);
        }

        foreach (ResolvedBox box in state.Boxes)
        {
            named.Add(("purpose", box.Source.Purpose.Name, known.Purposes, false, box.Source.Id));
            if (box.Source.Kind is { } kind)
            {
                named.Add(("kind of box", kind.Name, known.Boxes, false, box.Source.Id));
            }

            if (box.Source.Plate is { } plate)
            {
                named.Add(("plate", plate.Name, known.Plates, false, box.Source.Id));
            }

            foreach (DeviceKind device in box.Source.Devices)
            {
                named.Add(("device", device.Name, known.Devices, false, box.Source.Id));
            }
        }

        foreach ((string what, string name, string[] words, bool nearOnly, string subject) in named)
        {
            if (Array.IndexOf(words, name) < 0 && Said(what, name, words, nearOnly) is { } line)
            {
                yield return (line, subject);
            }
        }

        void Fixtures(string space, Items<Fixture> fixtures)
        {
            foreach (Fixture fixture in fixtures)
            {
                named.Add(("fixture", fixture.Kind.Name, known.Fixtures, true, space + "/" + fixture.Id));
            }
        }

        void OnWalls(string space, Items<Wall> walls)
        {
            foreach (Wall wall in walls)
            {
                string address = space + "/" + wall.Id + "/";
                foreach (Opening one in wall.Openings)
                {
                    named.Add(("opening", one.Kind.Name, known.Openings, true, address + one.Id));
                }

                foreach (Counter one in wall.Counters)
                {
                    named.Add(("counter", one.Kind.Name, known.Counters, true, address + one.Id));
                }

                foreach (Finish one in wall.Finishes)
                {
                    named.Add(("finish", one.Kind.Name, known.Finishes, true, address + one.Id));
                }

                foreach (Covering one in wall.Coverings)
                {
                    named.Add(("covering", one.Kind.Name, known.Coverings, true, address + one.Id));
                }
            }
        }
    }

    private static string? Said(string what, string name, string[] words, bool nearOnly)
    {
        if (name.Length == 0)
        {
            return what + " without a name";
        }

        string? meant = Spelling.Meant(name, words);
        return meant is not null ? what + " \"" + name + "\" isn't known here: is \"" + meant + "\" meant?"
            : nearOnly ? null
            : what + " \"" + name + "\" isn't known here";
    }

    /// <summary>Every name that is known, kind by kind.</summary>
    private sealed class Names
    {
        public Names(RuleSet rules, PartsCatalog catalog)
        {
            List<BoxPurpose> purposes = [.. BoxPurpose.Known];
            List<DeviceKind> devices = [.. DeviceKind.Known, .. catalog.Devices.Select(part => part.Kind)];
            List<RoomKind> rooms = [.. RoomKind.Known];
            foreach (Rule row in rules.Rules)
            {
                Take(row.Scope);
                foreach (Reading reading in row.Readings)
                {
                    Take(reading.Rule.Scope);
                }
            }

            Purposes = Of(purposes, kind => kind.Name);
            Devices = Of(devices, kind => kind.Name);
            Rooms = Of(rooms, kind => kind.Name);
            Boxes = Of([.. BoxKind.Known, .. catalog.Boxes.Select(part => part.Kind)], kind => kind.Name);
            Plates = Of([.. PlateKind.Known, .. catalog.Plates.Select(part => part.Kind)], kind => kind.Name);

            void Take(RuleScope scope)
            {
                purposes.AddRange(scope.Purposes);
                devices.AddRange(scope.Devices);
                rooms.AddRange(scope.Rooms);
            }
        }

        public string[] Purposes { get; }

        public string[] Devices { get; }

        public string[] Rooms { get; }

        public string[] Boxes { get; }

        public string[] Plates { get; }

        public string[] Occupancies { get; } = Of(Occupancy.Known, kind => kind.Name);

        public string[] Fixtures { get; } = Of(FixtureKind.Known, kind => kind.Name);

        public string[] Openings { get; } = Of(OpeningKind.Known, kind => kind.Name);

        public string[] Counters { get; } = Of(CounterKind.Known, kind => kind.Name);

        public string[] Finishes { get; } = Of(FinishKind.Known, kind => kind.Name);

        public string[] Coverings { get; } = Of(CoveringKind.Known, kind => kind.Name);

        private static string[] Of<T>(IReadOnlyCollection<T> kinds, Func<T, string> name)
        {
            List<string> names = new(kinds.Count);
            foreach (T kind in kinds)
            {
                names.Add(name(kind));
            }

            return names.ToArray();
        }
    }
}
