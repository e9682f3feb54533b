using System;
using System.Collections.Generic;
using System.Globalization;
using System.Text;
using System.Threading;

namespace BoxHeights;

/// <summary>What to order: boxes, devices, plates, what holds boxes and plates that keep nails off cables, counted for the house and told by room.</summary>
/// <remarks>It counts the mended dwelling (<see cref="Evaluation.Mend()"/>), so that it agrees with the marks; what was there before isn't ordered. Nothing here is an approval.</remarks>
public sealed partial class OrderList
{
    private readonly Dwelling dwelling;

    private OrderList(Dwelling dwelling, List<OrderRow> rows, Items<string> notCounted)
    {
        this.dwelling = dwelling;
        Rows = new(rows);
        NotCounted = notCounted;
    }

    /// <summary>The items: boxes, then devices, plates, what holds boxes and nail plates; of each the kinds first that are needed most, and what differs in one thing alone (the volume of a box, what a plate is for) side by side.</summary>
    public Items<OrderRow> Rows { get; }

    /// <summary>What else the house may need and the description doesn't tell, each a sentence without its stop: to be asked before anything is ordered.</summary>
    public Items<string> NotCounted { get; }

    /// <summary>The order list of an evaluated dwelling.</summary>
    /// <param name="evaluation">The evaluation, whose catalog and units the list takes.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    public static OrderList For(Evaluation evaluation) => For(evaluation, CancellationToken.None);

    /// <summary>The order list of an evaluated dwelling, unless somebody gives up.</summary>
    /// <param name="evaluation">The evaluation, whose catalog and units the list takes.</param>
    /// <param name="cancellationToken">Ends it early.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static OrderList For(Evaluation evaluation, CancellationToken cancellationToken)
    {
        OrderCount count = new((evaluation ?? throw new ArgumentNullException(nameof(evaluation))).Mended(cancellationToken).Evaluation.State);
        return new(count.Dwelling, count.Rows(), count.NotCounted());
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

        return new(dwelling, rows, NotCounted);
    }

    /// <summary>The list as Markdown: a heading and a table for boxes, devices, plates, what holds boxes and nail plates; then what isn't counted.</summary>
    public string ToMarkdown()
    {
        StringBuilder text = new();
        TextTable.AppendTitle(text, "Order list: " + dwelling.Name, Explained);
        Table().AppendMarkdown(text);
        TextTable.AppendLines(text, NotCountedHeading, NotCounted);
        return text.ToString();
    }

    /// <summary>The list as comma-separated values after RFC 4180, with a header line.</summary>
    public string ToCsv() => Table().ToCsv();

    /// <summary>How many items there are.</summary>
    public override string ToString() => Rows.Count + " items to order for " + dwelling.Name;

    internal const string Explained = "Counted from what is described and what the report adds; spares, cable and what fastens it, connectors and breakers aren't in it.";

    internal const string NotCountedHeading = "Not counted";

    /// <summary>The rows as every form of the paper shows them.</summary>
    internal TextTable Table()
    {
        TextTable table = new("part", "what", "count", "where");
        foreach (OrderRow row in Rows)
        {
            table.Add(row.Part switch { OrderedPart.Box => "boxes", OrderedPart.Device => "devices", OrderedPart.Plate => "plates", OrderedPart.NailPlate => "nail plates", _ => "holding" },
                row.What, row.Count.ToString(CultureInfo.InvariantCulture), row.Rooms.ToString());
        }

        return table;
    }
}
