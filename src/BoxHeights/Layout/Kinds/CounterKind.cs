namespace BoxHeights;

/// <summary>What a counter is. An open list: <c>new CounterKind("…")</c> makes one of your own.</summary>
[Kind("kitchen")]
[Kind("bath")]
[Kind("bar")]
[Kind("desk")]
[Kind("laundry")]
public readonly partial record struct CounterKind;
