using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>One thing to look at, at one box, before the inspector does.</summary>
public sealed record InspectionRow
{
    internal InspectionRow(string address, DeviceBox box, InspectionItem item, LengthUnits units)
    {
        Address = address;
        BoxId = box.Id;
        Purpose = box.Purpose;
        ItemId = item.Id;
        Limit = item.Limit;
        Text = BothUnits.Of(item.Summary, units);
        Citation = item.Citation;
    }

    /// <summary>The surface: "room/wall", "room/ceiling" or "room/floor".</summary>
    public string Address { get; }

    /// <summary>The box.</summary>
    public string BoxId { get; }

    /// <summary>What it is for.</summary>
    public BoxPurpose Purpose { get; }

    /// <summary>The name of what is to be looked at, the same for all boxes: "sheath-inside".</summary>
    public string ItemId { get; }

    /// <summary>The distance asked for; null where none is.</summary>
    public Distance? Limit { get; }

    /// <summary>What should be found, with its numbers in the units of the document, and in the dwelling's own where those are others.</summary>
    public string Text { get; }

    /// <summary>Where it comes from, and how sure that is.</summary>
    public Citation Citation { get; }

    /// <summary>The box, and what should be found there.</summary>
    public override string ToString() => BoxId + " (" + Address + "): " + Text;
}
