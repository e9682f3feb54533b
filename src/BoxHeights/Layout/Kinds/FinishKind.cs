namespace BoxHeights;

/// <summary>What a finish on a wall is. An open list: <c>new FinishKind("…")</c> makes one of your own.</summary>
[Kind("tile")]
[Kind("wainscot")]
[Kind("panel")]
[Kind("stone")]
[Kind("chair-rail")]
public readonly partial record struct FinishKind;
