using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Tests.Standards;

/// <summary>A door as it is drafted: how much wall it needs beside it, what it is, and where its switch is wanted, on the strike side.</summary>
internal sealed class DoorDraft
{
    private static readonly RoomKind[] Private = [RoomKind.Bathroom, RoomKind.Closet, RoomKind.Laundry, RoomKind.Office, new("pantry")];
    private static readonly RoomKind[] Wide = [RoomKind.DiningRoom, RoomKind.Office, RoomKind.LivingRoom, RoomKind.FamilyRoom];

    private readonly OpeningKind kind;

    /// <summary>A door of which no more is told than that it hinges at its left.</summary>
    public DoorDraft(decimal casing)
    {
        kind = OpeningKind.Door;
        Casing = casing;
        Width = 32;
        After = 16;
    }

    /// <summary>Drafts a door as one is found on site.</summary>
    /// <param name="draw">Draws for it.</param>
    /// <param name="room">The kind of room that it opens into.</param>
    /// <param name="casing">The casing that is meant.</param>
    public DoorDraft(Draw draw, RoomKind room, decimal casing)
    {
        kind = Private.Contains(room) && draw.Chance(40) ? draw.One(OpeningKind.PocketDoor, OpeningKind.BarnDoor)
            : Wide.Contains(room) && draw.Chance(40) ? draw.One(OpeningKind.DoubleDoor, OpeningKind.Cased)
            : OpeningKind.Door;
        StrikesLeft = draw.Chance(35);
        Casing = draw.Chance(20) ? draw.One(3.5m, 4.5m) : casing;

        // Rough openings from common practice: a door is 2 in narrower than its opening, two leaves of 30 in meet in 62 in.
        Width = kind == OpeningKind.DoubleDoor ? 62 : kind == OpeningKind.Cased ? 48 : kind == OpeningKind.BarnDoor ? 36 : kind == OpeningKind.PocketDoor ? 29 : 32;
        Swing = kind == OpeningKind.Door || kind == OpeningKind.DoubleDoor ? draw.One<DoorSwing?>(null, DoorSwing.Into, DoorSwing.Into, DoorSwing.Away) : null;
        decimal other = kind == OpeningKind.PocketDoor ? 34 : kind == OpeningKind.BarnDoor ? 40 : kind == OpeningKind.Door ? draw.One(0m, 0m, 26m) : 0;
        decimal strike = kind == OpeningKind.DoubleDoor && Swing == DoorSwing.Into ? 52 : 20;
        Before = StrikesLeft ? strike : other;
        After = StrikesLeft ? other + 16 : strike;
    }

    public bool StrikesLeft { get; }

    public decimal Casing { get; }

    public decimal Width { get; }

    public DoorSwing? Swing { get; }

    /// <summary>How much wall it needs to its left, beyond what any wall has.</summary>
    public decimal Before { get; }

    /// <summary>How much wall it needs to its right.</summary>
    public decimal After { get; }

    /// <summary>Where the middle of its switches is wanted: on the king, 3 in from the opening, or 3 in beyond a leaf that opens onto that wall.</summary>
    /// <param name="left">The left end of its opening.</param>
    /// <param name="boxWidth">The width of their box.</param>
    public decimal SwitchAt(decimal left, decimal boxWidth)
    {
        decimal away = (kind == OpeningKind.DoubleDoor && Swing == DoorSwing.Into ? 32 : 3) + (boxWidth / 2);
        return StrikesLeft ? left - away : left + Width + away;
    }

    /// <summary>Whether a person who comes through a door uses it.</summary>
    public static bool IsUsedAtADoor(DeviceBox box) => box.Devices.Any(device => device.IsSwitch || device == DeviceKind.Thermostat);

    /// <summary>The wall that a leaf stands before when it is open into the room, or a barn door's panel.</summary>
    public static IEnumerable<(Distance Left, Distance Right)> Behind(Opening door)
    {
        bool pair = door.Kind == OpeningKind.DoubleDoor;
        WallEnd? side = door.Kind == OpeningKind.BarnDoor ? door.PocketOn : door.Kind == OpeningKind.Door ? door.Hinge : null;
        if (door.Leaf is not { } leaf || (door.Kind != OpeningKind.BarnDoor && door.Swing != DoorSwing.Into))
        {
            yield break;
        }

        if (pair || side == WallEnd.Left)
        {
            yield return (door.Left + In(1) - leaf, door.Left + In(1));
        }

        if (pair || side == WallEnd.Right)
        {
            yield return (door.Right - In(1), door.Right - In(1) + leaf);
        }
    }

    /// <summary>The opening, with as much of it as is written down.</summary>
    public Opening At(string id, decimal left)
    {
        WallEnd away = StrikesLeft ? WallEnd.Right : WallEnd.Left;
        Opening opening = new Opening(id, kind, In(left), In(left + Width)).WithCasing(In(Casing)).WithReveal(In(0.1875m)).WithHead(new Level(In(82.5m), Datum.Subfloor));
        return kind == OpeningKind.PocketDoor ? opening.WithLeaf(In(28)).WithPocketOn(away)
            : kind == OpeningKind.BarnDoor ? opening.WithLeaf(In(38)).WithPocketOn(away)
            : kind == OpeningKind.Cased ? opening
            : opening.WithLeaf(In(30)).WithHinge(away).WithSwing(Swing);
    }
}
