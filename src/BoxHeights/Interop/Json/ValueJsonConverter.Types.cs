using System.Text.Json.Serialization;
using BoxHeights.Interop;

namespace BoxHeights;

// The types say where they are read and written; here, so that their own rooms know nothing of JSON.

[JsonConverter(typeof(ValueJsonConverter<Distance>))]
public readonly partial struct Distance;

[JsonConverter(typeof(ValueJsonConverter<DistanceRange>))]
public readonly partial struct DistanceRange;

[JsonConverter(typeof(ValueJsonConverter<Volume>))]
public readonly partial struct Volume;

[JsonConverter(typeof(ValueJsonConverter<Ratio>))]
public readonly partial struct Ratio;

[JsonConverter(typeof(ValueJsonConverter<BoxHeight>))]
public readonly partial struct BoxHeight;

[JsonConverter(typeof(ValueJsonConverter<Level>))]
public readonly partial struct Level;

[JsonConverter(typeof(ValueJsonConverter<PlanPoint>))]
public readonly partial struct PlanPoint;

[JsonConverter(typeof(ValueJsonConverter<BoxSize>))]
public readonly partial struct BoxSize;

[JsonConverter(typeof(ValueJsonConverter<CableType>))]
public readonly partial struct CableType;

[JsonConverter(typeof(ValueJsonConverter<ConductorSize>))]
public readonly partial struct ConductorSize;

[JsonConverter(typeof(ValueJsonConverter<LooseConductors>))]
public readonly partial struct LooseConductors;

[JsonConverter(typeof(ValueJsonConverter<Occupancy>))]
public readonly partial struct Occupancy;

[JsonConverter(typeof(ValueJsonConverter<RoomKind>))]
public readonly partial struct RoomKind;

[JsonConverter(typeof(ValueJsonConverter<CounterKind>))]
public readonly partial struct CounterKind;

[JsonConverter(typeof(ValueJsonConverter<InterruptionKind>))]
public readonly partial struct InterruptionKind;

[JsonConverter(typeof(ValueJsonConverter<CoveringKind>))]
public readonly partial struct CoveringKind;

[JsonConverter(typeof(ValueJsonConverter<FinishKind>))]
public readonly partial struct FinishKind;

[JsonConverter(typeof(ValueJsonConverter<FixtureKind>))]
public readonly partial struct FixtureKind;

[JsonConverter(typeof(ValueJsonConverter<FreestandingKind>))]
public readonly partial struct FreestandingKind;

[JsonConverter(typeof(ValueJsonConverter<NoCavityKind>))]
public readonly partial struct NoCavityKind;

[JsonConverter(typeof(ValueJsonConverter<OpeningKind>))]
public readonly partial struct OpeningKind;

[JsonConverter(typeof(ValueJsonConverter<PlatformKind>))]
public readonly partial struct PlatformKind;

[JsonConverter(typeof(ValueJsonConverter<BoxPurpose>))]
public readonly partial struct BoxPurpose;

[JsonConverter(typeof(ValueJsonConverter<BoxKind>))]
public readonly partial struct BoxKind;

[JsonConverter(typeof(ValueJsonConverter<PlateKind>))]
public readonly partial struct PlateKind;

[JsonConverter(typeof(ValueJsonConverter<DeviceKind>))]
public readonly partial struct DeviceKind;

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
public readonly partial struct DistanceSet;

[JsonConverter(typeof(ValueJsonConverter<ExactDistance>))]
public readonly partial struct ExactDistance;

[JsonConverter(typeof(ValueJsonConverter<Elevation>))]
public readonly partial struct Elevation;

[JsonConverter(typeof(ValueJsonConverter<GaugeStick>))]
public readonly partial struct GaugeStick;

[JsonConverter(typeof(ValueJsonConverter<PlateSize>))]
public readonly partial struct PlateSize;

[JsonConverter(typeof(ValueJsonConverter<OperableParts>))]
public readonly partial struct OperableParts;
