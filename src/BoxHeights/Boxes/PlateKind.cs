namespace BoxHeights;

/// <summary>Which of the sizes of cover plate.</summary>
/// <remarks>An open list: <c>new PlateKind("screwless")</c> makes one of your own. <c>default</c> has the empty name and means "not stated".</remarks>
[Kind("standard", "The common size, 2-3/4 × 4-1/2 in for one gang.")]
[Kind("midway", "The middle size, about 3/8 in larger each way.")]
[Kind("jumbo", "The large size, about 3/4 in larger each way.")]
public readonly partial record struct PlateKind;
