using System.Text.Json.Serialization;
using BoxHeights.Interop;

namespace BoxHeights;

// The types say where they are read and written; here, so that their own rooms know nothing of JSON.

[JsonConverter(typeof(ValueJsonConverter<Distance>))]
public readonly partial record struct Distance;

[JsonConverter(typeof(ValueJsonConverter<DistanceRange>))]
public readonly partial record struct DistanceRange;

[JsonConverter(typeof(ValueJsonConverter<Volume>))]
public readonly partial record struct Volume;

[JsonConverter(typeof(ValueJsonConverter<Ratio>))]
public readonly partial record struct Ratio;

[JsonConverter(typeof(ValueJsonConverter<ExactDistance>))]
public readonly partial record struct ExactDistance;

[JsonConverter(typeof(ValueJsonConverter<Quantity>))]
public readonly partial record struct Quantity;

[JsonConverter(typeof(ValueJsonConverter<QuantitySet>))]
public readonly partial record struct QuantitySet;

[JsonConverter(typeof(ValueJsonConverter<BoxHeight>))]
public readonly partial record struct BoxHeight;

[JsonConverter(typeof(ValueJsonConverter<Level>))]
public readonly partial record struct Level;

[JsonConverter(typeof(ValueJsonConverter<SurfaceAddress>))]
public readonly partial record struct SurfaceAddress;

[JsonConverter(typeof(ValueJsonConverter<PlanPoint>))]
public readonly partial record struct PlanPoint;

[JsonConverter(typeof(ValueJsonConverter<BoxSize>))]
public readonly partial record struct BoxSize;

[JsonConverter(typeof(ValueJsonConverter<CableType>))]
public readonly partial record struct CableType;

[JsonConverter(typeof(ValueJsonConverter<ConductorSize>))]
public readonly partial record struct ConductorSize;

[JsonConverter(typeof(ValueJsonConverter<LooseConductors>))]
public readonly partial record struct LooseConductors;

[JsonConverter(typeof(ValueJsonConverter<Occupancy>))]
public readonly partial record struct Occupancy;

[JsonConverter(typeof(ValueJsonConverter<RoomKind>))]
public readonly partial record struct RoomKind;

[JsonConverter(typeof(ValueJsonConverter<CounterKind>))]
public readonly partial record struct CounterKind;

[JsonConverter(typeof(ValueJsonConverter<InterruptionKind>))]
public readonly partial record struct InterruptionKind;

[JsonConverter(typeof(ValueJsonConverter<CoveringKind>))]
public readonly partial record struct CoveringKind;

[JsonConverter(typeof(ValueJsonConverter<FinishKind>))]
public readonly partial record struct FinishKind;

[JsonConverter(typeof(ValueJsonConverter<FixtureKind>))]
public readonly partial record struct FixtureKind;

[JsonConverter(typeof(ValueJsonConverter<FreestandingKind>))]
public readonly partial record struct FreestandingKind;

[JsonConverter(typeof(ValueJsonConverter<NoCavityKind>))]
public readonly partial record struct NoCavityKind;

[JsonConverter(typeof(ValueJsonConverter<OpeningKind>))]
public readonly partial record struct OpeningKind;

[JsonConverter(typeof(ValueJsonConverter<PlatformKind>))]
public readonly partial record struct PlatformKind;

[JsonConverter(typeof(ValueJsonConverter<BoxPurpose>))]
public readonly partial record struct BoxPurpose;

[JsonConverter(typeof(ValueJsonConverter<BoxKind>))]
public readonly partial record struct BoxKind;

[JsonConverter(typeof(ValueJsonConverter<PlateKind>))]
public readonly partial record struct PlateKind;

[JsonConverter(typeof(ValueJsonConverter<DeviceKind>))]
public readonly partial record struct DeviceKind;

[JsonConverter(typeof(ValueJsonConverter<FloorBuildup>))]
public sealed partial record FloorBuildup;

[JsonConverter(typeof(ValueJsonConverter<DeviceBox>))]
public sealed partial record DeviceBox;

[JsonConverter(typeof(ValueJsonConverter<Wall>))]
public sealed partial record Wall;

[JsonConverter(typeof(ValueJsonConverter<Room>))]
public sealed partial record Room;

[JsonConverter(typeof(ValueJsonConverter<Storey>))]
public sealed partial record Storey;

[JsonConverter(typeof(ValueJsonConverter<Dwelling>))]
public sealed partial record Dwelling;

[JsonConverter(typeof(ValueJsonConverter<PracticeTable>))]
public sealed partial record PracticeTable;

[JsonConverter(typeof(ValueJsonConverter<DistanceSet>))]
public readonly partial record struct DistanceSet;

[JsonConverter(typeof(ValueJsonConverter<Elevation>))]
public readonly partial record struct Elevation;

[JsonConverter(typeof(ValueJsonConverter<PlateSize>))]
public readonly partial record struct PlateSize;

[JsonConverter(typeof(ValueJsonConverter<OperableParts>))]
public readonly partial record struct OperableParts;
