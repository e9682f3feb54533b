using System.Globalization;

namespace BoxHeights;

/// <summary>What kind of thing is ordered.</summary>
public enum OrderedPart
{
    /// <summary>A device box.</summary>
    Box = 0,

    /// <summary>A device: a switch, a receptacle, a luminaire.</summary>
    Device = 1,

    /// <summary>A cover plate.</summary>
    Plate = 2,

    /// <summary>What holds a box that isn't nailed to a stud: a bracket, a bar, blocking.</summary>
    Holder = 3,

    /// <summary>A steel plate on the framing, where a cable runs nearer to its face than the rules let it.</summary>
    NailPlate = 4,
}

/// <summary>An item to order.</summary>
public sealed record OrderRow
{
    internal OrderRow(OrderedPart part, string what, Items<RoomCount> rooms)
    {
        Part = part;
        What = what;
        Rooms = rooms;
        foreach (RoomCount room in rooms)
        {
            Count += room.Count;
        }
    }

    /// <summary>What kind of thing it is.</summary>
    public OrderedPart Part { get; }

    /// <summary>The item, in words: "nail-on, 1-gang, 18 in3".</summary>
    public string What { get; }

    /// <summary>How many the house needs.</summary>
    public int Count { get; }

    /// <summary>How many of them each room or outside face needs.</summary>
    public Items<RoomCount> Rooms { get; }

    /// <summary>How many of what.</summary>
    public override string ToString() => Count.ToString(CultureInfo.InvariantCulture) + " " + What;
}

/// <summary>How many a room needs of something.</summary>
[Told]
public sealed partial record RoomCount
{
    /// <summary>The id of the room or outside face.</summary>
    public string Room { get; }

    /// <summary>How many.</summary>
    public int Count { get; }

    /// <summary>"kitchen 3".</summary>
    public override string ToString() => Room + " " + Count.ToString(CultureInfo.InvariantCulture);
}
