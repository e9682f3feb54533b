namespace BoxHeights;

/// <summary>A finding, its number in the report, and where on a wall or in a room it is.</summary>
[Told]
public sealed partial class FindingPlace
{
    /// <summary>The finding.</summary>
    public Finding Finding { get; }

    /// <summary>The number of its cause in <see cref="Evaluation.ToText()"/>: its place in <see cref="Evaluation.Causes"/>, from 1.</summary>
    public int Number { get; }

    /// <summary>The rectangles of the wall that it is about; none where it is about all of it, or where that isn't known.</summary>
    public Items<WallArea> Areas { get; internal init; }

    /// <summary>The box that it is about; null where it is about something else.</summary>
    public BoxView? Box { get; internal init; }

    /// <summary>The part that it is about; null where it is about something else.</summary>
    public WallPart? Part { get; internal init; }

    /// <summary>The number and the finding in one line.</summary>
    public override string ToString() => Number + ". " + Finding;
}
