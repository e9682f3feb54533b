using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Boxes beside or behind appliances and furniture, where practice ties them to it.</summary>
internal sealed class FurnitureBoxes(RoughInDraft draft)
{
    /// <summary>The rows that tie boxes to things.</summary>
    private readonly List<PlacementRule> anchored = [.. draft.Evaluator.Rules.Rows.OfType<PlacementRule>().Where(row => row.Anchor is not null)];

    /// <summary>The extras that some thing was described for.</summary>
    private readonly HashSet<BoxPurpose> tied = [];

    /// <summary>A box for each appliance of the room that a row has one planned for; of several rows the last by its id first.</summary>
    /// <param name="room">The room.</param>
    /// <param name="lights">Devices that are planned now; null for all.</param>
    public void Appliances(Room room, Items<DeviceKind>? lights = null)
    {
        PlacementRule[] rows = draft.State.Rules.Placement;
        for (int i = rows.Length - 1; i >= 0; i--)
        {
            if (rows[i] is { PlannedFor.Count: > 0, Planned: { } box } row && (lights is not { } some || box.Devices.Exists(some.Contains)) && (row.PlannedIn.Count == 0 || row.PlannedIn.Contains(room.Kind)))
            {
                Plan(room, box, row.PlannedFor.Select(kind => kind.Name));
            }
        }
    }

    /// <summary>The extras that are asked for.</summary>
    public void Extras(Room room)
    {
        foreach (BoxPurpose purpose in draft.Options.Extras)
        {
            DeviceBox box = new("extra", purpose);
            foreach ((PlacementRule rule, _) in RulesFor(purpose))
            {
                box = rule.Planned ?? box;
            }

            if (Plan(room, box.WithDedicated(null), default))
            {
                tied.Add(purpose);
            }
        }
    }

    /// <summary>Notes the extras that no thing was described for, with what would have to be.</summary>
    /// <param name="room">The room that was planned; null for the dwelling.</param>
    public void TellWhatIsntTied(string? room)
    {
        foreach (BoxPurpose purpose in draft.Options.Extras)
        {
            if (tied.Contains(purpose))
            {
                continue;
            }

            List<string> things = [];
            foreach ((_, PlaceAnchor anchor) in RulesFor(purpose))
            {
                things.AddRange(anchor.Things);
            }

            draft.Note(things.Count == 0
                ? "no " + purpose + " box is planned: no rule of the set says what such a box is set beside or behind"
                : "no " + purpose + " box is planned: " + (room ?? "the dwelling") + " describes no " + string.Join(" or ", things) + " with its wall and its left and right end");
        }
    }

    /// <summary>The rows that tie boxes of a purpose to things.</summary>
    private IEnumerable<(PlacementRule Rule, PlaceAnchor Anchor)> RulesFor(BoxPurpose purpose)
    {
        foreach (PlacementRule rule in anchored)
        {
            if (rule.Scope.Purposes.Contains(purpose))
            {
                yield return (rule, rule.Anchor!);
            }
        }
    }

    /// <summary>Boxes beside or behind the things that a rule of practice ties their purpose to, or those of some kinds alone.</summary>
    /// <returns>Whether the room has such a thing whose place is known.</returns>
    private bool Plan(Room room, DeviceBox box, Items<string> onlyThings)
    {
        bool any = false;
        foreach ((PlacementRule rule, PlaceAnchor anchor) in RulesFor(box.Purpose))
        {
            foreach (Fixture fixture in room.Fixtures)
            {
                if (IsMeant(fixture.Kind.Name) && (fixture.Wall is null || fixture.Left is null || fixture.Right is null))
                {
                    draft.Note(SurfaceAddress.Of(room.Id, fixture.Id) + ": no " + box.Purpose + " box is planned for it, since its wall and its left and right end aren't all stated");
                }
            }

            foreach (Wall wall in room.Walls)
            {
                foreach (AnchoredThing thing in anchor.ThingsOn(room.Fixtures.Where(fixture => fixture.Wall == wall.Id), wall, draft.State.Options.Catalog.UsualMeasures))
                {
                    if (IsMeant(thing.Kind) && thing is { Left: { } left, Right: { } right } && left < right)
                    {
                        any = true;
                        Plan(SurfaceAddress.Of(room.Id, wall.Id), wall.Length, thing.Name, left, right, box, rule);
                    }
                }
            }

            bool IsMeant(string kind) => anchor.Things.Contains(kind) && (onlyThings.Count == 0 || onlyThings.Contains(kind));
        }

        return any;
    }

    private void Plan(string address, Distance length, string thing, Distance left, Distance right, DeviceBox box, PlacementRule rule)
    {
        Distance most = rule.Anchor!.UpTo;
        if (rule.Anchor!.Beyond is { } beyond)
        {
            Distance aside = Distance.Min(beyond + draft.State.Rules.RoomForBoxes.BesideThings, most);
            Place(address, length, thing, box, [new(left - most, left - beyond)], left - aside, rule);
            Place(address, length, thing, box, [new(right + beyond, right + most)], right + aside, rule);
        }
        else
        {
            DistanceRange all = new(left - most, right + most);
            Place(address, length, thing, box, IsMeantForTheMiddle(box) ? [new(left, right), all] : [all], left + (right - left).Split(2)[0], rule);
        }
    }

    private bool IsMeantForTheMiddle(DeviceBox box) => Array.Exists(draft.State.Rules.Placement, row => row.AsksForTheMiddle && row.Scope.Purposes.Contains(box.Purpose));

    /// <summary>A box in the first of some stretches that has room for it; each lies in the last.</summary>
    private void Place(string address, Distance length, string thing, DeviceBox box, DistanceRange[] stretches, Distance wish, PlacementRule rule)
    {
        foreach (int there in draft.State.SurfaceAt(address) is { } surface ? draft.State.BoxesOn(surface) : [])
        {
            if (draft.State.Boxes[there].Source.Purpose == box.Purpose && draft.State.AtOf(there) is { } at && stretches[stretches.Length - 1].Contains(at))
            {
                return;
            }
        }

        if (HeightsOnWall.Of(draft, address, length, box, true) is { } heights)
        {
            foreach (DistanceRange stretch in stretches)
            {
                foreach (PlaceOnWall place in heights.AtStudsFirst(wish))
                {
                    if (stretch.Contains(place.At) && (!rule.IsPlannedByCustom || place.IsUsual) && draft.TryAdd(address, box.WithAt(place.At).WithHeight(place.Height), "for " + thing, rule))
                    {
                        return;
                    }
                }
            }
        }

        string none = address + ": no place for a " + box.Purpose + " box " + draft.Asked(rule) + " (" + thing + ")" + HeightsOnWall.WhyNone(draft, address, wish, box);
        if (rule.IsPlannedByCustom)
        {
            draft.Note(none);
        }
        else
        {
            draft.Obstacle(none);
        }
    }
}
