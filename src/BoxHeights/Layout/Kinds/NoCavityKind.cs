namespace BoxHeights;

/// <summary>What fills a wall so that no box fits. An open list: <c>new NoCavityKind("…")</c> makes one of your own.</summary>
[Kind("header")]
[Kind("post")]
[Kind("pocket")]
[Kind("duct")]
[Kind("vent")]
[Kind("blocking")]
[Kind("fireblock")]
[Kind("stringer")]
public readonly partial record struct NoCavityKind;
