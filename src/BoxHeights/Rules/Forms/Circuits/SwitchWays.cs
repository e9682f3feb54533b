namespace BoxHeights.Rules;

/// <summary>The switches by which a light is controlled from one place or from several, and what a country calls them.</summary>
[Described(nameof(Alone), nameof(AtEnds), nameof(Between))]
public sealed partial record SwitchWays
{
    /// <summary>By itself, for what is controlled from one place: single-pole.</summary>
    public Items<DeviceKind> Alone { get; init; }

    /// <summary>One of two, at the first and the last of several places.</summary>
    public Items<DeviceKind> AtEnds { get; init; }

    /// <summary>At each place between those two.</summary>
    public Items<DeviceKind> Between { get; init; }

    /// <summary>What those at the ends are called before "switch"; "changeover" unless stated.</summary>
    public string EndName { get; init => field = Guard.Text(value, nameof(EndName)); } = "changeover";

    /// <summary>What those between are called before "switch"; "intermediate" unless stated.</summary>
    public string BetweenName { get; init => field = Guard.Text(value, nameof(BetweenName)); } = "intermediate";

    /// <summary>The names of all of them.</summary>
    internal Items<string> KindsNamed => KindNames.Joined(Alone.Select(kind => kind.Name), AtEnds.Select(kind => kind.Name), Between.Select(kind => kind.Name));
}
