namespace BoxHeights.Rules;

/// <summary>What a drawing says of a receptacle's rating: "125 V 20 A", "15A 125V".</summary>
internal readonly struct ReceptacleRating
{
    /// <summary>The lowest nominal voltage by which drawings call a 125 V receptacle's circuit: 110 V. From memory.</summary>
    public const int LeastUsualVolts = 110;

    /// <summary>The highest: 127 V. From memory.</summary>
    public const int MostUsualVolts = 127;

    /// <summary>The first voltage it names; null where it names none.</summary>
    public int? Volts { get; private init; }

    /// <summary>The first current it names; null where it names none.</summary>
    public int? Amperes { get; private init; }

    /// <summary>Reads numbers before a V or an A; whatever else is written is passed over.</summary>
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

    /// <summary>Whether it names a voltage outside a range.</summary>
    public bool IsOutside(int lowestVolts, int highestVolts) => Volts is { } volts && (volts < lowestVolts || volts > highestVolts);
}
