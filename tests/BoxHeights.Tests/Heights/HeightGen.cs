using System;
using System.Collections.Generic;
using FsCheck;
using FsCheck.Fluent;

namespace BoxHeights.Tests.Heights;

/// <summary>What the properties here draw from.</summary>
internal static class HeightGen
{
    public static readonly Datum[] Datums = Enum.GetValues<Datum>();

    public static readonly Edge[] Edges = [Edge.Bottom, Edge.Center, Edge.Top];

    /// <summary>Tape readings and any other number of ticks, both ways from zero.</summary>
    public static Gen<Distance> Distances { get; } = Gen.OneOf(
        Gen.Choose(-64 * 200, 64 * 200).Select(n => Distance.FromTicks(n * 31_750L)),
        Gen.Choose(-400_000, 400_000).Select(n => Distance.FromTicks(n * 1_003L)));

    public static Gen<DistanceRange> Ranges { get; } =
        from end in Distances
        from width in Gen.OneOf(Gen.Constant(0), Gen.Choose(0, 2_000_000))
        select new DistanceRange(end, end + Distance.FromTicks(width));

    public static Gen<BoxHeight> Heights { get; } =
        from value in Distances
        from datum in Gen.Elements(Datums)
        from edge in Gen.Elements<Edge?>(null, Edge.Bottom, Edge.Center, Edge.Top)
        select edge is null ? BoxHeight.EdgeUnstated(value, datum) : BoxHeight.To(edge.Value, value, datum);

    public static Gen<BoxHeight> HeightsWithEdge { get; } = Heights.Where(height => height.Edge is not null);

    public static Gen<BoxSize> Boxes { get; } =
        from width in Gen.Choose(1, 64 * 8)
        from height in Gen.Choose(1, 64 * 8)
        select new BoxSize(Distance.FromInches(0, width, 64), Distance.FromInches(0, height, 64));

    /// <summary>One placement of a datum: on one that comes before it in the enum, so that no circle arises.</summary>
    public static Gen<IReadOnlyList<(Datum Datum, DistanceRange Offset, Datum Above)>> Placements(Gen<DistanceRange> offsets)
    {
        Gen<(Datum, DistanceRange, Datum)> one =
            from child in Gen.Choose(1, Datums.Length - 1)
            from parent in Gen.Choose(0, child - 1)
            from offset in offsets
            select ((Datum)child, offset, (Datum)parent);
        return one.ListOf().Select(list => (IReadOnlyList<(Datum, DistanceRange, Datum)>)new List<(Datum, DistanceRange, Datum)>(list));
    }

    /// <summary>Every datum placed exactly.</summary>
    public static Gen<Levels> ExactLevels { get; } =
        Gen.ArrayOf(Distances, Datums.Length).Select(offsets =>
        {
            Levels levels = Levels.Default.WithSubfloorAt(new Elevation(offsets[0]));
            for (int i = 1; i < Datums.Length; i++)
            {
                levels = levels.With(Datums[i], offsets[i], Datums[i / 2]);
            }

            return levels;
        });
}
