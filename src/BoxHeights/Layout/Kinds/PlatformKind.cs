namespace BoxHeights;

/// <summary>What stands before an outside face. An open list: <c>new PlatformKind("…")</c> makes one of your own.</summary>
[Kind("deck")]
[Kind("porch")]
[Kind("balcony")]
public readonly partial record struct PlatformKind;
