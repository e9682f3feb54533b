using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using BoxHeights.Tests.Cases;
using Xunit;
using static BoxHeights.Tests.Rules.RequiredOutletSketch;

namespace BoxHeights.Tests.Rules;

/// <summary>The limits within which an outlet is one that a dwelling has to have, one tick inside, at and beyond.</summary>
public sealed class RequiredOutletTests
{
    private static readonly Distance Tick = Distance.FromTicks(1);

    [Fact]
    public void Outlet_OneTickInsideAtAndBeyondItsLimit_TurnsJustPastIt() => Assert.All(CaseFile.Table("required-outlets.csv"), Try);

    internal static void Try(Dictionary<string, string> row)
    {
        Distance limit = In(row["value"]);
        bool gap = row["expected"] == "lacking at the limit";
        NecEdition edition = (NecEdition)int.Parse(row["edition"], CultureInfo.InvariantCulture);
        foreach ((Distance off, bool beyond) in new[] { (limit - Tick, false), (limit, false), (limit + Tick, true) })
        {
            Evaluation evaluation = Evaluate(edition, row["rule"], edition == NecEdition.Nec2017 && row["rule"] == "deck-receptacle" ? WithADoor(House(row["what"], off)) : House(row["what"], off));
            bool lacks = gap ? !beyond : beyond;
            Assert.True((evaluation.Findings.Count == 1 && evaluation.Findings[0].Verdict == Verdict.Fails) == lacks && evaluation.Findings.Count <= 1,
                string.Join(",", row.Values) + " at " + off + ": " + string.Join("\n", evaluation.Findings.Select(one => one.Message).Concat(evaluation.NotJudged)));
        }

        Citation citation = RuleSets.UnitedStatesOutlets(edition).Row(row["rule"]).Citation;
        Assert.Equal((row["section"], row["status"] == "memory"), (citation.Section, citation.Confidence == Confidence.FromMemory));
    }

    private static Dwelling House(string what, Distance off) => what switch
    {
        "off the basin along the wall" => (Bath(In("40"), In("0")) with { North = [Receptacle(In("58") + off, "44")] }).House(),
        "below the basin's top" => (Bath(In("40"), In("0")) with { North = [Receptacle(In("62"), "44").WithHeight(BoxHeight.ToCenter(In("34") - off, Datum.FinishedFloor))] }).House(),
        "above the floor" => (Bath(In("40"), In("0")) with { North = [Receptacle(In("62"), "44").WithHeight(BoxHeight.ToCenter(off, Datum.FinishedFloor))] }).House(),
        "off the washer along the wall" => OffAppliance(RoomKind.Laundry, "washer", BoxPurpose.Laundry, off),
        "off the dryer along the wall" => OffAppliance(RoomKind.Laundry, "dryer", BoxPurpose.Dryer, off),
        "off the refrigerator along the wall" => OffAppliance(RoomKind.Kitchen, "refrigerator", BoxPurpose.Refrigerator, off),
        "off the dishwasher along the wall" => OffAppliance(RoomKind.Kitchen, "dishwasher", BoxPurpose.Dishwasher, off),
        "off the range along the wall" => OffAppliance(RoomKind.Kitchen, "range", BoxPurpose.Range, off),
        "off the furnace along the wall" => new SquareRoom
        {
            Kind = RoomKind.Utility,
            Wide = In("500"),
            Fixtures = [SquareRoom.Against("furnace", FixtureKind.Furnace, "north", In("10"), In("40"), In("28"))],
            North = [Receptacle(In("40") + off, "44")],
        }.House(),
        "off the outdoor unit along the wall" => new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey.WithGradeBelowSubfloor(In("12")) }).WithOutside(new[]
        {
            new OutsideFace("side").WithFixtures(new[] { SquareRoom.Against("unit", FixtureKind.Condenser, "face", In("10"), In("40"), In("30")) })
                .WithWalls(new[] { new Wall("face", In("500")).WithBoxes(new[] { Receptacle(In("40") + off, "30").WithPurpose(BoxPurpose.Exterior) }) }),
        }),
        "above the garage floor" => AboveTheFloor(RoomKind.Garage, BoxPurpose.Garage, off),
        "above the laundry floor" => AboveTheFloor(RoomKind.Laundry, BoxPurpose.Laundry, off),
        "above the basement floor" => AboveTheFloor(RoomKind.Basement, BoxPurpose.Basement, off),
        "width of a vehicle door" => new SquareRoom
        {
            Kind = RoomKind.Garage,
            Wide = In("264"),
            SouthOpenings = [new("door", OpeningKind.GarageDoor, In("20"), In("20") + off)],
            North = [Receptacle(In("62"), "44").WithPurpose(BoxPurpose.Garage)],
        }.House(),
        "above grade" => Front(off),
        "beyond the deck's end" => Deck(In("1"), In("20")).WithBoxes(box => box.WithAt(In("250") + off)),
        "before the deck's end" => Deck(In("1"), In("20")).WithBoxes(box => box.WithAt(In("100") - off)),
        "off the entrance along the wall" => Entrances([100], [off + In("136")]),
        "gap to the deck" => Deck(off, null),
        _ => Deck(In("1"), off),
    };

    /// <summary>Until 2017 a deck counts that a door leads to.</summary>
    private static Dwelling WithADoor(Dwelling house) => house.WithOutside(house.Outside.Select(face => face.WithWalls(face.Walls.Select(wall => wall.WithOpenings(new[] { new Opening("door", OpeningKind.Door, In("200"), In("236")) })))));


    private static Dwelling AboveTheFloor(RoomKind room, BoxPurpose purpose, Distance off) =>
        new SquareRoom { Kind = room, North = [Receptacle(In("62"), "44").WithPurpose(purpose).WithHeight(BoxHeight.ToCenter(off, Datum.FinishedFloor))] }.House();

    private static Dwelling OffAppliance(RoomKind room, string appliance, BoxPurpose purpose, Distance off) => new SquareRoom
    {
        Kind = room,
        Fixtures = [SquareRoom.Against(appliance, new FixtureKind(appliance), "north", In("10"), In("40"), In("28"))],
        North = [Receptacle(In("40") + off, "44").WithPurpose(purpose)],
    }.House();
}
