using System;
using System.Collections.Generic;
using System.Globalization;
using System.Text;

namespace BoxHeights;

/// <summary>What to order: boxes, devices, plates and what holds them, counted for the house and told by room.</summary>
/// <remarks>It counts the mended dwelling (<see cref="Evaluation.Mend()"/>), so that it agrees with the marks; what was there before isn't ordered. Nothing here is an approval.</remarks>
public sealed partial class OrderList
{
    private readonly Dwelling dwelling;

    private OrderList(Dwelling dwelling, List<OrderRow> rows)
    {
        this.dwelling = dwelling;
        Rows = new(rows);
    }

    /// <summary>The items: boxes, then devices, plates and what holds boxes; of each those first that are needed most.</summary>
    public Items<OrderRow> Rows { get; }

    /// <summary>The order list of an evaluated dwelling.</summary>
    /// <param name="evaluation">The evaluation, whose catalog and units the list takes.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    public static OrderList For(Evaluation evaluation)
    {
        Evaluation mended = (evaluation ?? throw new ArgumentNullException(nameof(evaluation))).Mend().Evaluation;
        Dwelling dwelling = mended.Dwelling;
        PartsCatalog catalog = mended.State.Options.Catalog;
        Dictionary<(OrderedPart Part, string What), Dictionary<string, int>> counts = [];
        foreach (ResolvedBox resolved in mended.State.Boxes)
        {
            if (resolved.IsExisting)
            {
                continue;
            }

            DeviceBox box = resolved.Source;
            string room = resolved.Surface.Space.Id;
            Count(OrderedPart.Box, BoxOf(box, catalog, dwelling.Units));
            foreach (DeviceKind device in box.Devices)
            {
                Count(OrderedPart.Device, device.Name);
            }

            if (TakesPlate(box.Devices))
            {
                Count(OrderedPart.Plate, ResolvedBox.PlateKindOf(box, catalog).Name + ", " + Gangs(ResolvedBox.GangsOf(box)));
            }

            if (box.Mounting?.How is MountingMethod.Bracket or MountingMethod.Bar or MountingMethod.Blocking)
            {
                Count(OrderedPart.Holder, box.Mounting.How.ToString().ToLowerInvariant());
            }

            void Count(OrderedPart part, string what)
            {
                if (!counts.TryGetValue((part, what), out Dictionary<string, int>? rooms))
                {
                    counts.Add((part, what), rooms = new(StringComparer.Ordinal));
                }

                rooms.TryGetValue(room, out int before);
                rooms[room] = before + 1;
            }
        }

        List<OrderRow> rows = [];
        foreach (KeyValuePair<(OrderedPart Part, string What), Dictionary<string, int>> one in counts)
        {
            List<RoomCount> rooms = [];
            foreach (KeyValuePair<string, int> room in one.Value)
            {
                rooms.Add(new(room.Key, room.Value));
            }

            rows.Add(new(one.Key.Part, one.Key.What, new(rooms)));
        }

        rows.Sort((a, b) => a.Part != b.Part ? a.Part.CompareTo(b.Part) : a.Count != b.Count ? b.Count.CompareTo(a.Count) : string.CompareOrdinal(a.What, b.What));
        return new(dwelling, rows);
    }

    /// <summary>What one room needs: what is carried there.</summary>
    /// <param name="room">The id of a room or an outside face.</param>
    /// <returns>A list without rows where nothing is needed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="room"/> is null.</exception>
    public OrderList ForRoom(string room)
    {
        _ = room ?? throw new ArgumentNullException(nameof(room));
        List<OrderRow> rows = [];
        foreach (OrderRow row in Rows)
        {
            foreach (RoomCount count in row.Rooms)
            {
                if (count.Room == room)
                {
                    rows.Add(new(row.Part, row.What, new[] { count }));
                }
            }
        }

        return new(dwelling, rows);
    }

    /// <summary>The list as Markdown: a heading and a table for boxes, devices, plates and what holds boxes.</summary>
    public string ToMarkdown()
    {
        StringBuilder text = new();
        TextTable.AppendTitle(text, "Order list: " + dwelling.Name, "Counted from what is described and what the report adds; spares aren't in it.");
        Table().AppendMarkdown(text);
        return text.ToString();
    }

    /// <summary>The list as comma-separated values after RFC 4180, with a header line.</summary>
    public string ToCsv() => Table().ToCsv();

    /// <summary>How many items there are.</summary>
    public override string ToString() => Rows.Count + " items to order for " + dwelling.Name;

    /// <summary>The rows as every form of the paper shows them.</summary>
    internal TextTable Table()
    {
        TextTable table = new("part", "what", "count", "where");
        foreach (OrderRow row in Rows)
        {
            table.Add(row.Part switch { OrderedPart.Box => "boxes", OrderedPart.Device => "devices", OrderedPart.Plate => "plates", _ => "holding" },
                row.What, row.Count.ToString(CultureInfo.InvariantCulture), row.Rooms.ToString());
        }

        return table;
    }

    private static string BoxOf(DeviceBox box, PartsCatalog catalog, LengthUnits units)
    {
        string what = ResolvedBox.KindOf(box, catalog).Name + ", " + Gangs(ResolvedBox.GangsOf(box));
        what += ResolvedBox.VolumeOf(box, catalog) is { } volume ? ", " + Printed.Of(volume, units) : ", volume not stated";
        what += box.Extension is { } ring ? ", with a ring of " + Printed.Of(ring, units) : "";
        return what + (ResolvedBox.SizeOf(box, catalog).Depth is { } depth ? ", " + depth.Exactly(units) + " deep" : "");
    }

    private static bool TakesPlate(Items<DeviceKind> devices)
    {
        foreach (DeviceKind device in devices)
        {
            if (device.TakesPlate)
            {
                return true;
            }
        }

        return false;
    }

    private static string Gangs(int gangs) => gangs.ToString(CultureInfo.InvariantCulture) + "-gang";
}

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
}

/// <summary>How many a room needs of something.</summary>
public sealed record RoomCount
{
    internal RoomCount(string room, int count)
    {
        Room = room;
        Count = count;
    }

    /// <summary>The id of the room or outside face.</summary>
    public string Room { get; }

    /// <summary>How many.</summary>
    public int Count { get; }

    /// <summary>"kitchen 3".</summary>
    public override string ToString() => Room + " " + Count.ToString(CultureInfo.InvariantCulture);
}
