using System.Collections.Generic;

namespace BoxHeights;

/// <summary>The rows of <see cref="PartsCatalog.Generic"/>.</summary>
internal static class GenericParts
{
    private const int MostPlateGangs = 10;
    private const int MostMetalGangs = 4;

    private static readonly Citation MetalTable = new("NEC (2017 to 2023)", "Table 314.16(A)");
    private static readonly Citation MetalTableFromMemory = MetalTable with { Confidence = Confidence.FromMemory };
    private static readonly Citation FromMemory = new("common practice, no source", "", Confidence.FromMemory);
    private static readonly Citation PlateStandard = new("ANSI/NEMA WD 6, as quoted in published plate tables");

    /// <summary>Published models of wall plates give 46.0375 mm, which is 1-13/16 in exactly.</summary>
    internal static Distance GangPitch => Distance.FromInches(1, 13, 16);

    internal static IEnumerable<BoxPart> Boxes()
    {
        // One gang: published sizes run from 3-1/2 to 4 in tall; 3-3/4 is the middle. No maker's figure: measure the box where it matters.
        DistanceRange oneGang = Range(Distance.FromInches(2, 1, 8), Distance.FromInches(2, 3, 8));
        yield return NailOn(1, Distance.FromInches(2, 1, 4), oneGang, Citation.CommonPractice);
        yield return NailOn(2, Inches(4), Range(Distance.FromInches(3, 7, 8), Distance.FromInches(4, 1, 8)), FromMemory);
        yield return NailOn(3, Distance.FromInches(5, 3, 4), Range(Distance.FromInches(5, 5, 8), Distance.FromInches(5, 7, 8)), FromMemory);
        yield return NailOn(4, Distance.FromInches(7, 1, 2), Range(Distance.FromInches(7, 3, 8), Distance.FromInches(7, 3, 4)), FromMemory);

        // Cut-in bodies are published as 3.65 to 3.875 in tall, for a hole of about 2-3/8 × 3-3/4.
        yield return new(BoxKind.CutIn, 1, new BoxSize(Distance.FromInches(2, 1, 4), GenericHeight).Ranging(oneGang, Range(Inches(3.65m), Inches(3.875m))), null, Citation.CommonPractice);
        yield return CutIn(2, Inches(4), Range(Distance.FromInches(3, 7, 8), Distance.FromInches(4, 1, 8)));
        yield return CutIn(3, Distance.FromInches(5, 3, 4), Range(Distance.FromInches(5, 5, 8), Distance.FromInches(5, 7, 8)));

        BoxSize bracket = new BoxSize(Distance.FromInches(2, 1, 4), GenericHeight)
            .Ranging(Range(Distance.FromInches(2, 1, 8), Distance.FromInches(2, 1, 4)), Range(Distance.FromInches(3, 5, 8), GenericHeight));
        yield return new(BoxKind.LowVoltageBracket, 1, bracket, null, FromMemory);

        // A square box takes a ring for one device or for two: the box itself stays the same.
        BoxSize square = new(Inches(4), Inches(4));
        BoxSize largeSquare = new(Distance.FromInches(4, 11, 16), Distance.FromInches(4, 11, 16));
        for (int gangs = 1; gangs <= 2; gangs++)
        {
            yield return new(BoxKind.FourSquare, gangs, square, null, MetalTable);
            yield return new(BoxKind.FourElevenSquare, gangs, largeSquare, null, MetalTable);
        }

        yield return new(BoxKind.Octagon, 1, square, null, MetalTable);
        yield return new(BoxKind.FanRated, 1, square, null, FromMemory);
        DistanceRange pancake = Range(Inches(3), Inches(4));
        yield return new(BoxKind.Pancake, 1, new BoxSize(Inches(4), Inches(4), Distance.FromInches(0, 1, 2)).Ranging(pancake, pancake), null, FromMemory);
        yield return new(BoxKind.Handy, 1, new(Distance.FromInches(2, 1, 8), Inches(4)), null, MetalTableFromMemory);

        for (int gangs = 1; gangs <= MostMetalGangs; gangs++)
        {
            Citation source = gangs == 1 ? MetalTable : MetalTable with { Confidence = Confidence.Derived };
            yield return new(BoxKind.MetalDevice, gangs, new(Ganged(Inches(2), gangs), Inches(3)), null, source);
            yield return new(BoxKind.Masonry, gangs, new(Ganged(Inches(2), gangs), GenericHeight), null, MetalTableFromMemory);

            // The table names FS and FD boxes by their least depth alone. Their open face is a rim round a standard plate: no maker's figure.
            Distance castWidth = Ganged(Distance.FromInches(2, 13, 16), gangs);
            DistanceRange castWidths = Range(castWidth - Distance.FromInches(0, 1, 16), castWidth + Distance.FromInches(0, 1, 16));
            BoxSize cast = new BoxSize(castWidth, Distance.FromInches(4, 9, 16)).Ranging(castWidths, Range(Distance.FromInches(4, 1, 2), Distance.FromInches(4, 5, 8)));
            yield return new(BoxKind.Cast, gangs, cast, null, FromMemory);
        }
    }

