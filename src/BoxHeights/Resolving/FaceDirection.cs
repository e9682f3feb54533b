namespace BoxHeights;

/// <summary>Which way a face runs, as a step of one to the right and into the room.</summary>
internal static class FaceDirection
{
    private const decimal Pi = 3.1415926535897932384626433833m;

    /// <summary>The step of a face that is turned so far from the first: exact for multiples of 90 degrees, else good to some 27 digits.</summary>
    public static (decimal Right, decimal Into) Of(decimal degrees)
    {
        degrees = ((degrees % 360m) + 360m) % 360m;
        decimal quarters = decimal.Floor(degrees / 90m);
        (decimal right, decimal into) = Within((degrees - (quarters * 90m)) * Pi / 180m);
        return (int)quarters switch { 0 => (right, into), 1 => (-into, right), 2 => (-right, -into), _ => (into, -right) };
    }

    /// <summary>Cosine and sine of an angle of a quarter turn or less, by their series.</summary>
    private static (decimal Cosine, decimal Sine) Within(decimal angle)
    {
        decimal cosine = 0m;
        decimal sine = 0m;
        decimal term = 1m;
        for (int n = 1; term != 0m; n++)
        {
            bool odd = n % 2 == 0;
            decimal signed = (n - 1) / 2 % 2 == 0 ? term : -term;
            (cosine, sine) = odd ? (cosine, sine + signed) : (cosine + signed, sine);
            term = term * angle / n;
        }

        return (cosine, sine);
    }
}
