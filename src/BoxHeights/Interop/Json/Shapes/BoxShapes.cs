namespace BoxHeights.Interop;

/// <summary>Boxes and how they are held.</summary>
internal static class BoxShapes
{
    internal static Shape<BoxSize> Size { get; } = new ShapeBuilder<BoxSize>("boxSize", "The outside of a box at its opening.")
        .Required("width", x => x.Width, Texts.Distance, "Nominal outside width; more than zero.", out MemberKey<Distance> width)
        .Required("height", x => x.Height, Texts.Distance, "Nominal outside height; more than zero.", out MemberKey<Distance> height)
        .Made("depth", x => x.Depth, Texts.Distance, "From the opening to the back; more than zero.", out MemberKey<Distance> depth)
        .Made("widthRange", x => x.WidthRange == x.Width ? null : x.WidthRange, Ranges.Distance, "The widths that such boxes really have; the nominal one unless stated.", out MemberKey<DistanceRange> widthRange)
        .Made("heightRange", x => x.HeightRange == x.Height ? null : x.HeightRange, Ranges.Distance, "The heights that such boxes really have; the nominal one unless stated.", out MemberKey<DistanceRange> heightRange)
        .BuildWhole(x => x.IsStated, v =>
        {
            BoxSize exact = new(v.Get(width), v.Get(height), v.Find(depth));
            return exact.Ranging(v.Find(widthRange) ?? exact.Width, v.Find(heightRange) ?? exact.Height);
        });

    internal static Shape<Mounting> Mounting { get; } = new ShapeBuilder<Mounting>("mounting", "How a box is held.")
        .Required("how", x => x.How, Words.MountingMethod, "The method.", out MemberKey<MountingMethod> how)
        .Optional("stud", x => x.Stud, (x, v) => x.WithStud(v), Texts.Count, "The stud it is on, counted from the left end of the wall, the first full stud being 1.")
        .Optional("side", x => x.Side, (x, v) => x.WithSide(v), Words.StudSide, "The side of that stud.")
        .Optional("span", x => x.Span, (x, v) => x.WithSpan(v), Ranges.Distance, "The clear bays that a bar, or a bracket held at both ends, spans; a range for one that adjusts.")
        .Build(v => new(v.Get(how)));

    internal static Shape<MeasuredHeight> Measured { get; } = new ShapeBuilder<MeasuredHeight>("measuredHeight", "A height read from a tape.")
        .Required("height", x => x.Height, Texts.Height, "What was read.", out MemberKey<BoxHeight> height)
        .Optional("within", x => x.Within, (x, v) => x.WithWithin(v), Texts.Distance, "How far off the reading may be; 1/8 in unless stated.")
        .Build(v => new(v.Get(height)));

    internal static Shape<BoxCompartment> Compartment { get; } = new ShapeBuilder<BoxCompartment>("boxCompartment", "One of the spaces into which barriers divide a box. From left to right, each takes the next of the box's devices, cables and conductors.")
        .Optional("devices", x => x.Devices, (x, v) => x.WithDevices(v), Texts.Count, "How many of the box's devices are in it; none unless stated.")
        .Optional("cables", x => x.Cables, (x, v) => x.WithCables(v), Texts.Count, "How many of the box's cables enter it; none unless stated.")
        .Optional("conductors", x => x.Conductors, (x, v) => x.WithConductors(v), Texts.Count, "How many entries of the box's list of conductors are in it; none unless stated.")
        .Optional("volume", x => x.Volume, (x, v) => x.WithVolume(v), Texts.Volume, "The room inside it, with rings and extensions over it.")
        .Build(_ => new());