    internal static IEnumerable<PlatePart> Plates()
    {
        for (int gangs = 1; gangs <= MostPlateGangs; gangs++)
        {
            yield return Plate(PlateKind.Standard, gangs, Distance.FromInches(2, 3, 4), Distance.FromInches(4, 1, 2), PlateStandard);
            yield return Plate(PlateKind.Midway, gangs, Distance.FromInches(3, 1, 8), Distance.FromInches(4, 7, 8), Citation.CommonPractice);
            yield return Plate(PlateKind.Jumbo, gangs, Distance.FromInches(3, 1, 2), Distance.FromInches(5, 1, 4), Citation.CommonPractice);
        }
    }

    internal static IEnumerable<DevicePart> Devices()
    {
        // The two outlets of a duplex are published as 1-1/2 in apart and remembered as 1-17/32; with a face 1-1/8 in tall the operated
        // part ends 1.31 or 1.33 in from the center. One figure for all: 1.31, which rests on the published spacing and is also half the
        // published opening of a rectangular face. The 0.02 in between them is far inside any workmanship margin.
        Distance face = Inches(1.31m);
        OperableParts duplex = new(face, face);
        Distance halfFaceWide = Inches(0.67m);
        OperableParts onItsSide = new(halfFaceWide, halfFaceWide);

        // A rocker has no lever: its grip is taken at the middle of the paddle's upper half.
        OperableParts rocker = new(face, face, EvenSize.Half(face));
        OperableParts rockerOnItsSide = new(halfFaceWide, halfFaceWide, halfFaceWide);
        Distance lever = Inches(0.47m);
        Distance singleOutlet = Inches(0.69m);
        Distance largeOutlet = Inches(1.07m);

        // A knob or a button is gripped at its middle.
        Distance knobRadius = Inches(0.6m);
        Distance buttonRadius = Inches(0.4m);
        OperableParts toggle = new(lever, lever, Inches(0.375m));
        OperableParts knob = new(knobRadius, knobRadius, Distance.Zero);
        OperableParts push = new(buttonRadius, buttonRadius, Distance.Zero);
        foreach (DeviceKind kind in new[] { DeviceKind.RockerSwitch, DeviceKind.ThreeWayRockerSwitch, DeviceKind.FourWayRockerSwitch, DeviceKind.SlideDimmer })
        {
            yield return new(kind, rocker, FromMemory, rockerOnItsSide);
        }

        foreach (DeviceKind kind in new[] { DeviceKind.ToggleSwitch, DeviceKind.ThreeWayToggleSwitch, DeviceKind.FourWayToggleSwitch })
        {
            yield return new(kind, toggle, FromMemory, toggle);
        }

        yield return new(DeviceKind.PushSwitch, push, FromMemory, push);
        yield return new(DeviceKind.RotaryDimmer, knob, FromMemory, knob);

        // Of unstated style: any of these; the parts given are those of the largest.
        yield return OfAnyStyle(DeviceKind.Switch, DeviceKind.ToggleSwitch, DeviceKind.RockerSwitch, DeviceKind.PushSwitch);
        yield return OfAnyStyle(DeviceKind.ThreeWaySwitch, DeviceKind.ThreeWayToggleSwitch, DeviceKind.ThreeWayRockerSwitch);
        yield return OfAnyStyle(DeviceKind.FourWaySwitch, DeviceKind.FourWayToggleSwitch, DeviceKind.FourWayRockerSwitch);
        yield return OfAnyStyle(DeviceKind.Dimmer, DeviceKind.SlideDimmer, DeviceKind.RotaryDimmer, DeviceKind.ToggleSwitch);
        yield return OfAnyStyle(DeviceKind.FanControl, DeviceKind.SlideDimmer, DeviceKind.RotaryDimmer, DeviceKind.ToggleSwitch);
        foreach (DeviceKind kind in new[] { DeviceKind.DuplexReceptacle, DeviceKind.GfciReceptacle, DeviceKind.SplitReceptacle, DeviceKind.DecoratorReceptacle, DeviceKind.UsbReceptacle })
        {
            yield return new(kind, duplex, FromMemory, onItsSide);
        }

        yield return new(DeviceKind.SingleReceptacle, new(singleOutlet, singleOutlet), FromMemory);
        yield return new(DeviceKind.RangeReceptacle, new(largeOutlet, largeOutlet), FromMemory);
        yield return new(DeviceKind.DryerReceptacle, new(largeOutlet, largeOutlet), FromMemory);

        // Their whole faces, since people press or turn them anywhere; for alarms of smoke, the cover, whose top is what is measured.
        Distance button = Inches(0.4m);
        Distance jack = Inches(0.35m);
        Distance control = Inches(1.75m);
        Distance cover = Inches(2.75m);
        yield return new(DeviceKind.DoorbellButton, new(button, button), FromMemory);
        yield return new(DeviceKind.DataJack, new(jack, jack), FromMemory);
        yield return new(DeviceKind.TvJack, new(jack, jack), FromMemory);
        yield return new(DeviceKind.Thermostat, new(control, control), FromMemory);
        yield return new(DeviceKind.SmokeAlarm, new(cover, cover), FromMemory);
        yield return new(DeviceKind.SmokeCoAlarm, new(cover, cover), FromMemory);

        DevicePart OfAnyStyle(DeviceKind kind, params DeviceKind[] styles) => new(kind, rocker, FromMemory, rockerOnItsSide, styles: styles);

        // It faces up, so all of it is operated at one height.
        yield return new(DeviceKind.FloorReceptacle, default, FromMemory);
    }

