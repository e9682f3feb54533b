namespace BoxHeights.Interop;

/// <summary>What lies on, in or against a wall.</summary>
internal static class SurfaceShapes
{
    internal static Shape<Opening> Opening { get; } = new ShapeBuilder<Opening>("opening", "An opening in a wall, between the faces of its rough framing.")
        .Required("id", x => x.Id, Texts.Id, "The name it is addressed by on its wall.", out MemberKey<string> id)
        .Required("kind", x => x.Kind, Kinds.OpeningKind, "What it is.", out MemberKey<OpeningKind> kind)
        .Required("left", x => x.Left, Texts.Distance, "Its left end along the wall, from the wall's left end (framing face).", out MemberKey<Distance> left)
        .Required("right", x => x.Right, Texts.Distance, "Its right end along the wall, from the wall's left end (framing face).", out MemberKey<Distance> right)
        .Optional("sill", x => x.Sill, (x, v) => x.WithSill(v), Texts.Level, "The bottom of the rough opening; the floor unless stated.")
        .Optional("head", x => x.Head, (x, v) => x.WithHead(v), Texts.Level, "The top of the rough opening.")
        .Optional("leaf", x => x.Leaf, (x, v) => x.WithLeaf(v), Texts.Distance, "The width of the door leaf.")
        .Optional("hinge", x => x.Hinge, (x, v) => x.WithHinge(v), Words.WallEnd, "The side that the hinges are on, seen from this room; of a double door, the side of the leaf that is used first.")
        .Optional("swing", x => x.Swing, (x, v) => x.WithSwing(v), Words.DoorSwing, "Whether the leaf swings into this room or away from it.")
        .Optional("casing", x => x.Casing, (x, v) => x.WithCasing(v), Texts.Distance, "The width of its casing.")
        .Optional("reveal", x => x.Reveal, (x, v) => x.WithReveal(v), Texts.Distance, "From the jamb's edge to the casing.")
        .Optional("stool", x => x.Stool, (x, v) => x.WithStool(v), Texts.Distance, "The thickness of the window stool.")
        .Optional("pocketOn", x => x.PocketOn, (x, v) => x.WithPocketOn(v), Words.WallEnd, "The side that a pocket door slides into; of a barn or sliding door, the side that its panel stands on when it is open.")
        .Optional("entrance", x => x.Entrance, (x, v) => x.WithEntrance(v), Words.EntranceSide, "Whether this room is the inside or the outside of an entrance to the dwelling.")
        .Build(v => new(v.Get(id), v.Get(kind), v.Get(left), v.Get(right)));

    internal static Shape<CounterInterruption> Interruption { get; } = new ShapeBuilder<CounterInterruption>("counterInterruption", "Something that interrupts a counter's top.")
        .Required("kind", x => x.Kind, Kinds.InterruptionKind, "What it is.", out MemberKey<InterruptionKind> kind)
        .Required("left", x => x.Left, Texts.Distance, "Its left end along the wall, from the wall's left end (framing face).", out MemberKey<Distance> left)
        .Required("right", x => x.Right, Texts.Distance, "Its right end along the wall, from the wall's left end (framing face).", out MemberKey<Distance> right)
        .Optional("behind", x => x.Behind, (x, v) => x.WithBehind(v), Texts.Distance, "How much counter is left behind it.")
        .Build(v => new(v.Get(kind), v.Get(left), v.Get(right)));

    internal static Shape<Counter> Counter { get; } = new ShapeBuilder<Counter>("counter", "A counter that stands against a wall.")
        .Required("id", x => x.Id, Texts.Id, "The name it is addressed by on its wall.", out MemberKey<string> id)
        .Required("kind", x => x.Kind, Kinds.CounterKind, "What it is.", out MemberKey<CounterKind> kind)
        .Required("left", x => x.Left, Texts.Distance, "Its left end along the wall, from the wall's left end (framing face).", out MemberKey<Distance> left)
        .Required("right", x => x.Right, Texts.Distance, "Its right end along the wall, from the wall's left end (framing face).", out MemberKey<Distance> right)
        .Optional("top", x => x.Top, (x, v) => x.WithTop(v), Texts.Level, "The height of its top.")
        .Optional("depth", x => x.Depth, (x, v) => x.WithDepth(v), Texts.Distance, "From the finished wall to its front edge, overhang included.")
        .Optional("overhang", x => x.Overhang, (x, v) => x.WithOverhang(v), Texts.Distance, "How far the top reaches beyond the base.")
        .Optional("kneeSpace", x => x.KneeSpace, (x, v) => x.WithKneeSpace(v), Texts.DistanceOrNone, "How deep a seated person's knees fit under it; zero is \"none\".")
        .Optional("thickness", x => x.Thickness, (x, v) => x.WithThickness(v), Texts.Distance, "How thick the top is at the wall, from the surface down.")
        .Optional("baseStandsOn", x => x.BaseStandsOn, (x, v) => x.WithBaseStandsOn(v), Words.Datum, "Whether its base stands on the subfloor or on the finished floor.")
        .List("interruptions", x => x.Interruptions, (x, v) => x.WithInterruptions(v), Interruption, "Sinks, ranges and whatever else interrupts its top.")
        .Build(v => new(v.Get(id), v.Get(kind), v.Get(left), v.Get(right)));

