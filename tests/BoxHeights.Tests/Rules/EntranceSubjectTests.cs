using Xunit;
using static BoxHeights.Tests.Rules.RequiredOutletSketch;

namespace BoxHeights.Tests.Rules;

/// <summary>A switch behind each entrance, for the light at it.</summary>
public sealed class EntranceSubjectTests
{
    // Which light a switch controls isn't described: any in the room behind the door will do, none makes it a question, and without a room nothing is said.
    [Theory]
    [InlineData("face says", true, 0)]
    [InlineData("face says", false, 1)]
    [InlineData("room says", true, 0)]
    [InlineData("room says", false, 1)]
    [InlineData("nobody says", false, 0)]
    public void LightAtAnEntrance_HasASwitchInTheRoomBehindIt(string who, bool hasSwitch, int found)
    {
        SquareRoom foyer = new()
        {
            Kind = RoomKind.Foyer,
            North = [hasSwitch ? SquareRoom.Box("switch", "switch", In("60"), In("46")) : SquareRoom.Box("thermostat", "thermostat", In("60"), In("60"))],
            NorthIsBackOf = who == "room says" ? "front/face" : null,
        };
        Room switched = new SquareRoom { Kind = RoomKind.Office, North = [SquareRoom.Box("switch", "switch", In("40"), In("46")).WithId("s")] }.Build().WithId("other");
        Wall wall = new Wall("face", In("144")).WithOpenings(new[] { new Opening("door", OpeningKind.Door, In("20"), In("56")) }).WithBackOf(who == "face says" ? "square/north" : null)
            .WithBoxes(new[] { SquareRoom.Box("luminaire", "light", In("70"), In("66")).WithId("l").WithHeight(BoxHeight.ToCenter(In("66"), Datum.Subfloor)) });
        Dwelling house = foyer.House(switched).WithOutside(new[] { new OutsideFace("front").WithWalls(new[] { wall }) });
        Evaluation evaluation = Evaluate(NecEdition.Nec2023, "entrance-switch", house);
        Assert.Equal(found, evaluation.Findings.Count);
        Assert.All(evaluation.Findings, finding => Assert.Equal((Verdict.Unknown, MissingFacts.ServedFromOutside, "front"), (finding.Verdict, finding.Needs, finding.Subject)));
        Assert.Equal(who == "nobody says", evaluation.NotJudged.Contains("entrance-switch: it isn't said which room its entrance leads to (front)"));
    }
}
