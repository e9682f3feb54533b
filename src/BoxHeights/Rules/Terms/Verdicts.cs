namespace BoxHeights.Rules;

/// <summary>Joins verdicts.</summary>
internal static class Verdicts
{
    /// <summary>What two conditions come to that must both be met.</summary>
    public static Verdict And(this Verdict one, Verdict other) => one > other ? one : other;
}
