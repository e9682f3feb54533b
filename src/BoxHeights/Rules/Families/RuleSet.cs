using System;
using System.Collections.Generic;
using System.Text;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>A set of rows: documents, editions, amendments and practice, joined with <c>+</c>.</summary>
/// <remarks>Immutable. Rows are kept by id, so the order in which sets are joined never matters.</remarks>
public sealed partial class RuleSet : IEquatable<RuleSet>
{
    private readonly Dictionary<string, Rule> rows;
    private string? fingerprint;
    private volatile object? compiled;

    /// <summary>A set of rows.</summary>
    /// <param name="rows">The rows; equal ones count once.</param>
    /// <exception cref="ArgumentNullException"><paramref name="rows"/> is null.</exception>
    /// <exception cref="ArgumentException">Two rows with different content share an id, or a row can't be meant: its limits contradict each other, or its readings are of another id, weight or family.</exception>
    public RuleSet(IEnumerable<Rule> rows)
        : this(Joined(rows ?? throw new ArgumentNullException(nameof(rows)), []))
    {
    }

    /// <summary>A set of rows, given one by one.</summary>
    /// <param name="rows">The rows; equal ones count once.</param>
    /// <exception cref="ArgumentNullException"><paramref name="rows"/> is null.</exception>
    /// <exception cref="ArgumentException">Two rows with different content share an id, or a row can't be meant: its limits contradict each other, or its readings are of another id, weight or family.</exception>
    public RuleSet(params Rule[] rows)
        : this((IEnumerable<Rule>)rows)
    {
    }

    private RuleSet(Dictionary<string, Rule> rows)
    {
        this.rows = rows;
        List<Rule> byId = new(rows.Values);
        byId.Sort((a, b) => string.CompareOrdinal(a.Id, b.Id));
        Rows = new(byId);
    }

    /// <summary>No rows.</summary>
    public static RuleSet Empty { get; } = new(new Dictionary<string, Rule>(StringComparer.Ordinal));

    /// <summary>The rows, sorted by id: rules with their numbers, severity, scope and source. <see cref="Row"/> gives one of them.</summary>
    public Items<Rule> Rows { get; }

    /// <summary>Sixteen hexadecimal digits that are the same for every set whose rows go by the same, however they put it, and hardly ever for another.</summary>
    public string Fingerprint => fingerprint ??= Stamp.Of(string.Join("\n", Rows.Select(row => row.Data())));

    /// <summary>Joins two sets. Rows that are equal count once.</summary>
    /// <exception cref="ArgumentException">The sets have rows of one id with different content; the message names them.</exception>
    public static RuleSet operator +(RuleSet left, RuleSet right) => (left ?? throw new ArgumentNullException(nameof(left))).Add(right);

    /// <summary>Joins another set to this one. Rows that are equal count once.</summary>
    /// <param name="other">The other set.</param>
    /// <exception cref="ArgumentException">The sets have rows of one id with different content; the message names them.</exception>
    public RuleSet Add(RuleSet other) => new(Joined((other ?? throw new ArgumentNullException(nameof(other))).Rows, Rows));

    /// <summary>This set with a row added or replaced.</summary>
    /// <param name="row">The row.</param>
    /// <exception cref="ArgumentNullException"><paramref name="row"/> is null.</exception>
    /// <exception cref="ArgumentException">The row can't be meant, or its <see cref="Rule.Numbers"/> don't tell it from the one that it replaces.</exception>
    public RuleSet With(Rule row)
    {
        _ = (row ?? throw new ArgumentNullException(nameof(row))).Meant(nameof(row));
        if (rows.TryGetValue(row.Id, out Rule? before) && before.Data() == row.Data() && !before.IsSameInOtherWords(row))
        {
            throw new ArgumentException("The row \"" + row.Id + "\" isn't the one that it replaces, and nothing that it says of itself tells them apart: let its Numbers say all that it goes by.", nameof(row));
        }

        Dictionary<string, Rule> changed = new(rows, StringComparer.Ordinal) { [row.Id] = row };
        return new(changed);
    }

    /// <summary>This set without a row.</summary>
    /// <param name="id">The row's id.</param>
    /// <exception cref="ArgumentException">There is no such row.</exception>
    public RuleSet Without(string id)
    {
        _ = Row(id);
        Dictionary<string, Rule> changed = new(rows, StringComparer.Ordinal);
        changed.Remove(id);
        return new(changed);
    }

    /// <summary>This set with another weight for a row, under whichever reading.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="severity">How much its findings weigh.</param>
    /// <exception cref="ArgumentException">There is no such row.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such weight.</exception>
    public RuleSet WithSeverity(string id, Severity severity)
    {
        Rule row = Row(id);
        _ = Rule.Checked(severity, nameof(severity));
        return With(row with
        {
            Severity = severity,
            Readings = row.Readings.Select(reading => reading with { Rule = reading.Rule with { Severity = severity } }),
        });
    }

