using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Every name of a kind that is known under a rule set: those of the library, of the catalog, of the scopes of rows, and those that an evaluator is told of.</summary>
internal sealed class KnownKinds
{
    public KnownKinds(RuleSet rules, PartsCatalog catalog, Items<string> own)
    {
        Catalog = catalog;
        Own = own;
        HashSet<string> named = new(own, StringComparer.Ordinal);
        List<string> purposes = [.. BoxPurpose.KnownNames()];
        List<string> devices = [.. DeviceKind.KnownNames()];
        List<string> rooms = [.. RoomKind.KnownNames()];
        bool ofBoxes = false;
        bool ofRooms = false;
        bool ofPurposes = false;
        bool ofDevices = false;
        bool ofWalls = false;
        foreach (Rule row in rules.Rows)
        {
            // What a row of a caller's own reads of walls and rooms nobody knows: it is taken to read all that it can.
            AreRatingsRead |= row is SpaceRule;
            ofWalls |= row is SpaceRule or PlacementRule { ReadsWallParts: true };
            ofBoxes |= row is not SpaceRule;
            ofRooms |= row is SpaceRule { Subject: SpaceKind.Room };
            ofDevices |= row is SpaceRule or LimitRule;
            ofPurposes |= row is SpaceRule or ProvisionRule;
            named.UnionWith(row.KindsNamed);
            Take(row.Scope);
            foreach (Reading reading in row.Readings)
            {
                Take(reading.Rule.Scope);
            }
        }

        devices.AddRange(catalog.Devices.Select(part => part.Kind.Name));
        Purposes = new("purpose", ofPurposes, purposes, named);
        Devices = new("device", ofDevices, devices, named);
        Rooms = new("room kind", ofRooms, rooms, named);
        Boxes = new("kind of box", ofBoxes, [.. BoxKind.KnownNames(), .. catalog.Boxes.Select(part => part.Kind.Name)], named);
        Plates = new("plate", ofBoxes, [.. PlateKind.KnownNames(), .. catalog.Plates.Select(part => part.Kind.Name)], named);
        Occupancies = new("occupancy", ofRooms, Occupancy.KnownNames(), named);
        Fixtures = new("fixture", ofWalls, FixtureKind.KnownNames(), named);
        Freestanding = new("what stands in the room", ofRooms, FreestandingKind.KnownNames(), named);
        Openings = new("opening", ofWalls, OpeningKind.KnownNames(), named);
        Counters = new("counter", ofWalls, CounterKind.KnownNames(), named);
        Interruptions = new("what interrupts the counter", ofWalls, InterruptionKind.KnownNames(), named);
        Finishes = new("finish", ofWalls, FinishKind.KnownNames(), named, nearOnly: true);
        Coverings = new("covering", ofWalls, CoveringKind.KnownNames(), named);

        void Take(RuleScope scope)
        {
            ofPurposes |= scope.Purposes.Count > 0;
            ofDevices |= scope.Devices.Count > 0;
            ofRooms |= scope.Rooms.Count > 0;
            purposes.AddRange(scope.Purposes.Select(kind => kind.Name));
            devices.AddRange(scope.Devices.Select(kind => kind.Name));
            rooms.AddRange(scope.Rooms.Select(kind => kind.Name));
        }
    }

    /// <summary>The catalog whose names these are.</summary>
    public PartsCatalog Catalog { get; }

    /// <summary>The names that an evaluator was told of.</summary>
    public Items<string> Own { get; }

    /// <summary>Whether some row counts outlets, which may go by their ratings.</summary>
    public bool AreRatingsRead { get; }

    public Family Purposes { get; }

    public Family Devices { get; }

    public Family Rooms { get; }

    public Family Boxes { get; }

    public Family Plates { get; }

    public Family Occupancies { get; }

    public Family Fixtures { get; }

    public Family Freestanding { get; }

    public Family Openings { get; }

    public Family Counters { get; }

    public Family Interruptions { get; }

    public Family Finishes { get; }

    public Family Coverings { get; }

    /// <summary>The names of one sort of kind, and whether any rule reads it.</summary>
    public sealed class Family
    {
        private readonly HashSet<string> names;
        private readonly HashSet<string> named;
        private readonly string[] inOrder;
        private readonly bool isRead;

        public Family(string what, bool isRead, IEnumerable<string> names, HashSet<string> named, bool nearOnly = false)
        {
            What = what;
            this.isRead = isRead;

            inOrder = [.. names];
            this.names = new(names, StringComparer.Ordinal);
            this.named = named;
            NearOnly = nearOnly;
        }

        /// <summary>What is of such a kind, in words.</summary>
        public string What { get; }

        /// <summary>Whether only a name that is nearly one of these is a mistake: whatever else may be meant is of no matter to a rule.</summary>
        public bool NearOnly { get; }

        /// <summary>Whether a name is known, or nobody reads it. What rows name may be of any sort: it is known, but isn't what was meant here.</summary>
        public bool Knows(string name) => !isRead || names.Contains(name) || named.Contains(name);

        /// <summary>The name that may have been meant; null where none is near.</summary>
        public string? Meant(string name) => Spelling.Meant(name, inOrder);
    }
}
