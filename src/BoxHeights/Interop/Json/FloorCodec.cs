namespace BoxHeights.Interop;

/// <summary>A floor: the list of its layers, from the subfloor up. The empty list is a bare subfloor.</summary>
internal sealed class FloorCodec() : Codec<FloorBuildup>(null)
{
    private static readonly ListCodec<FloorLayer> Layers = new(new ShapeBuilder<FloorLayer>("floorLayer", "One layer of a floor.")
        .Required("material", x => x.Material, Texts.Plain, "What it is; not empty.", out MemberKey<string> material)
        .Required("thickness", x => x.Thickness, Ranges.Distance, "How thick it is, laid; zero or more.", out MemberKey<DistanceRange> thickness)
        .Build(v => new(v.Get(material), v.Get(thickness))));

    internal static FloorCodec Instance { get; } = new();

    internal override object? Read(ref JsonIn input) => Layers.Read(ref input) is Items<FloorLayer> layers ? new FloorBuildup(layers) : null;

    internal override void Write(JsonOut output, object value) => Layers.Write(output, ((FloorBuildup)value).Layers);

    internal override void WriteDefinition(SchemaOut schema) => Layers.WriteSchema(schema);
}
