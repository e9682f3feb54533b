namespace BoxHeights;

/// <summary>What interrupts a counter. An open list: <c>new InterruptionKind("…")</c> makes one of your own.</summary>
[Kind("sink")]
[Kind("basin")]
[Kind("range")]
[Kind("cooktop")]
[Kind("refrigerator")]
public readonly partial record struct InterruptionKind;
