using System;
using System.Linq;
using System.Xml.Linq;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Rules;
using BoxHeights.Tests.Standards;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Pictures;

public sealed class RoomPictureTests
{
    [Fact]
    public void Labels_OfAnyRoom_OverlapNoOtherAndStayOnThePage() => Prop.ForAll(
        Arb.From(from seed in Gen.Choose(1, int.MaxValue) from width in Gen.Elements(240, 320, 960) select (Seed: seed, Width: width)),
        page =>
        {
            Dwelling house = OrdinaryHouses.Make(page.Seed, 4);
            Evaluation evaluation = new LayoutEvaluator(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.UnitedStatesOutlets(NecEdition.Nec2023)).Evaluate(house);
            foreach (Room room in house.Rooms)
            {
                Assert.Empty(new SvgReader(RoomPicture.For(evaluation, room.Id).ToSvg(PictureOptions.Default.WithWidth(page.Width))).Clashes().Take(5));
            }

            return house.Rooms.Count > 2;
        }).Check(Tries.Always(4));

    // Along the east wall one goes down the page from the first wall's right end.
    [Fact]
    public void Walls_ReadFromThePicture_AreWhereTheyAreInPlan()
    {
        RoomPicture picture = RoomPicture.For(Evaluated(), "room");
        SvgReader svg = new(picture.ToSvg());
        decimal scale = svg.Data("scale") / 1000m;
        foreach (PlanWall wall in picture.Room.Walls)
        {
            string[] numbers = Assert.Single(svg.Of("wall", wall.Wall.Id, "face")).Attribute("d")!.Value.Replace("M", "", StringComparison.Ordinal).Replace("L", "", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries);
            Near(wall.Start.Right, SvgReader.Thousandths(numbers[0]) - svg.Data("left"));
            Near(wall.Start.Into, SvgReader.Thousandths(numbers[1]) - svg.Data("top"));
            Near(wall.End.Right, SvgReader.Thousandths(numbers[2]) - svg.Data("left"));
            Near(wall.End.Into, SvgReader.Thousandths(numbers[3]) - svg.Data("top"));
        }

        void Near(Distance expected, long thousandths) => Assert.InRange(expected.Ticks - (thousandths * scale), -scale, scale);
    }

    // 96 in of wall have one receptacle at 10 in: what lies over 6 ft from it isn't served, and the picture says from where to where.
    [Fact]
    public void Findings_OfARun_TellTheirStretchesAndAreDrawn()
    {
        Evaluation evaluation = Evaluated();
        Finding finding = evaluation.Findings.First(one => one.Stretches.Count > 0);
        Assert.NotEmpty(finding.Stretches);
        Assert.Equal(finding.Measured.AsDistance(), finding.Stretches.Aggregate(Distance.Zero, (sum, one) => sum + (one.Right - one.Left)));
        SvgReader svg = new(RoomPicture.For(evaluation, "room").ToSvg());
        Assert.Equal(evaluation.Findings.Sum(one => one.Stretches.Count), svg.All.Count(one => (string?)one.Attribute("class") == "bh-not-served"));
        WallStretch first = finding.Stretches[0];
        Assert.Contains(evaluation.Wall(first.Address).Findings, place => place.Areas.Contains(new WallArea(first.Left, first.Right, Distance.Zero, Distance.Zero)));
    }

    [Fact]
    public void Boxes_OverheadAndInTheFloor_AreAtTheirPlaces()
    {
        SvgReader svg = new(RoomPicture.For(Evaluated(), "room").ToSvg());
        XElement light = Assert.Single(svg.Of("box", "light", "body"));
        decimal scale = svg.Data("scale") / 1000m;
        long x = SvgReader.Thousandths(light.Attribute("x")!.Value) + (SvgReader.Thousandths(light.Attribute("width")!.Value) / 2);
        Assert.InRange(CaseFile.Inches("60").Ticks - ((x - svg.Data("left")) * scale), -2 * scale, 2 * scale);

        // 48 in from the first wall and from the one before it: two tapes, to the nearest wall and across it.
        Assert.Equal(["48 in from room/north", "60 in from room/east"], Evaluated().Room("room").Overhead[0].Tapes.Select(tape => tape.ToString()));
        Assert.Equal(["48 in", "60 in"], svg.Texts().Where(text => text.Part == "bh-tape-length").Select(text => text.Text));
        Assert.Throws<ArgumentException>(() => RoomPicture.For(Evaluated(), "nowhere"));
    }