    internal static IEnumerable<VolumesPart> Volumes()
    {
        // Plastic boxes carry their own volume (NEC 314.16(A)(2)); these are the marks that are commonly met with.
        yield return new(BoxKind.NailOn, 1, CubicInches(14m, 16m, 18m, 20.3m, 22.5m), FromMemory);
        yield return new(BoxKind.NailOn, 2, CubicInches(25m, 32m, 35m, 42m), FromMemory);
        yield return new(BoxKind.NailOn, 3, CubicInches(44m, 47m, 55m, 57m), FromMemory);
        yield return new(BoxKind.NailOn, 4, CubicInches(55m, 58m, 68m, 80m), FromMemory);
        yield return new(BoxKind.CutIn, 1, CubicInches(14m, 16m, 18m, 20m), FromMemory);
        yield return new(BoxKind.CutIn, 2, CubicInches(25m, 32m, 34m), FromMemory);
        yield return new(BoxKind.CutIn, 3, CubicInches(44m, 55m), FromMemory);

        // Boxes of NEC Table 314.16(A), by their trade depth: the least room that a box of the kind has, so none is smaller than the first. The same three depths serve round and square boxes.
        Items<Distance> depths = new[] { Distance.FromInches(1, 1, 4), Distance.FromInches(1, 1, 2), Distance.FromInches(2, 1, 8) };
        for (int gangs = 1; gangs <= 2; gangs++)
        {
            yield return new(BoxKind.FourSquare, gangs, CubicInches(18.0m, 21.0m, 30.3m), MetalTable, depths, noneSmaller: true);
            yield return new(BoxKind.FourElevenSquare, gangs, CubicInches(25.5m, 29.5m, 42.0m), MetalTable, depths, noneSmaller: true);
        }

        yield return new(BoxKind.Octagon, 1, CubicInches(12.5m, 15.5m, 21.5m), MetalTable, depths, noneSmaller: true);
        yield return new(BoxKind.FanRated, 1, CubicInches(15.5m, 21.5m), MetalTableFromMemory);
        yield return new(BoxKind.Pancake, 1, CubicInches(4m, 6m), FromMemory);
        yield return new(
            BoxKind.Handy,
            1,
            CubicInches(10.3m, 13.0m, 14.5m),
            MetalTableFromMemory,
            new[] { Distance.FromInches(1, 1, 2), Distance.FromInches(1, 7, 8), Distance.FromInches(2, 1, 8) },
            noneSmaller: true);

        // Ganged sections add up: NEC 314.16(A).
        Items<Distance> deviceDepths = new[]
        {
            Distance.FromInches(1, 1, 2), Inches(2), Distance.FromInches(2, 1, 4), Distance.FromInches(2, 1, 2), Distance.FromInches(2, 3, 4), Distance.FromInches(3, 1, 2),
        };
        Items<Distance> masonryDepths = new[] { Distance.FromInches(2, 1, 2), Distance.FromInches(3, 1, 2) };
        Items<Distance> castDepths = new[] { Distance.FromInches(1, 3, 4), Distance.FromInches(2, 3, 8) };
        for (int gangs = 1; gangs <= MostMetalGangs; gangs++)
        {
            int sections = gangs;
            Items<Volume> device = CubicInches(7.5m, 10.0m, 10.5m, 12.5m, 14.0m, 18.0m);
            Items<Volume> masonry = CubicInches(14.0m, 21.0m);
            yield return new(BoxKind.MetalDevice, gangs, device.Select(one => one * sections), MetalTableFromMemory, deviceDepths, noneSmaller: true);
            yield return new(BoxKind.Masonry, gangs, masonry.Select(one => one * sections), MetalTableFromMemory, masonryDepths, noneSmaller: true);

            // FS and FD: a gang of a wider one has more room than a box of one gang.
            Items<Volume> cast = gangs == 1 ? CubicInches(13.5m, 18.0m) : CubicInches(18.0m, 24.0m);
            yield return new(BoxKind.Cast, gangs, cast.Select(one => one * sections), MetalTableFromMemory, castDepths, noneSmaller: true);
        }
    }

