using System;
using System.Collections.Generic;

namespace BoxHeights.Interop;

/// <summary>Whole texts, of documents and of values within other people's documents, and which codec each sort of value has.</summary>
internal static class JsonValues
{
    private static readonly Dictionary<Type, Codec> Codecs = new()
    {
        [typeof(Distance)] = Texts.Distance,
        [typeof(DistanceRange)] = Ranges.Distance,
        [typeof(Volume)] = Texts.Volume,
        [typeof(Ratio)] = Texts.Ratio,
        [typeof(ExactDistance)] = Texts.Exact,
        [typeof(Quantity)] = Quantities.One,
        [typeof(QuantitySet)] = Quantities.Set,
        [typeof(BoxHeight)] = Texts.Height,
        [typeof(Level)] = Texts.Level,
        [typeof(SurfaceAddress)] = Texts.Address,
        [typeof(PlanPoint)] = PlanPointCodec.Instance,
        [typeof(BoxSize)] = BoxShapes.Size,
        [typeof(CableType)] = Texts.Cable,
        [typeof(ConductorSize)] = Texts.Conductor,
        [typeof(LooseConductors)] = Texts.Conductors,
        [typeof(Occupancy)] = Kinds.Occupancy,
        [typeof(RoomKind)] = Kinds.RoomKind,
        [typeof(CounterKind)] = Kinds.CounterKind,
        [typeof(InterruptionKind)] = Kinds.InterruptionKind,
        [typeof(CoveringKind)] = Kinds.CoveringKind,
        [typeof(FinishKind)] = Kinds.FinishKind,
        [typeof(FixtureKind)] = Kinds.FixtureKind,
        [typeof(FreestandingKind)] = Kinds.FreestandingKind,
        [typeof(NoCavityKind)] = Kinds.NoCavityKind,
        [typeof(OpeningKind)] = Kinds.OpeningKind,
        [typeof(PlatformKind)] = Kinds.PlatformKind,
        [typeof(BoxPurpose)] = Kinds.BoxPurpose,
        [typeof(BoxKind)] = Kinds.BoxKind,
        [typeof(PlateKind)] = Kinds.PlateKind,
        [typeof(DeviceKind)] = Kinds.DeviceKind,
        [typeof(FloorBuildup)] = FloorCodec.Instance,
        [typeof(DeviceBox)] = BoxShapes.Box,
        [typeof(Wall)] = WallShapes.Wall,
        [typeof(Room)] = RoomShapes.Room,
        [typeof(Storey)] = DwellingShapes.Storey,
        [typeof(Dwelling)] = DwellingShapes.Dwelling,
        [typeof(PracticeTable)] = PracticeShapes.Table,
    };

    /// <summary>How a sort of value is read and written.</summary>
    /// <exception cref="NotSupportedException">It has no text that could be read back.</exception>
    internal static Codec Codec(Type type) => Codecs.TryGetValue(type, out Codec? codec)
        ? codec
        : throw new NotSupportedException(type.Name + " has no form in JSON that could be read back; write what you need of it.");

    /// <summary>Reads a whole text as one value.</summary>
    /// <param name="codec">How it is read.</param>
    /// <param name="text">Valid UTF-8.</param>
    /// <exception cref="BoxHeightsJsonException">It is no such value; the exception has all that is wrong.</exception>
    internal static object Read(Codec codec, ReadOnlySpan<byte> text)
    {
        JsonIn input = new(text);
        object? value = null;
        try
        {
            input.Next();
            JsonMark mark = input.Mark();
            try
            {
                value = codec.Read(ref input);
            }
            catch (BoxHeightsJsonException fault) when (!input.HasEnded)
            {
                input.GoOnAfter(fault, new(mark.Depth, mark.Steps - 1));
            }

            // Anything after the value is a fault, which this finds.
            input.Next();
        }
        catch (BoxHeightsJsonException last)
        {
            // Where faults are too many it is the last of those noted.
            if (input.Faults.Count < JsonLimits.Faults)
            {
                input.Faults.Add(last.Error);
            }
        }

        return input.Faults.Count == 0 ? value! : throw new BoxHeightsJsonException(input.Faults.ToArray());
    }
}
