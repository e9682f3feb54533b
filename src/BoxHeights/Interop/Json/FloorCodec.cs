namespace BoxHeights.Interop;

/// <summary>A floor: the list of its layers, from the subfloor up. The empty list is a bare subfloor.</summary>
internal sealed class FloorCodec : Codec<FloorBuildup>
{
    private static readonly ListCodec<FloorLayer> Layers = new(new ShapeBuilder<FloorLayer>("floorLayer", "One layer of a floor.")
        .Required("material", x => x.Material, Texts.Plain, "What it is; not empty.", out MemberKey<string> material)
        .Required("thickness", x => x.Thickness, Ranges.Distance, "How thick it is, laid; zero or more.", out MemberKey<DistanceRange> thickness)
        .Build(v => new(v.Get(material), v.Get(thickness))));

    internal static FloorCodec Instance { get; } = new();

    internal override FloorBuildup Read(ref JsonIn input) => new(Layers.Read(ref input));

    internal override void Write(JsonOut output, FloorBuildup value) => Layers.Write(output, value.Layers);

    internal override void WriteSchema(SchemaOut schema) => Layers.WriteSchema(schema);
}
