using System.Linq;

namespace BoxHeights.Tests.Rules;

/// <summary>A room of four walls, north first, whose plan points are counted from its north-west corner, to the right and toward the south.</summary>
internal sealed record SquareRoom
{
    public const string Id = "square";

    public RoomKind Kind { get; init; } = RoomKind.Bathroom;

    public Distance Wide { get; init; } = Distance.FromFeet(12);

    public Distance Deep { get; init; } = Distance.FromFeet(10);

    public Fixture[] Fixtures { get; init; } = [];

    public DeviceBox[] North { get; init; } = [];

    public DeviceBox[] West { get; init; } = [];

    public DeviceBox[] Overhead { get; init; } = [];

    public Counter[] NorthCounters { get; init; } = [];

    public Opening[] SouthOpenings { get; init; } = [];

    public string? NorthIsBackOf { get; init; }

    public Opening[] NorthOpenings { get; init; } = [];

    public Room Build() => new Room(Id, Kind, "ground").WithFloor(OneBox.Floor(Distance.Zero)).WithFixtures(Fixtures).WithOverhead(Overhead).WithWalls(new[]
    {
        new Wall("north", Wide).WithBoxes(North).WithCounters(NorthCounters).WithBackOf(NorthIsBackOf).WithOpenings(NorthOpenings),
        new Wall("east", Deep),
        new Wall("south", Wide).WithOpenings(SouthOpenings),
        new Wall("west", Deep).WithBoxes(West),
    });

    public Dwelling House(params Room[] others) => new Dwelling("case").WithStoreys(new[] { Storey }).WithRooms(others.Prepend(Build()).ToArray());

    public static Storey Storey { get; } = new Storey("ground").WithCeiling(new Ceiling().WithFraming(Distance.FromInches(97, 1, 8)).WithBoard(Distance.FromInches(0, 1, 2)));

    public static DeviceBox Box(string device, string purpose, Distance? at, Distance center) => new DeviceBox(OneBox.Id, new BoxPurpose(purpose))
        .WithDevices(new[] { new DeviceKind(device) }).WithAt(at).WithHeight(BoxHeight.ToCenter(center, Datum.FinishedFloor));

    public static Fixture Against(string id, FixtureKind kind, string wall, Distance left, Distance right, Distance depth) =>
        new Fixture(id, kind).WithWall(wall).WithLeft(left).WithRight(right).WithDepth(depth);
}
