using System;

namespace BoxHeights.Interop;

/// <summary>The closed lists, each value with the word that is written for it.</summary>
internal static partial class Words
{
    internal static readonly Codec<LengthUnits> LengthUnits = new WordCodec<LengthUnits>("lengthUnits", "units");

    internal static readonly Codec<WallEnd> WallEnd = new WordCodec<WallEnd>("wallEnd", "an end of the wall");

    internal static readonly Codec<StudKnowledge> StudKnowledge = new WordCodec<StudKnowledge>("studKnowledge", "how well the studs are known");

    internal static readonly Codec<BoardDirection> BoardDirection = new WordCodec<BoardDirection>("boardDirection", "a direction of hanging");

    internal static readonly Codec<BoardOrigin> BoardOrigin = new WordCodec<BoardOrigin>("boardOrigin", "a place to start hanging");

    internal static readonly Codec<DoorSwing> DoorSwing = new WordCodec<DoorSwing>("doorSwing", "a way to swing");

    internal static readonly Codec<EntranceSide> EntranceSide = new WordCodec<EntranceSide>("entranceSide", "a side of an entrance");

    internal static readonly Codec<BoxSurface> BoxSurface = new WordCodec<BoxSurface>("boxSurface", "a surface");

    internal static readonly Codec<Approach> Approach = new WordCodec<Approach>("approach", "an approach");

    internal static readonly Codec<CableClamps> CableClamps = new WordCodec<CableClamps>("cableClamps", "a way to hold cables");

    internal static readonly Codec<BoxFitting> BoxFitting = new WordCodec<BoxFitting>("boxFitting", "what is fitted in a box");

    internal static readonly Codec<FireProtection> FireProtection = new WordCodec<FireProtection>("fireProtection", "a protection in a rated wall");

    internal static readonly Codec<LuminaireBuild> LuminaireBuild = new WordCodec<LuminaireBuild>("luminaireBuild", "a way to build a luminaire");

    internal static readonly Codec<SwitchedPart> SwitchedPart = new WordCodec<SwitchedPart>("switchedPart", "a part that is switched");

    internal static readonly Codec<MountingMethod> MountingMethod = new WordCodec<MountingMethod>("mountingMethod", "a way to hold a box");

    internal static readonly Codec<StudSide> StudSide = new WordCodec<StudSide>("studSide", "a side of a stud");

    /// <summary>Datums by the names that heights are printed with.</summary>
    internal static readonly Codec<Datum> Datum = new WordCodec<Datum>(
        "datum", "a datum", Array.ConvertAll(Enum.GetValues<Datum>(), datum => ((object)datum, DatumText.Name(datum))));

    internal static readonly Codec<CeilingOrigin> CeilingOrigin = new WordCodec<CeilingOrigin>("ceilingOrigin", "a subfloor to measure from");

    internal static readonly Codec<JoistRun> JoistRun = new WordCodec<JoistRun>("joistRun", "which way joists run");
}
