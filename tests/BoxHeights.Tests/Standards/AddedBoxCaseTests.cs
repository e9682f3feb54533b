using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Standards;

/// <summary>At what height a box is added that a document asks for, where no other of its purpose shows one. Common practice, no source.</summary>
public sealed class AddedBoxCaseTests
{
    private static readonly DeviceBox Other = new DeviceBox("other", BoxPurpose.Thermostat).WithDevices(new[] { DeviceKind.Thermostat }).WithAt(In("10")).WithHeight(BoxHeight.Parse("60 in to center above subfloor"));

    public static TheoryData<string> Cases => new(CaseFile.Table("added-boxes.csv").Select(row => row["rule"] + " " + row["edition"]));

    [Theory]
    [MemberData(nameof(Cases))]
    public void Remedy_OfWhatIsLacking_IsAtTheUsualHeight(string id)
    {
        Dictionary<string, string> row = CaseFile.Table("added-boxes.csv").Single(one => one["rule"] + " " + one["edition"] == id);
        string rule = row["rule"];
        RuleSet rules = OneBox.Only(row["set"] == "canada" ? RuleSets.CanadaDwelling : RuleSets.UnitedStatesOutlets((NecEdition)int.Parse(row["edition"], CultureInfo.InvariantCulture)), rule);
        Evaluation evaluation = new LayoutEvaluator(rules, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true)).Evaluate(House(rule));
        AddBox added = Assert.IsType<AddBox>(Assert.Single(evaluation.Findings).Remedies[0]);
        Distance height = CaseFile.Length(row["height"], row["unit"]);
        Datum datum = row["datum"] == "grade" ? Datum.Grade : Datum.Subfloor;
        Assert.Equal(row["edge"] switch { "bottom" => BoxHeight.ToBottom(height, datum), "top" => BoxHeight.ToTop(height, datum), _ => BoxHeight.ToCenter(height, datum) }, added.Placed[0].Box.Height);
    }

    private static Dwelling House(string rule) => rule switch
    {
        "bath-receptacle" => RequiredOutletSketch.Bath(In("40"), In("0")).House(),
        "canada-bath-receptacle" => RequiredOutletSketch.Bath(In("60"), In("0")).House(),
        "canada-service-receptacle" => Bare(RoomKind.Utility),
        "laundry-receptacle" => Bare(RoomKind.Laundry),
        "garage-bay" => Bare(RoomKind.Garage),
        "basement-receptacle" => Bare(RoomKind.Basement),
        "hvac-receptacle" => new SquareRoom { Kind = RoomKind.Utility, Wide = In("300"), Fixtures = [SquareRoom.Against("furnace", FixtureKind.Furnace, "north", In("40"), In("70"), In("28"))], North = [Other] }.House(),
        "outdoor-unit-receptacle" => Outside(face => face.WithFixtures(new[] { SquareRoom.Against("unit", FixtureKind.Condenser, "face", In("140"), In("170"), In("30")) })),
        "deck-receptacle" => Outside(face => face.WithPlatforms(new[] { new Platform("deck", PlatformKind.Deck, In("100"), In("250")).WithGap(In("1")).WithSurface(new Level(In("30"), Datum.Grade)) })
            .WithWalls(face.Walls.Select(wall => wall.WithOpenings(new[] { new Opening("door", OpeningKind.Door, In("200"), In("236")) })))),
        "entrance-light" => Outside(face => face.WithWalls(face.Walls.Select(wall => wall.WithOpenings(new[] { new Opening("door", OpeningKind.Door, In("100"), In("136")) })))),
        "front-and-back" => Outside(face => face),
        "hall-outlet" => RoomSketch.House("hall", ["130", "40", "130", "40"]),
        "foyer-outlets" => RoomSketch.House("foyer", ["120 door:0:40 door:80:120", "120 door:0:120", "120 door:0:120", "120 door:0:120"]),
        "wall-outlets" => RoomSketch.House("bedroom", ["120 door:0:20 door:90:120"]),
        "counter-outlets" => RoomSketch.House("kitchen", ["120 kitchen:20:60"]),
        "stair-switches" => StairRuleTests.House(new StairFlight("main", "low", "high", 14).WithTread(In("10")).WithFirstNosing(In("20")).WithWall("hall/stair"), [], [Other]),
        "canada-wall-outlets" => RoomSketch.House("bedroom", ["3000 cased:0:300 cased:2700:3000"], metric: true),
        _ => RoomSketch.House("kitchen", ["3000 kitchen:500:1500"], metric: true),
    };

    private static Dwelling Bare(RoomKind kind) => new SquareRoom { Kind = kind, North = [Other] }.House();

    private static Dwelling Outside(Func<OutsideFace, OutsideFace> change) => new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey.WithGradeBelowSubfloor(In("36")) })
        .WithOutside(new[] { change(new OutsideFace("front").WithWalls(new[] { new Wall("face", In("300")).WithBoxes(new[] { Other }) })) });
}