    internal static Shape<DeviceBox> Box { get; } = new ShapeBuilder<DeviceBox>("deviceBox", "One device box: what it is for, what it holds, where it is or shall be.")
        .Required("id", x => x.Id, Texts.Id, "The name it is addressed by; one of its kind in the dwelling.", out MemberKey<string> id)
        .Required("purpose", x => x.Purpose, Kinds.BoxPurpose, "What the box is for.", out MemberKey<BoxPurpose> purpose)
        .List("devices", x => x.Devices, (x, v) => x.WithDevices(v), Kinds.DeviceKind, "The devices in it, from left to right.")
        .Optional("gangs", x => x.Gangs, (x, v) => x.WithGangs(v), Texts.Count, "How many device widths it has; as many as its devices need unless stated.")
        .Optional("kind", x => x.Kind, (x, v) => x.WithKind(v), Kinds.BoxKind, "The kind of box; a generic nail-on box unless stated.")
        .Optional("size", x => x.Size, (x, v) => x.WithSize(v), Size, "Its size at the opening; the catalog's unless stated.")
        .Optional("volume", x => x.Volume, (x, v) => x.WithVolume(v), Texts.Volume, "The volume marked on it.")
        .Optional("plate", x => x.Plate, (x, v) => x.WithPlate(v), Kinds.PlateKind, "The size of its cover plate; standard unless stated.")
        .Usual("onItsSide", false, x => x.OnItsSide, (x, v) => x.WithOnItsSide(v), Texts.Truth, "Whether the device lies on its side.")
        .Optional("surface", x => x.Surface, (x, v) => x.WithSurface(v), Words.BoxSurface, "The surface that it sits on; the one that it is listed under unless stated.")
        .Optional("mounting", x => x.Mounting, (x, v) => x.WithMounting(v), Mounting, "How it is held.")
        .Optional("at", x => x.At, (x, v) => x.WithAt(v), Texts.Distance, "Its center, along the wall from the wall's left end.")
        .Optional("plan", x => x.Plan, (x, v) => x.WithPlan(v), PlanPointCodec.Instance, "Its center in plan, for boxes in a ceiling or floor.")
        .Optional("height", x => x.Height, (x, v) => x.WithHeight(v), Texts.Height, "The height that it is set to.")
        .Optional("specified", x => x.Specified, (x, v) => x.WithSpecified(v), Texts.Height, "The height that the drawing asks for.")
        .Optional("measured", x => x.Measured, (x, v) => x.WithMeasured(v), Measured, "The height found on a walk, once it is set.")
        .Usual("existing", false, x => x.Existing, (x, v) => x.WithExisting(v), Texts.Truth, "Whether it was there before, in a room that is worked on: it stays where it is, documents are asked of it as of a new box, and habits aren't. A box that the work doesn't touch is untouched instead.")
        .Optional("untouched", x => x.Untouched, (x, v) => x.WithUntouched(v), Texts.Truth, "Whether it is no part of this work: no rule is asked of it, be it of a document or a habit, and it stays where it is; what its room or outside face says where it isn't stated, and false for a new box in such a room. New boxes are still held against it.")
        .Usual("pinned", false, x => x.Pinned, (x, v) => x.WithPinned(v), Texts.Truth, "Whether it must stay where it is.")
        .Optional("approach", x => x.Approach, (x, v) => x.WithApproach(v), Words.Approach, "From which sides a person can reach it.")
        .List("cables", x => x.Cables, (x, v) => x.WithCables(v), Texts.Cable, "The cables that enter it.")
        .Optional("clamps", x => x.Clamps, (x, v) => x.WithClamps(v), Words.CableClamps, "How cables are held.")
        .List("conductors", x => x.Conductors, (x, v) => x.WithConductors(v), Texts.Conductors, "Conductors that enter it without being counted in a cable.")
        .List("connected", x => x.Connected, (x, v) => x.WithConnected(v), Texts.Conductor, "The largest conductor connected to each of its devices, in their order.")
        .Optional("fireProtection", x => x.FireProtection, (x, v) => x.WithFireProtection(v), Words.FireProtection, "What lets it be near a box on the other face of a rated wall.")
        .Optional("boardGap", x => x.BoardGap, (x, v) => x.WithBoardGap(v), Texts.Distance, "The widest gap, on any side, between its edge and the board, plaster or tile that it is set into.")
        .List("deviceDepths", x => x.DeviceDepths, (x, v) => x.WithDeviceDepths(v), Texts.Distance, "How far each of its devices reaches back from its front edge, in their order.")
        .List("deviceGangs", x => x.DeviceGangs, (x, v) => x.WithDeviceGangs(v), Texts.Count, "How many gangs each of its devices needs to be mounted, in their order.")
        .Usual("backEntry", false, x => x.BackEntry, (x, v) => x.WithBackEntry(v), Texts.Truth, "Whether wiring is known to enter at the center of its back, behind the devices.")
        .List("compartments", x => x.Compartments, (x, v) => x.WithCompartments(v), Compartment, "The spaces that barriers divide it into, from left to right.")
        .Optional("luminaire", x => x.Luminaire, (x, v) => x.WithLuminaire(v), Words.LuminaireBuild, "How the luminaire on it is built.")
        .List("fittings", x => x.Fittings, (x, v) => x.WithFittings(v), Words.BoxFitting, "What else is fitted inside it.")
        .Optional("extension", x => x.Extension, (x, v) => x.WithExtension(v), Texts.Volume, "The volume marked on rings, extensions and domed covers that are assembled with it.")
        .Optional("setFor", x => x.SetFor, (x, v) => x.WithSetFor(v), Texts.Distance, "How far its front edge, or that of its ring, stands out from the stud or joist.")
        .Optional("rating", x => x.Rating, (x, v) => x.WithRating(v), Texts.Plain, "The rating of its receptacle (\"125 V 20 A\").")
        .Optional("dedicated", x => x.Dedicated, (x, v) => x.WithDedicated(v), Texts.Plain, "The appliance that it serves alone.")
        .Optional("switched", x => x.Switched, (x, v) => x.WithSwitched(v), Words.SwitchedPart, "How much of its receptacle a switch controls.")
        .List("controls", x => x.Controls, (x, v) => x.WithControls(v), Texts.Id, "The ids of the boxes whose lights or switched receptacles its switches control.")
        .Usual("fanRated", false, x => x.FanRated, (x, v) => x.WithFanRated(v), Texts.Truth, "Whether it can hold a ceiling fan.")
        .Build(v => new(v.Get(id), v.Get(purpose)));
}
