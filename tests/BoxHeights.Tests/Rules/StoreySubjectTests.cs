using Xunit;
using static BoxHeights.Tests.Rules.RequiredOutletSketch;

namespace BoxHeights.Tests.Rules;

/// <summary>Alarms on a storey, outside its bedrooms.</summary>
public sealed class StoreySubjectTests
{
    [Fact]
    public void Alarms_InABedroomAlone_AreLackingOutsideIt()
    {
        DeviceBox alarm = SquareRoom.Box("smoke-alarm", "alarm", In("40"), In("90"));
        Dwelling house = new SquareRoom { Kind = RoomKind.Bedroom, North = [alarm] }.House(new SquareRoom { Kind = RoomKind.Hall, North = [SquareRoom.Box("switch", "switch", In("40"), In("46")).WithId("s")] }.Build().WithId("hall"));
        Assert.Equal("ground", Assert.Single(Evaluate(NecEdition.Nec2023, "bedroom-hall-alarm", house).Findings).Subject);
        Assert.True(Evaluate(NecEdition.Nec2023, "storey-alarm", house).IsClean);

        // Where no room but the bedroom is described, nothing can be said.
        Assert.True(Evaluate(NecEdition.Nec2023, "bedroom-hall-alarm", house.WithRooms(new[] { house.Rooms[0] })).IsClean);
    }
}
