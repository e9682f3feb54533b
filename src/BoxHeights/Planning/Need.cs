namespace BoxHeights;

/// <summary>What a box may leave unmet that is required and has no better place.</summary>
internal enum Need
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>How it looks beside others.</summary>
    OfLooks,

    /// <summary>Whatever gives way to a violation.</summary>
    OfAdvice,
}
