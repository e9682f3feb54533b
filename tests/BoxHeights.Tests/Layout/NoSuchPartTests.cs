using System;
using Xunit;

namespace BoxHeights.Tests.Layout;

/// <summary>Whoever names what isn't there is told what is: the part that was nearly spelled so, or the walls of the room.</summary>
public sealed class NoSuchPartTests
{
    private static readonly RuleSet Rules = RuleSets.RoughInPractice;

    [Theory]
    [InlineData("kitchen/nroth", "The dwelling has no wall \"kitchen/nroth\": is \"kitchen/north\" meant?")]
    [InlineData("kitchen/back-of-house", "The dwelling has no wall \"kitchen/back-of-house\"; there are: kitchen/north, kitchen/east.")]
    [InlineData("scullery/left", "The dwelling has no wall \"scullery/left\".")]
    public void Wall_ThatIsNotThere_IsToldWhatIs(string address, string message)
    {
        Evaluation evaluation = new LayoutEvaluator(Rules).Evaluate(House());
        LayoutSession session = new LayoutEvaluator(Rules).Open(House());
        Action[] asked =
        [
            () => evaluation.Wall(address), () => WallElevation.For(evaluation, address),
            () => session.ChangeWall(address, wall => wall), () => session.Move("switch-1", address, In(20), BoxHeight.ToTop(In(48), Datum.Subfloor)),
        ];
        Assert.All(asked, ask => Assert.StartsWith(message, Assert.Throws<ArgumentException>(ask).Message, StringComparison.Ordinal));
    }

    [Fact]
    public void BoxAndSurface_ThatAreNotThere_AreToldWhatIs()
    {
        LayoutSession session = new LayoutEvaluator(Rules).Open(House());
        string Said(Action ask) => Assert.Throws<ArgumentException>(ask).Message.Split(" (Parameter")[0].Split('\n', '\r')[0];
        Assert.Equal("The dwelling has no box \"swich-1\": is \"switch-1\" meant?", Said(() => session.Remove("swich-1")));
        Assert.Equal("The dwelling has no box \"swich-1\": is \"switch-1\" meant?", Said(() => House().WithoutBox("swich-1")));
        Assert.Equal("The dwelling has no box \"R1\".", Said(() => session.Remove("R1")));
        Assert.Equal("The dwelling has no surface \"kitchen/west-wall\"; there are: kitchen/north, kitchen/east.", Said(() => session.Add("kitchen/west-wall", new DeviceBox("new", BoxPurpose.General))));
        Evaluation evaluation = session.Evaluate();
        Assert.Equal("The dwelling has no part \"kitchen/west-wall\"; there are: kitchen/north, kitchen/east.", Said(() => evaluation.For("kitchen/west-wall")));
        Assert.Equal("The dwelling has no part \"kitchn\": is \"kitchen\" meant?", Said(() => evaluation.For("kitchn")));
        Assert.StartsWith("The dwelling has no part \"R1\": give the id of a box, room,", Said(() => evaluation.For("R1")), StringComparison.Ordinal);
        Assert.Equal("The room \"kitchen\" has no wall \"w1\"; it has: north, east.", Said(() => Room(new DwellingBuilder("x")).FindWall("w1")));
        Assert.StartsWith("There is no row \"board-seem\": is \"board-seam\" meant? There are: ", Said(() => Rules.Row("board-seem")), StringComparison.Ordinal);
        Assert.StartsWith("There is no row \"banana-split-over-all\"; there are: ", Said(() => Rules.Row("banana-split-over-all")), StringComparison.Ordinal);
    }

    private static Dwelling House()
    {
        DwellingBuilder house = new("case");
        Room(house).FindWall("north").Add(new DeviceBox("switch-1", BoxPurpose.Switch).WithDevices(DeviceKind.Switch).WithAt(In(40)).WithHeight(BoxHeight.ToTop(In(48), Datum.Subfloor)));
        return house.Build();
    }

    private static RoomBuilder Room(DwellingBuilder house)
    {
        RoomBuilder room = house.Add(new Storey("first")).Room("kitchen", RoomKind.Kitchen, "first");
        room.Wall("north", In(144));
        room.Wall("east", In(120));
        return room;
    }
}
