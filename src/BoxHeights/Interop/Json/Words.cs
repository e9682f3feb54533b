using System;

namespace BoxHeights.Interop;

/// <summary>The closed lists, each value with the word that is written for it.</summary>
internal static partial class Words
{
    internal static readonly Codec<LengthUnits> LengthUnits = new WordCodec<LengthUnits>(
        "lengthUnits", "units", (BoxHeights.LengthUnits.Inches, "inches"), (BoxHeights.LengthUnits.Millimeters, "millimeters"));

    internal static readonly Codec<WallEnd> WallEnd = new WordCodec<WallEnd>(
        "wallEnd", "an end of the wall", (BoxHeights.WallEnd.Left, "left"), (BoxHeights.WallEnd.Right, "right"));

    internal static readonly Codec<StudKnowledge> StudKnowledge = new WordCodec<StudKnowledge>(
        "studKnowledge", "how well the studs are known", (BoxHeights.StudKnowledge.Assumed, "assumed"), (BoxHeights.StudKnowledge.Declared, "declared"), (BoxHeights.StudKnowledge.Measured, "measured"));

    internal static readonly Codec<BoardDirection> BoardDirection = new WordCodec<BoardDirection>(
        "boardDirection", "a direction of hanging", (BoxHeights.BoardDirection.Horizontal, "horizontal"), (BoxHeights.BoardDirection.Vertical, "vertical"));

    internal static readonly Codec<BoardOrigin> BoardOrigin = new WordCodec<BoardOrigin>(
        "boardOrigin", "a place to start hanging", (BoxHeights.BoardOrigin.Top, "top"), (BoxHeights.BoardOrigin.Bottom, "bottom"), (BoxHeights.BoardOrigin.Left, "left"), (BoxHeights.BoardOrigin.Right, "right"));

    internal static readonly Codec<DoorSwing> DoorSwing = new WordCodec<DoorSwing>(
        "doorSwing", "a way to swing", (BoxHeights.DoorSwing.Into, "into"), (BoxHeights.DoorSwing.Away, "away"));

    internal static readonly Codec<EntranceSide> EntranceSide = new WordCodec<EntranceSide>(
        "entranceSide", "a side of an entrance", (BoxHeights.EntranceSide.Inside, "inside"), (BoxHeights.EntranceSide.Outside, "outside"));

    internal static readonly Codec<BoxSurface> BoxSurface = new WordCodec<BoxSurface>(
        "boxSurface", "a surface", (BoxHeights.BoxSurface.Wall, "wall"), (BoxHeights.BoxSurface.Ceiling, "ceiling"), (BoxHeights.BoxSurface.Floor, "floor"), (BoxHeights.BoxSurface.Cabinet, "cabinet"));

    internal static readonly Codec<Approach> Approach = new WordCodec<Approach>(
        "approach", "an approach", (BoxHeights.Approach.None, "none"), (BoxHeights.Approach.Forward, "forward"), (BoxHeights.Approach.Side, "side"), (BoxHeights.Approach.Either, "either"));

    internal static readonly Codec<CableClamps> CableClamps = new WordCodec<CableClamps>(
        "cableClamps", "a way to hold cables", (BoxHeights.CableClamps.None, "none"), (BoxHeights.CableClamps.Internal, "internal"), (BoxHeights.CableClamps.Flap, "flap"));

    internal static readonly Codec<BoxFitting> BoxFitting = new WordCodec<BoxFitting>(
        "boxFitting",
        "what is fitted in a box",
        (BoxHeights.BoxFitting.LuminaireStud, "luminaire-stud"),
        (BoxHeights.BoxFitting.Hickey, "hickey"),
        (BoxHeights.BoxFitting.TerminalBlock, "terminal-block"),
        (BoxHeights.BoxFitting.MetalBarrier, "metal-barrier"),
        (BoxHeights.BoxFitting.PlasticBarrier, "plastic-barrier"));

    internal static readonly Codec<FireProtection> FireProtection = new WordCodec<FireProtection>(
        "fireProtection",
        "a protection in a rated wall",
        (BoxHeights.FireProtection.None, "none"),
        (BoxHeights.FireProtection.PuttyPad, "putty-pad"),
        (BoxHeights.FireProtection.Listed, "listed"));

    internal static readonly Codec<LuminaireBuild> LuminaireBuild = new WordCodec<LuminaireBuild>(
        "luminaireBuild",
        "a way to build a luminaire",
        (BoxHeights.LuminaireBuild.Open, "open"),
        (BoxHeights.LuminaireBuild.Enclosed, "enclosed"),
        (BoxHeights.LuminaireBuild.Fluorescent, "fluorescent"),
        (BoxHeights.LuminaireBuild.Recessed, "recessed"),
        (BoxHeights.LuminaireBuild.ForStorage, "for-storage"));

    internal static readonly Codec<SwitchedPart> SwitchedPart = new WordCodec<SwitchedPart>(
        "switchedPart", "a part that is switched", (BoxHeights.SwitchedPart.None, "none"), (BoxHeights.SwitchedPart.Half, "half"), (BoxHeights.SwitchedPart.All, "all"));

    internal static readonly Codec<MountingMethod> MountingMethod = new WordCodec<MountingMethod>(
        "mountingMethod",
        "a way to hold a box",
        (BoxHeights.MountingMethod.Stud, "stud"),
        (BoxHeights.MountingMethod.Bracket, "bracket"),
        (BoxHeights.MountingMethod.Bar, "bar"),
        (BoxHeights.MountingMethod.CutIn, "cut-in"),
        (BoxHeights.MountingMethod.Blocking, "blocking"),
        (BoxHeights.MountingMethod.Masonry, "masonry"),
        (BoxHeights.MountingMethod.Surface, "surface"),
        (BoxHeights.MountingMethod.Cabinet, "cabinet"));

    internal static readonly Codec<StudSide> StudSide = new WordCodec<StudSide>(
        "studSide", "a side of a stud", (BoxHeights.StudSide.Left, "left"), (BoxHeights.StudSide.Right, "right"));

    /// <summary>Datums by the names that heights are printed with.</summary>
    internal static readonly Codec<Datum> Datum = new WordCodec<Datum>(
        "datum", "a datum", Array.ConvertAll(Enum.GetValues<Datum>(), datum => (datum, DatumText.Name(datum))));
}