    /// <summary>This set with another reading of a row deciding. The reading that decided until now is kept among the others.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="reading">The reading's id.</param>
    /// <exception cref="ArgumentException">There is no such row, or it has no such reading; the message lists those that it has.</exception>
    public RuleSet WithReading(string id, string reading)
    {
        Rule row = Row(id);
        if (row.ReadingId == reading)
        {
            return this;
        }

        List<Reading> others = [new Reading(row.ReadingId, row.Summary, row with { Readings = default })];
        Rule? chosen = null;
        foreach (Reading other in row.Readings)
        {
            if (other.Id == reading)
            {
                chosen = other.Rule;
            }
            else
            {
                others.Add(other);
            }
        }

        return chosen is null
            ? throw new ArgumentException(
                "The row \"" + id + "\" has no reading \"" + reading + "\"; it has: " + row.ReadingId + string.Concat(row.Readings.Select(one => ", " + one.Id)) + ".",
                nameof(reading))
            : With(chosen with { Id = id, ReadingId = reading, Readings = new(others) });
    }

    /// <summary>The row of an id.</summary>
    /// <param name="id">The row's id.</param>
    /// <exception cref="ArgumentException">There is no such row; the message lists those that there are.</exception>
    public Rule Row(string id) => rows.TryGetValue(id ?? throw new ArgumentNullException(nameof(id)), out Rule? row)
        ? row
        : throw new ArgumentException("There is no row \"" + id + "\"" + (Rows.Count > 0 && Spelling.Meant(id, [.. rows.Keys]) is { } meant ? ": is \"" + meant + "\" meant? There are: " : "; there are: ") + string.Join(", ", Rows.Select(row => row.Id)) + ".", nameof(id));

    /// <summary>What the engine makes of the set: once, for all evaluators and planners that are made for it.</summary>
    /// <param name="compile">Makes it, the same whoever asks.</param>
    internal T Compiled<T>(Func<RuleSet, T> compile)
        where T : class => (T)(compiled ??= compile(this));

    /// <summary>Every row in words: id, severity, what is allowed, numbers, scope, citation, readings.</summary>
    public string Describe()
    {
        StringBuilder text = new();
        foreach (Rule row in Rows)
        {
            text.Append(row.Id).Append(" [").Append(row.Severity).Append(", revision ").Append(row.Revision).Append("] ").Append(row.Summary).Append('\n')
                .Append("  ").Append(row.Numbers).Append('\n')
                .Append("  for ").Append(row.Scope).Append('\n')
                .Append("  source: ").Append(row.Citation).Append('\n');
            if (row.ReadingId != Rule.DefaultReading)
            {
                text.Append("  read as: ").Append(row.ReadingId).Append('\n');
            }

            if (row.NoteUnder is { } under)
            {
                text.Append("  a miss under ").Append(under).Append(" is a note\n");
            }

            if (row.LeavesOut is { } part)
            {
                text.Append("  not applied: ").Append(part).Append('\n');
            }

            if (row is PlacementRule { Relief: not Relief.None and var relief })
            {
                text.Append("  lets off: ").Append(relief == Relief.OneOverCounter ? "one over a length of counter where all others meet it" : "one where another in the room for its purpose meets it").Append('\n');
            }

            if (row is PlacementRule { OrLevelWithOld: { } off })
            {
                text.Append("  lets off: one within ").Append(off).Append(" of the level of one for its purpose that was there before in the room\n");
            }

            if (row.YieldsWhenForced)
            {
                text.Append("  silent where other rules leave no place for it\n");
            }

            foreach (Reading reading in row.Readings)
            {
                text.Append("  also read (").Append(reading.Id).Append("): ").Append(reading.Summary).Append(": ").Append(reading.Rule.Numbers).Append("; for ").Append(reading.Rule.Scope).Append("; source: ").Append(reading.Rule.Citation).Append('\n');
            }
        }

        return text.ToString();
    }

    /// <inheritdoc/>
    public bool Equals(RuleSet? other) => other is not null && Rows == other.Rows;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as RuleSet);

    /// <inheritdoc/>
    public override int GetHashCode() => Rows.GetHashCode();

    /// <summary>How many rows there are, and between which ids: "181 rows, attic-height to zone". Of a single row its id.</summary>
    public override string ToString() => Rows.Count switch
    {
        0 => "no rows",
        1 => Rows[0].Id,
        _ => Rows.Count + " rows, " + Rows[0].Id + " to " + Rows[Rows.Count - 1].Id,
    };

    private static Dictionary<string, Rule> Joined(IEnumerable<Rule> more, IEnumerable<Rule> first)
    {
        Dictionary<string, Rule> joined = new(StringComparer.Ordinal);
        foreach (Rule row in first)
        {
            joined.Add(row.Id, row);
        }

        foreach (Rule row in more)
        {
            if (row is null)
            {
                throw new ArgumentException("A rule set holds no nulls.", nameof(more));
            }

            if (joined.TryGetValue(row.Id, out Rule? same) && !same.Equals(row))
            {
                throw new ArgumentException("Two rows with different content share the id \"" + row.Id + "\"; use With to replace one.", nameof(more));
            }

            joined[row.Id] = same ?? row.Meant(nameof(more));
        }

        return joined;
    }
}
