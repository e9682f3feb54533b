namespace BoxHeights.Rules;

/// <summary>What the rating on a drawing says: "125 V 20 A", "15A 125V". Of "125/250 V" the voltage between its two hot conductors is read.</summary>
internal readonly struct ReceptacleRating
{
    private int? Volts { get; init; }

    private int? Amperes { get; init; }

    /// <summary>Reads what stands before the first V and the first A.</summary>
    public static ReceptacleRating Read(string text)
    {
        int? volts = null;
        int? amperes = null;
        for (int at = 0; at < text.Length; at++)
        {
            int start = at;
            int number = 0;
            while (at < text.Length && text[at] is >= '0' and <= '9' && at - start < 6)
            {
                number = (number * 10) + (text[at++] - '0');
            }

            if (at == start)
            {
                continue;
            }

            while (at < text.Length && text[at] == ' ')
            {
                at++;
            }

            char unit = at < text.Length ? text[at] : ' ';
            volts = unit is 'V' or 'v' ? volts ?? number : volts;
            amperes = unit is 'A' or 'a' ? amperes ?? number : amperes;
            at--;
        }

        return new() { Volts = volts, Amperes = amperes };
    }

    /// <summary>Whether a voltage or a current can be read.</summary>
    public bool IsReadable => Volts is not null || Amperes is not null;

    /// <summary>Whether its current can be read and is more than so many amperes.</summary>
    public bool IsAbove(int amperes) => Amperes is { } current && current > amperes;

    /// <summary>Whether it is within what a document counts: unknown where neither figure can be read.</summary>
    public Verdict Within(int? lowestVolts, int? highestVolts, Items<int> amperes) =>
        Volts is { } volts && (volts < lowestVolts || volts > highestVolts) ? Verdict.Fails
        : Amperes is { } current && amperes.Count > 0 && !amperes.Contains(current) ? Verdict.Fails
        : !IsReadable ? Verdict.Unknown
        : Verdict.Passes;
}
