namespace BoxHeights;

/// <content>Numbers without sign, as people write them: whole, with decimals, as a fraction, and as a whole with a fraction.</content>
internal ref partial struct TextCursor
{
    private const int MostWholeDigits = 18;
    private const int MostDecimals = 18;
    private const int MostFractionDigits = 9;

    /// <summary>Whether the next character can begin a number without sign.</summary>
    internal readonly bool StartsNumber => IsDigit(Current) || Current == '.' || IsVulgar(Current, out _, out _);

    /// <summary>Reads a number without sign: 48, 47.75, .5, 3/4, 47-3/4, 47 3/4, 47¾.</summary>
    internal bool TryReadNumber(out TextNumber number)
    {
        number = default;
        int start = Index;
        ulong whole = 0;
        if (IsDigit(Current))
        {
            if (!TryReadDigits(MostWholeDigits, out whole))
            {
                return false;
            }
        }
        else if (!StartsNumber)
        {
            return Fail(AtEnd && Index == 0 ? TextFault.Empty : TextFault.NumberExpected, Index);
        }

        bool read = Current switch
        {
            '.' => TryReadDecimals(whole, out number),
            '/' or '\u2044' => TryReadFraction(0, whole, start, out number),
            _ => TryReadMixed(whole, start, out number),
        };
        return read && (Current != ',' || Fail(TextFault.Comma, Index));
    }

    /// <summary>Reads a whole number without sign that a long holds.</summary>
    internal bool TryReadWhole(out ulong value)
    {
        value = 0;
        int start = Index;
        if (!IsDigit(Current))
        {
            return Fail(AtEnd && Index == 0 ? TextFault.Empty : TextFault.NumberExpected, Index);
        }

        return TryReadDigits(MostWholeDigits + 1, out value) && (value <= long.MaxValue || Fail(TextFault.TooLarge, start));
    }

    private static bool IsVulgar(char c, out int numerator, out int denominator)
    {
        (numerator, denominator) = c < '¼' ? (0, 0) : c switch
        {
            '½' => (1, 2),
            '¼' => (1, 4),
            '¾' => (3, 4),
            '⅛' => (1, 8),
            '⅜' => (3, 8),
            '⅝' => (5, 8),
            '⅞' => (7, 8),
            '⅓' => (1, 3),
            '⅔' => (2, 3),
            '⅕' => (1, 5),
            '⅖' => (2, 5),
            '⅗' => (3, 5),
            '⅘' => (4, 5),
            '⅙' => (1, 6),
            '⅚' => (5, 6),
            '⅐' => (1, 7),
            '⅑' => (1, 9),
            '⅒' => (1, 10),
            _ => (0, 0),
        };
        return denominator != 0;
    }

    private bool TryReadDigits(int most, out ulong value)
    {
        value = 0;
        int start = Index, digits = 0;
        for (; IsDigit(Current); Index++)
        {
            digits += value == 0 ? 0 : 1;
            if (digits >= most)
            {
                return Fail(TextFault.TooManyDigits, start);
            }

            value = (value * 10) + (ulong)(Current - '0');
        }

        return Index > start;
    }

    private bool TryReadDecimals(ulong whole, out TextNumber number)
    {
        number = default;
        Index++;
        int start = Index, zeros = 0, digits = 0;
        ulong part = 0, scale = 1;
        for (; IsDigit(Current); Index++)
        {
            if (Current == '0')
            {
                zeros++;
                continue;
            }

            digits += zeros + 1;
            if (digits > MostDecimals)
            {
                return Fail(TextFault.TooManyDigits, start);
            }

            for (; zeros >= 0; zeros--)
            {
                scale *= 10;
                part *= 10;
            }

            zeros = 0;
            part += (ulong)(Current - '0');
        }

        number = new(whole, part, scale, start);
        return Index > start || Fail(TextFault.DigitAfterPointExpected, Index);
    }

    // The number after the whole part, if the text goes on with a fraction; else the whole part alone.
    private bool TryReadMixed(ulong whole, int start, out TextNumber number)
    {
        number = new(whole, 0, 1, start);
        int end = Index;
        if (IsHyphen(Current))
        {
            Index++;
        }
        else
        {
            SkipBlanks();
        }

        int at = Index;
        if (IsVulgar(Current, out int above, out int below))
        {
            Index++;
            number = new(whole, (ulong)above, (ulong)below, at);
            return true;
        }

        if (at > end && IsDigit(Current))
        {
            while (IsDigit(Current))
            {
                Index++;
            }

            if (Current is '/' or '\u2044')
            {
                Index = at;
                return TryReadDigits(MostFractionDigits, out ulong numerator) && TryReadFraction(whole, numerator, at, out number);
            }
        }

        Index = end;
        return true;
    }

    private bool TryReadFraction(ulong whole, ulong numerator, int start, out TextNumber number)
    {
        number = default;
        Index++;
        int below = Index;
        if (!IsDigit(Current))
        {
            return Fail(TextFault.NumberExpected, Index);
        }

        if (!TryReadDigits(MostFractionDigits, out ulong denominator))
        {
            return false;
        }

        if (denominator == 0)
        {
            return Fail(TextFault.ZeroDenominator, below);
        }

        number = new(whole, numerator, denominator, start);
        return whole == 0 || numerator < denominator || Fail(TextFault.ImproperFraction, start);
    }
}
