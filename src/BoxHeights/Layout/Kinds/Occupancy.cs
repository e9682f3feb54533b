namespace BoxHeights;

/// <summary>What kind of building a dwelling is in. An open list: <c>new Occupancy("…")</c> makes one of your own.</summary>
[Kind("one-family")]
[Kind("two-family")]
[Kind("covered-multifamily")]
[Kind("aging-in-place")]
public readonly partial record struct Occupancy;
