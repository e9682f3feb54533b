using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Boxes beside or behind appliances and furniture, where practice ties them to it.</summary>
internal sealed class FurnitureBoxes(RoughInDraft draft)
{
    // Between a bed and what stands beside it: 8 in further than the nearest that will do. Common practice, no source.
    private static readonly Distance Aside = Distance.FromInches(8, 0, 1);

    private static readonly (BoxPurpose Purpose, FixtureKind Thing, DeviceKind Device)[] Machines =
    [
        (BoxPurpose.Refrigerator, FixtureKind.Refrigerator, DeviceKind.DuplexReceptacle),
        (BoxPurpose.Range, FixtureKind.Range, DeviceKind.RangeReceptacle),
        (BoxPurpose.Laundry, FixtureKind.Washer, DeviceKind.GfciReceptacle),
        (BoxPurpose.Dryer, FixtureKind.Dryer, DeviceKind.DryerReceptacle),
    ];

    /// <summary>A receptacle for each appliance of the room. The washer's is the laundry's too; the others serve one appliance alone.</summary>
    public void Appliances(Room room)
    {
        foreach ((BoxPurpose purpose, FixtureKind thing, DeviceKind device) in Machines)
        {
            Plan(room, new DeviceBox("appliance", purpose).WithDevices(new[] { device }).WithDedicated(purpose == BoxPurpose.Laundry ? null : thing.Name), thing.Name);
        }
    }

    /// <summary>The extras that are asked for.</summary>
    public void Extras(Room room)
    {
        foreach (BoxPurpose purpose in draft.Options.Extras)
        {
            DeviceKind device = purpose == BoxPurpose.VanityLight || purpose == BoxPurpose.BedLight ? DeviceKind.Luminaire
                : purpose == BoxPurpose.BedSwitch ? DeviceKind.ThreeWaySwitch
                : DeviceKind.DuplexReceptacle;
            Plan(room, new DeviceBox("extra", purpose).WithDevices(new[] { device }), null);
        }
    }

    /// <summary>Boxes beside or behind the things that a rule of practice ties their purpose to, or those of one kind alone.</summary>
    private void Plan(Room room, DeviceBox box, string? onlyThing)
    {
        foreach (Rule rule in draft.Evaluator.Rules.Rules)
        {
            if (rule is not AnchoredPlace anchored || !rule.Scope.Purposes.Contains(box.Purpose))
            {
                continue;
            }

            foreach (Fixture fixture in room.Fixtures)
            {
                if (anchored.Anchor.Things.Contains(fixture.Kind.Name) && (onlyThing is null || fixture.Kind.Name == onlyThing) && fixture is { Left: { } left, Right: { } right } && left < right)
                {
                    Plan(room, fixture, left, right, box, anchored);
                }
            }
        }
    }

    private void Plan(Room room, Fixture fixture, Distance left, Distance right, DeviceBox box, AnchoredPlace rule)
    {
        foreach (Wall wall in room.Walls)
        {
            if (wall.Id != fixture.Wall)
            {
                continue;
            }

            Distance most = rule.Anchor.UpTo;
            if (rule.Anchor.Beyond is { } beyond)
            {
                Distance aside = Distance.Min(beyond + Aside, most);
                Place(room, wall, fixture, box, new(left - most, left - beyond), left - aside, rule);
                Place(room, wall, fixture, box, new(right + beyond, right + most), right + aside, rule);
            }
            else
            {
                Place(room, wall, fixture, box, new(left - most, right + most), left + (right - left).Split(2)[0], rule);
            }
        }
    }

    private void Place(Room room, Wall wall, Fixture fixture, DeviceBox box, DistanceRange within, Distance wish, AnchoredPlace rule)
    {
        foreach (DeviceBox there in wall.Boxes)
        {
            if (there.Purpose == box.Purpose && there.At is { } at && within.Contains(at))
            {
                return;
            }
        }

        string address = room.Id + "/" + wall.Id;
        if (HeightsOnWall.Of(draft, address, wall.Length, box, true) is { } heights)
        {
            foreach (RunCandidate candidate in heights.NearestTo(wish))
            {
                if (within.Contains(candidate.At) && draft.TryAdd(address, box.WithAt(candidate.At).WithHeight(heights.HeightAt(candidate.At)), "for " + fixture.Id, rule))
                {
                    return;
                }
            }
        }

        draft.Obstacle(address + ": no place for a " + box.Purpose + " box " + draft.Asked(rule) + " (" + fixture.Id + ")");
    }
}
