using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Standards;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Nothing is asked of what is no part of the work, and what is new is held against it.</summary>
public sealed class UntouchedTests
{
    private static readonly LayoutEvaluator All = new(RuleSets.OfAHouse);

    [Fact]
    public void Room_Untouched_IsAskedForNothingAndSaysSo()
    {
        Dwelling house = OldRoom(room => room);
        string[] asked = [.. All.Evaluate(house).Findings.Select(finding => finding.RuleId).Distinct()];
        Assert.Contains("wall-outlets", asked);
        Assert.Contains("switch-reach", asked);
        Assert.Contains("room-light", asked);
        Assert.Contains("box-fill", asked);
        Evaluation evaluation = All.Evaluate(OldRoom(room => room.WithUntouched(true)));
        Assert.Empty(evaluation.Findings);
        Assert.Contains("No part of this work, so that nothing is asked of it: square.", evaluation.ToText(), StringComparison.Ordinal);
        Assert.DoesNotContain(evaluation.Judgements, one => one.Subject is "S" or "R" or "square");
    }

    [Fact]
    public void Box_Untouched_IsAskedForNothing_ThoughItsRoomIs()
    {
        Dwelling house = OldRoom(room => room).WithBoxes(box => box.WithUntouched(true));
        Evaluation evaluation = All.Evaluate(house);
        Assert.DoesNotContain(evaluation.Findings, finding => finding.Subject is "S" or "R");
        Assert.Contains(evaluation.Findings, finding => finding.RuleId == "wall-outlets");
        Assert.Contains("nothing is asked of it: S, R, L.", evaluation.ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Box_NewInAnUntouchedRoom_IsJudged()
    {
        Dwelling house = OldRoom(room => room.WithUntouched(true)).WithBoxes(box => box.Id == "S" ? box.WithUntouched(false) : box);
        Assert.All(All.Evaluate(house).Findings, finding => Assert.Equal("S", finding.Subject));
        Assert.Contains(All.Evaluate(house).Findings, finding => finding.RuleId == "switch-reach");
    }

    // Three old boxes share a level: a new one may be 1/4 in off it.
    [Fact]
    public void Level_OfUntouchedBoxes_IsWhatNewOnesAreHeldAgainst()
    {
        LayoutEvaluator level = new(OneBox.Only(RuleSets.RoughInPractice, "uniform-level"));
        Dwelling House(Distance center, bool untouched)
        {
            SquareRoom old = new() { Kind = RoomKind.Bedroom, North = [.. new[] { "30", "60", "90" }.Select(at => SquareRoom.Box("duplex-receptacle", "general", In(at), In("14")).WithId("old" + at))] };
            SquareRoom added = new() { Kind = RoomKind.Bedroom, North = [SquareRoom.Box("duplex-receptacle", "general", In("60"), center).WithId("new")] };
            return added.House(old.Build().WithId("old").WithUntouched(untouched));
        }

        Assert.True(level.Evaluate(House(In("14-1/4"), true)).IsClean);
        Finding finding = Assert.Single(level.Evaluate(House(In("14-1/4") + Tick, true)).Findings);
        Assert.Equal(("new", Verdict.Fails), (finding.Subject, finding.Verdict));

        // Three that are off it themselves aren't found, though they are the ones that differ from what most have.
        Dwelling mixed = House(In("14"), true).WithBoxes(box => box.Id == "old30" ? box.WithHeight(BoxHeight.ToCenter(In("20"), Datum.FinishedFloor)) : box);
        Assert.True(level.Evaluate(mixed).IsClean);
    }

    // Bodies of 2-1/4 in under plates of 2-3/4 in: of the two the new one is at fault, whatever its id and though it has to stay.
    [Theory]
    [InlineData("A")]
    [InlineData("Z")]
    public void NextBox_TooNearAnUntouchedOne_IsTheNewOne(string id)
    {
        LayoutEvaluator next = new(OneBox.Only(RuleSets.RoughInPractice, "next-box"));
        Dwelling House(Distance apart) => new SquareRoom
        {
            Kind = RoomKind.Bedroom,
            North =
            [
                SquareRoom.Box("duplex-receptacle", "general", In("60"), In("16")).WithId("M").WithUntouched(true),
                SquareRoom.Box("duplex-receptacle", "general", In("60") + apart, In("16")).WithId(id).WithPinned(true),
            ],
        }.House();
        Assert.True(next.Evaluate(House(In("2.75"))).IsClean);
        Assert.Equal(id, Assert.Single(next.Evaluate(House(In("2.75") - Tick)).Findings).Subject);
    }

    // What stands in a room counts, whoever set it: with its old receptacles untouched a wall lacks none.
    [Fact]
    public void Spacing_CountsUntouchedReceptacles()
    {
        LayoutEvaluator spacing = new(OneBox.Only(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023), "wall-outlets"));
        DeviceBox[] boxes = [.. new[] { "30", "110" }.Select(at => SquareRoom.Box("duplex-receptacle", "general", In(at), In("14")).WithId("r" + at).WithUntouched(true))];
        Dwelling house = new SquareRoom { Kind = RoomKind.Bedroom, North = boxes }.House();
        Assert.NotEqual(DwellingGen.Lines(spacing.Evaluate(house).Findings), DwellingGen.Lines(spacing.Evaluate(house.WithBoxes(box => box.WithPurpose(BoxPurpose.Media).WithDevices(new[] { DeviceKind.DataJack }))).Findings));
        Assert.Equal(DwellingGen.Lines(spacing.Evaluate(house).Findings), DwellingGen.Lines(spacing.Evaluate(house.WithBoxes(box => box.WithUntouched(null))).Findings));
    }

    [Fact]
    public void Box_UntouchedWithoutAHeight_IsNoFault()
    {
        Dwelling house = new SquareRoom { Kind = RoomKind.Bedroom, North = [SquareRoom.Box("duplex-receptacle", "general", In("60"), In("16")).WithHeight(null).WithUntouched(true)] }.House();
        Assert.Empty(new LayoutEvaluator(RuleSets.RoughInPractice).Evaluate(house).Findings);
        Assert.Single(new LayoutEvaluator(RuleSets.RoughInPractice).Evaluate(house.WithBoxes(box => box.WithUntouched(false))).Findings);
    }

    [Fact]
    public void Papers_LeaveUntouchedBoxesOut()
    {
        Dwelling house = OldRoom(room => room.WithUntouched(true));
        Assert.DoesNotContain(Output.Sheets.For(house, All.Rules).Rows, row => row.BoxId is "S" or "R");
        Assert.Empty(new RoughInPlanner(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice).Plan(house, "square").Reasons);
    }

    // Remodels: whatever is wrong with what an earlier crew left, good work beside it stays silent.
    [Fact]
    public void Remodel_OfAGoodHouse_IsSilent() => Prop.ForAll(OrdinaryHouses.Seeds, one =>
    {
        Dwelling house = OrdinaryHouses.Make(one.Seed, one.Rooms);
        Random random = new(one.Seed);
        HashSet<string> backs = [.. house.Rooms.SelectMany(room => room.Walls.Where(wall => wall.BackOf is not null).SelectMany(wall => new[] { room.Id, wall.BackOf!.Split('/')[0] }))];
        Evaluation evaluation = All.Evaluate(house.WithRooms(house.Rooms.Select(room => !backs.Contains(room.Id) && room.Kind != RoomKind.Stair && random.Next(2) == 0 ? Worn(room, random) : room)));
        Assert.True(evaluation.IsClean, string.Join("\n", evaluation.Findings.Select(finding => finding.Message)));
    }).Check(Tries.Config(400));

    /// <summary>A room that nobody works in: dark, its boxes at all heights, and too full.</summary>
    private static Room Worn(Room room, Random random) => room.WithUntouched(true)
        .WithOverhead(new Items<DeviceBox>(room.Overhead.Where(box => box.Purpose != BoxPurpose.Light)))
        .WithWalls(room.Walls.Select(wall => wall.WithBoxes(wall.Boxes.Select(box => box.Purpose == BoxPurpose.Alarm ? box : box
            .WithCables(box.Cables.With(CableType.Parse("12-3")).With(CableType.Parse("12-3")).With(CableType.Parse("12-3"))).WithVolume(Volume.FromCubicInches(18))
            .WithHeight(BoxHeight.ToCenter(In("60") + Distance.FromInches(random.Next(0, 160) / 16m), Datum.Subfloor))))));

    /// <summary>An old bedroom: a single receptacle, a switch out of reach, a box too full and no light; and another room with a light.</summary>
    private static Dwelling OldRoom(Func<Room, Room> change)
    {
        SquareRoom old = new()
        {
            Kind = RoomKind.Bedroom,
            North =
            [
                SquareRoom.Box("switch", "switch", In("60"), In("85")).WithId("S"),
                SquareRoom.Box("duplex-receptacle", "general", In("30"), In("14")).WithId("R").WithVolume(Volume.FromCubicInches(12.5m))
                    .WithCables(new[] { CableType.Parse("12-2"), CableType.Parse("12-2"), CableType.Parse("12-2") }),
            ],
        };
        Room lit = new Room("lit", RoomKind.Attic, "ground").WithOverhead(new[] { new DeviceBox("L", BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire }) });
        Dwelling house = old.House(lit);
        return house.WithRooms(house.Rooms.Select(room => room.Id == "square" ? change(room) : room));
    }

    private static Distance Tick => Distance.FromTicks(1);
}
