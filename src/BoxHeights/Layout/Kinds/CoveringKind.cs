namespace BoxHeights;

/// <summary>What hides a part of a wall. An open list: <c>new CoveringKind("…")</c> makes one of your own.</summary>
[Kind("wall-cabinet")]
[Kind("tall-cabinet")]
[Kind("base-cabinet")]
[Kind("mirror")]
[Kind("tub-surround")]
[Kind("panel")]
[Kind("shelf")]
public readonly partial record struct CoveringKind;
