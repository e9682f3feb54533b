using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Standards;

/// <summary>The numbers of customs: what a remedy does just under, at and just over each. Common practice, no source.</summary>
public sealed partial class HabitCaseTests
{
    private static readonly Dictionary<string, Func<Distance, string>> Scenes = new(StringComparer.Ordinal)
    {
        ["room-for-boxes off an opening"] = value => InALaundry(wall => wall.WithOpenings(new[] { new Opening("a", OpeningKind.Cased, Distance.Zero, In("60") - value), new Opening("b", OpeningKind.Cased, In("60") + value, In("120")) })),
        ["room-for-boxes off openings in need"] = Strip,
        ["room-for-boxes off the ends of a wall"] = value => InALaundry(wall => wall.WithLength(value + value)),
        ["room-for-boxes depth of the cavity"] = value => InALaundry(wall => wall.WithCavity(value)),
        ["room-for-boxes off the ends of a wall at a stair"] = AtAStair,
        ["wall-outlets sill that a receptacle goes under"] = value => Only(RoomSketch.House("bedroom", ["150 window:0:150"]).WithSills(value), "wall-outlets"),
        ["counter-outlets sill that a receptacle goes under"] = value => Only(RoomSketch.House("kitchen", ["100 kitchen:20:80 window:0:100"]).WithSills(value), "counter-outlets"),
        ["stair-path-lights above the nosing"] = PathLight,
        ["board-seam across the seam"] = value => Severity(OverTheSeam(value), "board-seam"),
        ["specified-height off the drawing"] = value => Severity(Drawn(value), "specified-height"),
        ["specified-height under the drawing"] = value => Severity(Drawn(-value), "specified-height"),
        ["uniform-level off the others"] = value => Level("uniform-level", BoxPurpose.General, value),
        ["room-level off the others"] = value => Level("room-level", BoxPurpose.Bath, value),
        ["box-proud past the surface"] = value => Severity(SetFor(In("1/2") + value), "box-proud"),
        ["room-for-boxes aside"] = AtAnEntrance,
        ["room-for-boxes of a reach in hand"] = OnARun,
        ["bedroom-alarm off two walls"] = value => YesNo(Plan(new SquareRoom { Kind = RoomKind.Bedroom, Wide = In("144"), Deep = In("144") }.House(), "bedroom-alarm").Dwelling.FindBox("square-alarm")!.Box.Plan == new PlanPoint(value, value)),
        ["room-for-boxes further from a bed than it has to be"] = value => YesNo(BesideABed(BoxPurpose.Bedside)[0] == In("60") - In("2") - value),
        ["room-for-boxes between plates"] = value => YesNo(BesideABed(BoxPurpose.Bedside, BoxPurpose.BedSwitch) is [var first, var second, ..] && (second - first).Abs() == In("2-3/4") + value),
        ["entrance-switches to the far door of a hall"] = InAHall,
        ["entrance-switches to the corner"] = value => YesNo(Places("107", In("144") - value, In("2-1/4"), Cupboard(In("144") - value)).Any(place => place.Kind == SwitchPlaceKind.ReturnWall)),
        ["entrance-switches between plate and casing"] = value => YesNo(Places("60", In("92"), In("3-9/16") - value)[0].At == In("96-1/8")),
        ["entrance-switches board round the corner"] = value => YesNo(Places("60", In("138-1/2") - value, In("2-1/4"))[0].Kind == SwitchPlaceKind.LatchSide),
        ["entrance-switches bottom of a cabinet over it"] = value => Covered(one => one.WithBottom(new Level(value, Datum.Subfloor)), "over it"),
        ["entrance-switches top of a cabinet under it"] = value => Covered(one => one.WithTop(new Level(value, Datum.Subfloor)), "under it"),
        ["room-for-boxes aside to the next bay"] = BehindACabinet,
        ["entrance-switches height where nothing else says it"] = value => YesNo(SwitchAlone() == BoxHeight.ToTop(value, Datum.Subfloor)),
        ["entrance-switches between two ways in of three"] = WithThreeWaysIn,
        ["foyer-outlets wall with its own"] = OnAFoyersWall,
        ["wall-outlets wall with its own"] = value => OnAWallBetween(value, Outlets.Row("wall-outlets")),
        ["canada-wall-outlets wall with its own"] = value => OnAWallBetween(value, RuleSets.CanadaDwelling.Row("canada-wall-outlets")),
        ["usual-door-opener behind the door"] = value => YesNo(Opener() == value),
        ["disposal-switch off the disposal"] = BesideADisposal,
        ["usual-doorbell off the casing"] = value => YesNo(Bell() == In("136") + value),
        ["usual-chime height"] = value => YesNo(Chime() == BoxHeight.ToCenter(value, Datum.Subfloor)),
        ["beside-bed off its side"] = value => Beside(FixtureKind.Bed, value, "beside-bed"),
        ["beside-furniture off its side"] = value => Beside(FixtureKind.Desk, value, "beside-furniture"),
    };

    public static TheoryData<string> Cases => new(CaseFile.Table("habits.csv").Select(row => row["row"] + " " + row["number"]));

    [Theory]
    [MemberData(nameof(Cases))]
    public void Number_OneStepUnderAtAndOver_DoesWhatTheCaseSays(string id)
    {
        Dictionary<string, string> row = CaseFile.Table("habits.csv").Single(one => one["row"] + " " + one["number"] == id);
        Distance value = CaseFile.Length(row["value"], row["unit"]);
        Distance step = row["step"] == "tick" ? Distance.FromTicks(1) : CaseFile.Length(row["step"], row["unit"]);
        Func<Distance, string> scene = Scenes[id];
        Assert.Equal((row["under"], row["at"], row["over"]), (scene(value - step), scene(value), scene(value + step)));
    }
}
