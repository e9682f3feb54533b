using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A custom that planners and remedies go by: what is put somewhere, and where it may go. Nothing is judged by it.</summary>
public abstract record HabitRule : Rule
{
    /// <summary>Names a row, which weighs as a note.</summary>
    /// <param name="id">A short phrase of the trade in kebab case, stable for ever.</param>
    /// <param name="summary">What is done, in one plain phrase that completes "it must be …".</param>
    /// <param name="citation">Where the numbers come from.</param>
    private protected HabitRule(string id, string summary, Citation citation)
        : base(id, summary, Severity.Note, citation)
    {
    }

    /// <summary>Distances in words, but for those that are zero or not stated.</summary>
    private protected static string Said(params (string What, Distance? Distance)[] all)
    {
        List<string> said = [];
        foreach ((string what, Distance? distance) in all)
        {
            if (distance is { } stated && stated != Distance.Zero)
            {
                said.Add(stated + " " + what);
            }
        }

        return string.Join(", ", said);
    }
}