    internal static Shape<Finish> Finish { get; } = new ShapeBuilder<Finish>("finish", "A finish that lies on part of a wall.")
        .Required("id", x => x.Id, Texts.Id, "The name it is addressed by on its wall.", out MemberKey<string> id)
        .Required("kind", x => x.Kind, Kinds.FinishKind, "What it is.", out MemberKey<FinishKind> kind)
        .Required("left", x => x.Left, Texts.Distance, "Its left end along the wall, from the wall's left end (framing face).", out MemberKey<Distance> left)
        .Required("right", x => x.Right, Texts.Distance, "Its right end along the wall, from the wall's left end (framing face).", out MemberKey<Distance> right)
        .Optional("bottom", x => x.Bottom, (x, v) => x.WithBottom(v), Texts.Level, "Its lower edge; the floor unless stated.")
        .Optional("top", x => x.Top, (x, v) => x.WithTop(v), Texts.Level, "Its upper edge; the ceiling unless stated.")
        .Optional("thickness", x => x.Thickness, (x, v) => x.WithThickness(v), Ranges.Distance, "Its thickness.")
        .Optional("bed", x => x.Bed, (x, v) => x.WithBed(v), Ranges.Distance, "The thickness of mortar or adhesive under it.")
        .Optional("combustible", x => x.Combustible, (x, v) => x.WithCombustible(v), Texts.Truth, "Whether it burns.")
        .Build(v => new(v.Get(id), v.Get(kind), v.Get(left), v.Get(right)));

    internal static Shape<Covering> Covering { get; } = new ShapeBuilder<Covering>("covering", "Something that hides part of a wall.")
        .Required("id", x => x.Id, Texts.Id, "The name it is addressed by on its wall.", out MemberKey<string> id)
        .Required("kind", x => x.Kind, Kinds.CoveringKind, "What it is.", out MemberKey<CoveringKind> kind)
        .Required("left", x => x.Left, Texts.Distance, "Its left end along the wall, from the wall's left end (framing face).", out MemberKey<Distance> left)
        .Required("right", x => x.Right, Texts.Distance, "Its right end along the wall, from the wall's left end (framing face).", out MemberKey<Distance> right)
        .Optional("bottom", x => x.Bottom, (x, v) => x.WithBottom(v), Texts.Level, "Its lower edge; the floor unless stated.")
        .Optional("top", x => x.Top, (x, v) => x.WithTop(v), Texts.Level, "Its upper edge; the ceiling unless stated.")
        .Optional("openInside", x => x.OpenInside, (x, v) => x.WithOpenInside(v), Texts.Truth, "Whether a box inside it can still be reached.")
        .Optional("lightRail", x => x.LightRail, (x, v) => x.WithLightRail(v), Texts.Distance, "How far a light rail hangs below it.")
        .Optional("depth", x => x.Depth, (x, v) => x.WithDepth(v), Texts.Distance, "How far it stands out from the wall: how deep a shelf or a cabinet is.")
        .Build(v => new(v.Get(id), v.Get(kind), v.Get(left), v.Get(right)));

    internal static Shape<NoCavity> NoCavity { get; } = new ShapeBuilder<NoCavity>("noCavity", "A part of a wall in which no box can be set.")
        .Required("kind", x => x.Kind, Kinds.NoCavityKind, "What fills it.", out MemberKey<NoCavityKind> kind)
        .Required("left", x => x.Left, Texts.Distance, "Its left end along the wall, from the wall's left end (framing face).", out MemberKey<Distance> left)
        .Required("right", x => x.Right, Texts.Distance, "Its right end along the wall, from the wall's left end (framing face).", out MemberKey<Distance> right)
        .Optional("bottom", x => x.Bottom, (x, v) => x.WithBottom(v), Texts.Level, "Its lower edge; the floor unless stated.")
        .Optional("top", x => x.Top, (x, v) => x.WithTop(v), Texts.Level, "Its upper edge; the ceiling unless stated.")
        .Build(v => new(v.Get(kind), v.Get(left), v.Get(right)));
}
