using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Rules;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Fill of boxes at random against the sum in fractions, and what follows from it against counting up.</summary>
public sealed class BoxFillPropertyTests
{
    private static readonly int[] Gauges = [18, 16, 14, 12, 10, 8, 6];

    private static readonly Gen<string> Cables =
        from awg in Gen.Elements(Gauges)
        from insulated in Gen.Choose(2, 4)
        from second in Gen.Elements("", "", "-2")
        from ground in Gen.Elements(true, false)
        select awg + "-" + insulated + second + (ground ? "" : " without ground");

    private static readonly Gen<string> Loose =
        from count in Gen.Choose(1, 4)
        from awg in Gen.Elements(Gauges)
        from use in Gen.Elements("", " loop", " ground", " isolated ground")
        select count + " x " + awg + " AWG" + use;

    private static readonly Gen<FillSketch> All =
        from cables in Some(Cables, 6)
        from loose in Some(Loose, 3)
        from devices in Some(Gen.Elements("switch", "duplex-receptacle", "dryer-receptacle", "thermostat", "blank", "luminaire"), 4)
        from connected in Gen.Choose(0, 4)
        from gangs in Gen.Choose(2, 6)
        from told in Gen.Choose(0, 4)
        from widths in Gen.ArrayOf(Gen.Choose(1, 3), 4)
        from sizes in Gen.ArrayOf(Gen.Elements(Gauges), 4)
        from fittings in Some(Gen.Elements("luminaire-stud", "hickey", "terminal-block", "metal-barrier", "plastic-barrier"), 4)
        from clamps in Gen.Elements(true, false)
        from kind in Gen.Elements("nail-on", "metal-device", "four-square", "octagon")
        select new FillSketch
        {
            Kind = kind,
            Gangs = kind == "octagon" ? 1 : gangs,
            Widths = widths.Take(told).ToArray(),
            Cables = cables,
            Conductors = loose,
            Devices = devices.Length == 0 ? ["blank"] : devices,
            Connected = sizes.Take(connected).Select(awg => awg + " AWG").ToArray(),
            Fittings = fittings,
            Clamps = clamps,
        };

    private static readonly Arbitrary<FillSketch> Sketches = Arb.From(All.Where(one => one.Cables.Length > 0 || one.Conductors.Any(text => !text.EndsWith("ground", StringComparison.Ordinal))));

    private static readonly (NecEdition Edition, int Year)[] Editions = [(NecEdition.Nec2017, 2017), (NecEdition.Nec2020, 2020), (NecEdition.Nec2023, 2023)];

    [Fact]
    public void Most_OfAnyBox_IsTheSumInFractions() => Prop.ForAll(Sketches, sketch => Editions.All(one =>
        BoxFill.Most(sketch.ToBox(), RuleSets.FillCounting(one.Edition)).Total == BoxFillCaseTests.InPicoliters(sketch.Sum(one.Year)))).Check(Tries.Always(100));

    [Fact]
    public void Least_OfAnyBox_IsNoMoreAndEqualWhereAllIsStated() => Prop.ForAll(Sketches, sketch => Editions.All(one =>
    {
        Volume least = BoxFill.Least(sketch.ToBox(), RuleSets.FillCounting(one.Edition)).Total;
        Volume most = BoxFill.Most(sketch.ToBox(), RuleSets.FillCounting(one.Edition)).Total;
        int needed = sketch.Devices.Select((device, i) => i < sketch.Widths.Length ? sketch.Widths[i] : device == "dryer-receptacle" ? 2 : 1).Sum();
        bool stated = sketch.Connected.Length >= sketch.Devices.Length && needed >= sketch.Gangs && !sketch.Fittings.Contains("terminal-block");
        return least <= most && (!stated || least == most);
    })).Check(Tries.Always(100));

    [Fact]
    public void Most_ContentsInAnotherOrder_IsTheSame() => Prop.ForAll(Sketches, sketch =>
    {
        FillSketch turned = sketch with { Cables = sketch.Cables.AsEnumerable().Reverse().ToArray(), Conductors = sketch.Conductors.AsEnumerable().Reverse().ToArray(), Fittings = sketch.Fittings.AsEnumerable().Reverse().ToArray() };
        FillCounting counting = RuleSets.FillCounting(NecEdition.Nec2023);
        return BoxFill.Most(turned.ToBox(), counting).Total == BoxFill.Most(sketch.ToBox(), counting).Total;
    }).Check(Tries.Always(100));

    [Fact]
    public void SmallestFor_AnyBox_IsTheFirstSoldThatHoldsTheSum() => Prop.ForAll(Sketches, sketch =>
    {
        Volume sum = BoxFillCaseTests.InPicoliters(sketch.Sum(2023));
        IEnumerable<Volume?> sold = PartsCatalog.Generic.StandardVolumes(new BoxKind(sketch.Kind), sketch.Gangs).Select(one => (Volume?)one);
        FillCounting counting = RuleSets.FillCounting(NecEdition.Nec2023);
        Volume ring = Volume.FromCubicInches(4m);
        return BoxFill.SmallestFor(sketch.ToBox(), counting, PartsCatalog.Generic) == sold.FirstOrDefault(one => one >= sum)
            && BoxFill.SmallestFor(sketch.ToBox().WithExtension(ring), counting, PartsCatalog.Generic) == sold.FirstOrDefault(one => one + ring >= sum);
    }).Check(Tries.Always(100));

    [Fact]
    public void RoomFor_AnyBox_IsHowManyMoreStillFit() => Prop.ForAll(Sketches, Arb.From(Cables), Arb.From(Gen.Choose(40, 1200)), (sketch, cable, tenths) =>
    {
        FillSketch free = sketch with { Connected = sketch.Devices.Select(_ => "14 AWG").ToArray(), Gangs = 1 };
        Volume room = Volume.FromCubicInches(tenths / 10m);
        int fits = 0;
        while (BoxFillCaseTests.InPicoliters((free with { Cables = [.. free.Cables, .. Enumerable.Repeat(cable, fits + 1)] }).Sum(2023)) <= room)
        {
            fits++;
        }

        return BoxFill.RoomFor(CableType.Parse(cable), free.ToBox().WithVolume(room), RuleSets.FillCounting(NecEdition.Nec2023), PartsCatalog.Generic) == fits;
    }).Check(Tries.Always(100));

    private static Gen<T[]> Some<T>(Gen<T> one, int most) => from count in Gen.Choose(0, most) from some in Gen.ArrayOf(one, count) select some;
}