    // The receptacle's box is at 10 in along the first wall, the light at 60 in right and 48 in in: one line joins them, whatever else is controlled isn't here.
    [Fact]
    public void SwitchLegs_GoFromASwitchToWhatItControls()
    {
        Dwelling house = Evaluated().Dwelling.WithBoxes(box => box.Id == "r1" ? box.WithControls(new[] { "light", "elsewhere" }) : box);
        SvgReader svg = new(RoomPicture.For(new LayoutEvaluator(RuleSet.Empty).Evaluate(house), "room").ToSvg());
        string[] numbers = Assert.Single(svg.All, one => (string?)one.Attribute("class") == "bh-switch-leg").Attribute("d")!.Value
            .Replace("M", "", StringComparison.Ordinal).Replace("L", "", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        decimal scale = svg.Data("scale") / 1000m;
        string[] expected = ["10", "0", "60", "48"];
        for (int i = 0; i < 4; i++)
        {
            Assert.InRange(CaseFile.Inches(expected[i]).Ticks - ((SvgReader.Thousandths(numbers[i]) - svg.Data(i % 2 == 0 ? "left" : "top")) * scale), -scale, scale);
        }
    }

    // A purpose that nobody knows is a fault of the description, and a room without its walls isn't judged: neither is a question that a fact would settle.
    [Fact]
    public void Findings_UnderAPicture_WeighWhatTheReportSays()
    {
        DwellingBuilder house = new("case");
        house.Add(new Storey("ground"));
        house.Room("room", RoomKind.LivingRoom, "ground").With(one => one.WithOverhead(new[] { new DeviceBox("odd", new BoxPurpose("nobody-knows")).WithPlan(new(CaseFile.Inches("60"), CaseFile.Inches("48"))) }));
        Evaluation evaluation = new LayoutEvaluator(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.UnitedStatesOutlets(NecEdition.Nec2023)).Evaluate(house.Build());
        (string report, string picture) = (evaluation.ToText(), RoomPicture.For(evaluation, "room").ToSvg());
        foreach (string weight in new[] { "FAULT", "NOT JUDGED" })
        {
            Assert.Contains(". " + weight + " ", report.Replace("  ", " ", System.StringComparison.Ordinal), System.StringComparison.Ordinal);
            Assert.Contains(weight, picture, System.StringComparison.Ordinal);
        }

        Assert.DoesNotContain("UNKNOWN", picture, System.StringComparison.Ordinal);
    }

    private static Evaluation Evaluated()
    {
        DwellingBuilder house = new("case");
        house.Add(new Storey("ground"));
        RoomBuilder room = house.Room("room", RoomKind.LivingRoom, "ground").With(one => one.WithOverhead(new[] { new DeviceBox("light", BoxPurpose.Light).WithPlan(new(CaseFile.Inches("60"), CaseFile.Inches("48"))) }));
        room.Wall("north", CaseFile.Inches("120")).Add(new DeviceBox("r1", BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(CaseFile.Inches("10")).WithHeight(BoxHeight.Parse("16 in to top above subfloor")));
        room.Wall("east", CaseFile.Inches("96"));
        room.Wall("south", CaseFile.Inches("120"));
        room.Wall("west", CaseFile.Inches("96"));
        return new LayoutEvaluator(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.UnitedStatesOutlets(NecEdition.Nec2023)).Evaluate(house.Build());
    }

    // A counter's kind is the room that it is for: nobody calls one "kitchen run".
    [Fact]
    public void Counter_IsCalledOne()
    {
        Counter run = new Counter("run", CounterKind.Kitchen, CaseFile.Inches("40"), CaseFile.Inches("90")).WithTop(Level.Parse("36 in above finished floor")).WithDepth(CaseFile.Inches("25"));
        Evaluation evaluation = new BoxHeights.Tests.Rules.OneBox { Wall = wall => wall.WithCounters(new[] { run }) }.At(BoxHeight.Parse("16 in to top above subfloor")).Evaluate();
        Assert.Contains(new SvgReader(WallElevation.For(evaluation, BoxHeights.Tests.Rules.OneBox.WallAddress).ToSvg()).Texts(), text => text.Text == "counter run");
        Assert.Contains(new SvgReader(RoomPicture.For(evaluation, "room").ToSvg()).Texts(), text => text.Text == "counter run");
    }

    // A house in inches drawn for a crew with metric tapes: its findings are told in millimeters like the rest. 48 in is 1219.2 mm; the seam is assumed.
    [Fact]
    public void Units_OfAPicture_AreThoseOfItsFindingsToo()
    {
        OneBox box = new OneBox { Rules = OneBox.Only(RuleSets.RoughInPractice, "switch-height") };
        Evaluation evaluation = (box with { Box = box.Box.WithPurpose(BoxPurpose.Switch) }).At(BoxHeight.Parse("72 in to top above subfloor")).Evaluate();
        foreach (string svg in new[] { WallElevation.For(evaluation, OneBox.WallAddress).ToSvg(PictureOptions.Default.WithUnits(LengthUnits.Millimeters)), RoomPicture.For(evaluation, "room").ToSvg(PictureOptions.Default.WithUnits(LengthUnits.Millimeters)) })
        {
            string told = string.Join(" ", new SvgReader(svg).Texts().Where(text => text.Part == "bh-finding").Select(text => text.Text));
            Assert.Contains("set 1828.8 mm to top above subfloor", told, StringComparison.Ordinal);
            Assert.DoesNotMatch("[0-9] in ", told);
        }

        Assert.Contains("set 72 in to top", Assert.Single(evaluation.Findings).Message, StringComparison.Ordinal);
    }
}
