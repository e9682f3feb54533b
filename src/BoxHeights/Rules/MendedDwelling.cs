using System;
using System.Collections.Generic;
using System.Text;
using System.Threading;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>A dwelling with remedies carried out together, what they changed, and what nothing mends. Papers for the crew are cut from it.</summary>
/// <remarks>
/// A foreman's order: what stands wrong is set right before anything is added beside it, and each remedy is judged in the dwelling as the ones before it leave it.
/// Every box is changed once, from how it was described to how it ends, so that the changes may be carried out in any order. It is an aid for planning, never an approval.
/// </remarks>
public sealed partial class MendedDwelling
{
    private readonly Dictionary<string, MendedBox> byId = new(StringComparer.Ordinal);

    internal MendedDwelling(Evaluation before, Evaluation after, Items<MendedBox> boxes)
    {
        for (int i = boxes.Count - 1; i >= 0; i--)
        {
            byId[boxes[i].After.Box.Id] = boxes[i];
        }

        Before = before;
        Evaluation = after;
        Boxes = boxes;
    }

    /// <summary>The evaluation that was mended: <see cref="MendedBox.Because"/> counts its causes.</summary>
    public Evaluation Before { get; }

    /// <summary>The dwelling with everything carried out.</summary>
    public Dwelling Dwelling => Evaluation.Dwelling;

    /// <summary>What is still found in it: nothing, or what has no remedy.</summary>
    public Evaluation Evaluation { get; }

    /// <summary>The boxes that are changed or added, in the order of the mended dwelling.</summary>
    public Items<MendedBox> Boxes { get; }

    /// <summary>What isn't mended; <see cref="NoneFound.Conflicting"/> of its remedies names the rules that leave no way.</summary>
    public Items<Cause> Left => Evaluation.Causes;

    /// <summary>What became of a box; null where it stays as it is described.</summary>
    /// <param name="id">The box's id.</param>
    public MendedBox? Find(string id) => id is not null && byId.TryGetValue(id, out MendedBox? box) ? box : null;

    /// <summary>Each change in a line, then what isn't mended.</summary>
    public string ToText() => ToText(CancellationToken.None);

    /// <summary>The same, unless somebody gives up: what is left is looked at once more.</summary>
    /// <param name="cancellationToken">Ends it early.</param>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public string ToText(CancellationToken cancellationToken)
    {
        cancellationToken.ThrowIfCancellationRequested();
        StringBuilder text = new();
        text.Append(Dwelling.Name).Append(": ").Append(Boxes.Count).Append(Boxes.Count == 1 ? " box" : " boxes").Append(" to set otherwise, ")
            .Append(Left.Count).Append(" left that nothing here mends.\n");
        foreach (MendedBox box in Boxes)
        {
            text.Append("- ").Append(box).Append('\n');
        }

        foreach (Cause cause in Left)
        {
            text.Append("! ").Append(cause.Title).Append('\n');
            foreach (Remedy remedy in cause.FindRemedies(cancellationToken))
            {
                text.Append("  ").Append(remedy.Text).Append('\n');
            }
        }

        return text.ToString();
    }

    /// <summary>How many boxes are changed, and how much is left.</summary>
    public override string ToString() => Boxes.Count + " changed, " + Left.Count + " left";
}

/// <summary>A box as it was described and as it ends, and why.</summary>
public sealed class MendedBox : BoxChange
{
    private readonly MendedText text;
    private string? line;
    private string? how;

    internal MendedBox(DeviceBox? before, PlacedBox after, Items<int> because, MendedText text)
        : base(before, after)
    {
        Because = because;
        this.text = text;
    }

    /// <summary>Why: the places in <see cref="Evaluation.Causes"/> of the evaluation before, counted from 1.</summary>
    public Items<int> Because { get; }

    /// <summary>How it was, for a paper that says how it is: "was 42 in to center above subfloor, see 13".</summary>
    internal string Was => how ??= text.Was();

    /// <summary>What to do, in one line.</summary>
    public override string ToString() => line ??= text.Line();
}
