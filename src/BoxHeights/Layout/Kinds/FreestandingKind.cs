namespace BoxHeights;

/// <summary>What stands free in a room. An open list: <c>new FreestandingKind("…")</c> makes one of your own.</summary>
[Kind("island")]
[Kind("peninsula")]
[Kind("railing")]
[Kind("half-wall")]
[Kind("bar", "A counter that parts a room from the next.")]
public readonly partial record struct FreestandingKind;