    /// <summary>How the kinds are built. Depths of plastic boxes are from memory: bodies for one gang run from 2-3/4 to 3-5/8 in, wider ones to 3-1/2 in; one marked with less than 14 in³ is a shallow one.</summary>
    internal static IEnumerable<KindPart> Kinds()
    {
        Distance leastBody = Distance.FromInches(2, 3, 4);
        yield return new(BoxKind.NailOn, Citation.CommonPractice)
        {
            Material = BoxMaterial.Plastic,
            IsSetIn = true,
            NoClampsUpTo = 1,
            WhereShallow = BoxKind.FourSquare,
            Depths = Range(leastBody, Distance.FromInches(3, 5, 8)),
            DepthsOfMoreGangs = Range(leastBody, Distance.FromInches(3, 4, 8)),
            ShallowUnder = Volume.FromCubicInches(14),
        };
        yield return new(BoxKind.CutIn, Citation.CommonPractice) { Material = BoxMaterial.Plastic, IsSetIn = true, NoClampsUpTo = 1, Mounting = MountingMethod.CutIn };
        yield return new(BoxKind.FourSquare, Citation.CommonPractice) { Material = BoxMaterial.Steel, IsSetIn = true, TakesRing = true, HoldsDevices = false, WhereShallow = BoxKind.FourSquare };
        yield return new(BoxKind.FourElevenSquare, Citation.CommonPractice) { Material = BoxMaterial.Steel, IsSetIn = true, TakesRing = true, HoldsDevices = false };
        yield return new(BoxKind.Octagon, Citation.CommonPractice) { Material = BoxMaterial.Steel, HoldsDevices = false };
        yield return new(BoxKind.Handy, Citation.CommonPractice) { Material = BoxMaterial.Steel };
        yield return new(BoxKind.MetalDevice, Citation.CommonPractice) { Material = BoxMaterial.Steel, IsSetIn = true, WhereShallow = BoxKind.FourSquare };
        yield return new(BoxKind.Masonry, Citation.CommonPractice) { Material = BoxMaterial.Steel, Mounting = MountingMethod.Masonry };

        // Hubs hold its cables, so that it has no clamps whatever its gangs.
        yield return new(BoxKind.Cast, Citation.CommonPractice) { Material = BoxMaterial.Cast, NoClampsUpTo = int.MaxValue, MayBeDeeper = true };
        yield return new(BoxKind.Pancake, Citation.CommonPractice) { HoldsDevices = false };
        yield return new(BoxKind.LowVoltageBracket, Citation.CommonPractice) { IsSetIn = true, IsLowVoltage = true };
        yield return new(BoxKind.FanRated, Citation.CommonPractice) { HoldsDevices = false };
    }

    private static Distance GenericHeight => Distance.FromInches(3, 3, 4);

    private static BoxPart CutIn(int gangs, Distance width, DistanceRange widths) =>
        new(BoxKind.CutIn, gangs, new BoxSize(width, GenericHeight).Ranging(widths, Range(Inches(3.65m), Inches(3.875m))), null, FromMemory);

    private static BoxPart NailOn(int gangs, Distance width, DistanceRange widths, Citation citation) => new(
        BoxKind.NailOn,
        gangs,
        new BoxSize(width, GenericHeight).Ranging(widths, Range(Distance.FromInches(3, 1, 2), Inches(4))),
        null,
        citation);

    private static PlatePart Plate(PlateKind kind, int gangs, Distance oneGangWidth, Distance height, Citation citation) =>
        new(kind, gangs, new(Ganged(oneGangWidth, gangs), height), citation);

    private static Distance Ganged(Distance oneGang, int gangs) => oneGang + (GangPitch * (gangs - 1));

    private static Distance Inches(decimal inches) => Distance.FromInches(inches);

    private static DistanceRange Range(Distance from, Distance to) => new(from, to);

    private static Items<Volume> CubicInches(params decimal[] volumes) => new Items<decimal>(volumes).Select(Volume.FromCubicInches);
}
