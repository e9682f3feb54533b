using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Xml.Linq;
using BoxHeights.Tests.Rules;
using BoxHeights.Tests.Standards;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Pictures;

public sealed class WallElevationTests
{
    private static readonly RuleSet Rules = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice + RuleSets.Ada2010;

    private static readonly string[] Cultures = ["en-US", "tr-TR", "ar-SA", "de-DE", "fa-IR"];

    private static readonly Arbitrary<(int Seed, int Width, int Font)> Pages = Arb.From(
        from seed in Gen.Choose(1, int.MaxValue) from width in Gen.Elements(240, 320, 960, 1587) from font in Gen.Elements(8, 12, 16) select (seed, width, font));

    // The second road: what is read from the picture is where the resolved wall has it, to the thousandth that the picture prints.
    [Fact]
    public void Boxes_ReadFromThePicture_AreWhereTheWallHasThem() => Prop.ForAll(Pages, page =>
    {
        int looked = 0;
        foreach (WallElevation picture in Walls(page.Seed).Take(6))
        {
            SvgReader svg = new(picture.ToSvg(Options(page)));
            decimal scale = svg.Data("scale") / 1000m;
            foreach (BoxView box in picture.Wall.Boxes)
            {
                if (box.Body is not { IsExact: true } body)
                {
                    continue;
                }

                XElement drawn = Assert.Single(svg.Of("box", box.Id, "body"));
                long Read(string name) => SvgReader.Thousandths(drawn.Attribute(name)!.Value);
                Near(body.Left.From, (Read("x") - svg.Data("left")) * scale);
                Near(body.Right.From, (Read("x") + Read("width") - svg.Data("left")) * scale);
                Near(body.Top!.Value.From, (svg.Data("subfloor") - Read("y")) * scale);
                Near(body.Bottom!.Value.From, (svg.Data("subfloor") - Read("y") - Read("height")) * scale);
                looked++;
            }

            foreach (OpeningView opening in picture.Wall.Openings)
            {
                XElement? rough = svg.Of("opening", opening.Id!, "rough").SingleOrDefault();
                Assert.Equal(opening.Area.IsExact, rough is not null);
                if (rough is not null)
                {
                    Near(opening.Area.Left.From, (SvgReader.Thousandths(rough.Attribute("x")!.Value) - svg.Data("left")) * scale);
                    Near(opening.Area.Top!.Value.From, (svg.Data("subfloor") - SvgReader.Thousandths(rough.Attribute("y")!.Value)) * scale);
                }
            }

            void Near(Distance expected, decimal ticks) => Assert.InRange(expected.Ticks - ticks, -scale, scale);
        }

        return looked >= 0;
    }).Check(Tries.Always(6));

    [Fact]
    public void Labels_OfAnyWall_OverlapNoOtherAndStayOnThePage() => Prop.ForAll(Pages, page =>
        Walls(page.Seed).Take(8).All(picture => !Complain(new SvgReader(picture.ToSvg(Options(page))).Clashes()))).Check(Tries.Always(8));

    public static TheoryData<string> Scene => [.. Scenes.Walls.Keys];

    // A phone, a wider one, half a sheet of letter paper and a whole one of A3, in every theme, with the allowed places of a box shaded.
    [Theory]
    [MemberData(nameof(Scene))]
    public void Labels_OfEveryScene_OverlapNoOtherAndStayOnThePage(string name)
    {
        Evaluation evaluation = Scenes.Walls[name]();
        WallElevation picture = WallElevation.For(evaluation, Scenes.Address(evaluation));
        string? box = picture.Wall.Boxes.Count > 0 ? picture.Wall.Boxes[0].Id : null;
        foreach (int width in new[] { 240, 320, 390, 700, 1587 })
        {
            PictureOptions options = PictureOptions.Default.WithWidth(width).WithAllowedFor(box).WithTheme((PictureTheme)(width % 3));
            Assert.False(Complain(new SvgReader(picture.ToSvg(options)).Clashes()));
            Assert.False(Complain(new SvgReader(RoomPicture.For(evaluation, evaluation.Dwelling.Rooms[0].Id).ToSvg(options.WithAllowedFor(null))).Clashes()));
        }
    }

    // What is said of a name from right to left stays in its order, whatever stands beside it: each such stretch is set apart (Unicode Standard Annex 9).
    [Fact]
    public void Findings_OfNamesFromRightToLeft_SetThemApart()
    {
        Evaluation evaluation = Scenes.Walls["names"]();
        string[] lines = new SvgReader(WallElevation.For(evaluation, Scenes.Address(evaluation)).ToSvg(PictureOptions.Default.WithWidth(4000))).Texts().Select(text => text.Text).ToArray();
        Assert.Contains(lines, line => line.Contains("from door \u2068דלת\u2069 on \u2068קיר-צפון\u2069, round 4 corners, to", StringComparison.Ordinal));
        Assert.All(lines, line =>
        {
            int depth = 0;
            foreach (char one in line)
            {
                depth += one is '\u2068' ? 1 : one is '\u2069' ? -1 : 0;
                Assert.True(depth > 0 || one is not (>= '\u05D0' and <= '\u05EA'), line);
            }

            Assert.Equal(0, depth);
        });
    }

    [Fact]
    public void ToSvg_OfAWallBeyondMeasure_DrawsTheRestAndSaysWhatIsNot()
    {
        Evaluation evaluation = Scenes.Walls["partial"]();
        SvgReader svg = new(WallElevation.For(evaluation, Scenes.Address(evaluation)).ToSvg());
        Assert.Single(svg.Of("box", "seen", "body"));
        Assert.Single(svg.Of("opening", "entry", "rough"));
        string said = string.Join(" ", svg.Texts().Where(text => text.Part == "bh-left-out").Select(text => text.Text));
        Assert.Contains("larger than anything in a house: its top, its length, door gate.", said, StringComparison.Ordinal);
        Assert.Contains(svg.Texts(), text => text.Text.StartsWith("high: ", StringComparison.Ordinal) && text.Text.EndsWith("a fault keeps it from being judged", StringComparison.Ordinal));
        Assert.Contains("a measure of them is larger", RoomPicture.For(evaluation, "room").ToSvg(), StringComparison.Ordinal);
    }

    // Sixty boxes at random on one wall, with long names: what has no room is said in a note.
    [Fact]
    public void Boxes_OfACrowdedWall_AreAllNamed() => Prop.ForAll(Arb.From(from seed in Gen.Choose(1, 1_000_000) from width in Gen.Elements(200, 320, 960) select (Seed: seed, Width: width)), page =>
    {
        Random random = new(page.Seed);
        DeviceBox[] boxes = Enumerable.Range(0, 60).Select(i => new DeviceBox("a-box-with-a-name-" + i, BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch })
            .WithAt(Distance.FromInches(3 + random.Next(138), random.Next(16), 16)).WithHeight(BoxHeight.To(Edge.Center, Distance.FromInches(4 + random.Next(88)), Datum.Subfloor))).ToArray();
        SvgReader svg = new(Picture(wall => wall.WithBoxes(boxes)).ToSvg(PictureOptions.Default.WithWidth(page.Width)));
        string all = string.Join("\n", svg.Texts().Where(text => text.Part is "bh-box-name" or "bh-note").Select(text => text.Text)).Replace("\n", " ", StringComparison.Ordinal);
        return !Complain(svg.Clashes()) && boxes.All(box => all.Contains(box.Id, StringComparison.Ordinal) || all.Replace(" ", "", StringComparison.Ordinal).Contains(box.Id, StringComparison.Ordinal));
    }).Check(Tries.Always(6));

    [Fact]
    public void Text_OfAnyName_StaysTextAndTurnsNothing()
    {
        string[] names = ["<script>alert(1)", "a\"b&c>'d", "שקע \u202Eabc", "コンセント", "lone \uD800 half", "bell \u0007", "two\nlines", "]]>", "\uD83D\uDD0C"];
        WallElevation picture = Picture(wall => wall.WithBoxes(names.Select((name, i) => new DeviceBox(name, BoxPurpose.General).WithAt(Distance.FromInches(6 + (15 * i)))
            .WithHeight(BoxHeight.Parse("16 in to top above subfloor"))).ToArray()));
        string text = picture.ToSvg();
        SvgReader svg = new(text);
        Assert.DoesNotContain("<script", text, StringComparison.Ordinal);
        Assert.DoesNotContain(svg.Texts(), one => one.Text.Contains('\u202E', StringComparison.Ordinal));
        Assert.Contains(svg.Texts(), one => one.Text == "\u2068コンセント\u2069");
        Assert.Contains(svg.Texts(), one => one.Text == "<script>alert(1)");
        Assert.Equal(names.Length + 1, svg.All.Count(one => (string?)one.Attribute("class") == "bh-box"));
        Assert.Contains(svg.All, one => (string?)one.Attribute("data-id") == "שקע \u202Eabc");
        Assert.DoesNotContain(svg.All, one => one.Name.LocalName is "script" or "image" or "use" or "foreignObject" or "style");
        Assert.DoesNotContain(svg.All.SelectMany(one => one.Attributes()), one => one.Name.LocalName is "href" or "onload" or "onclick" || one.Value.Contains("url(http", StringComparison.Ordinal));
        Assert.All(svg.Texts(), one => Assert.DoesNotContain(one.Text, character => char.IsControl(character)));
    }

    [Fact]
    public void Ids_AreUniqueAndStartWithThePrefix()
    {
        DeviceBox box = new DeviceBox("same", BoxPurpose.General).WithAt(Distance.FromInches(20)).WithHeight(BoxHeight.Parse("16 in to top above subfloor"));
        string[] ids = new SvgReader(Picture(wall => wall.WithBoxes(new[] { box, box.WithAt(Distance.FromInches(50)) })).ToSvg(PictureOptions.Default.WithIdPrefix("p2")))
            .All.Select(one => (string?)one.Attribute("id")).OfType<string>().ToArray();
        Assert.Equal(ids.Distinct(StringComparer.Ordinal), ids);
        Assert.All(ids, id => Assert.StartsWith("p2-", id, StringComparison.Ordinal));
        Assert.Contains("p2-box-same", ids);
    }

    [Fact]
    public void ToSvg_InAnyCulture_IsTheSame()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            string[] all = Cultures.Select(name =>
            {
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);
                return Picture(wall => wall).ToSvg(PictureOptions.Default.WithAllowedFor(OneBox.Id));
            }).ToArray();
            Assert.Single(all.Distinct(StringComparer.Ordinal));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    // Every target draws this very picture: its bytes are summed up here.
    [Fact]
    public void ToSvg_OnEveryTarget_IsTheSamePicture()
    {
        uint sum = 2166136261;
        foreach (char one in Picture(wall => wall).ToSvg())
        {
            sum = unchecked((sum ^ one) * 16777619);
        }

        Assert.Equal(ExpectedSum, sum);
    }

    private const uint ExpectedSum = 836268844;

    [Fact]
    public void Findings_AreAtTheirBoxesAndInTheList()
    {
        WallElevation picture = Picture(wall => wall.WithBoxes(new[] { new DeviceBox("high", BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }).WithAt(In("60")).WithHeight(BoxHeight.Parse("60 in to center above subfloor")) }));
        SvgReader svg = new(picture.ToSvg());
        FindingPlace worst = picture.Wall.Findings.First(place => place.Finding.IsViolation);
        Assert.Contains(svg.Texts(), text => text.Part == "bh-finding-mark" && text.Text.Contains("!" + worst.Number, StringComparison.Ordinal));
        Assert.Equal(picture.Wall.Findings.Select(place => place.Number).Distinct(), svg.Texts().Where(text => text.Part == "bh-finding-number").Select(text => int.Parse(text.Text.Trim('!', '?', '#'), CultureInfo.InvariantCulture)).Distinct());
        Assert.Contains("VIOLATION", string.Concat(svg.Texts().Where(text => text.Part == "bh-finding").Select(text => text.Text)), StringComparison.Ordinal);
        Assert.Contains(Scope.Caution.Split(' ')[0], string.Concat(svg.Texts().Where(text => text.Part == "bh-caution").Select(text => text.Text)), StringComparison.Ordinal);
    }

    // A finding of one box is told in one sentence, whichever paper one reads: a report that says "32 in to the right" beside a picture that says "68 in up" has two measures.
    [Fact]
    public void Findings_OfOneBox_AreToldAsTheirMessage()
    {
        Fixture tub = SquareRoom.Against("tub", FixtureKind.Tub, "north", In("0"), In("60"), In("32"));
        DeviceBox box = SquareRoom.Box("duplex-receptacle", "bath", In("64"), In("44"));
        Evaluation evaluation = new LayoutEvaluator(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023)).Evaluate(new SquareRoom { Fixtures = [tub], North = [box] }.House());
        Finding finding = Assert.Single(evaluation.Findings, one => one.RuleId == "tub-receptacle");
        Assert.Contains(" to the right", finding.Message, StringComparison.Ordinal);
        string told = string.Join(" ", new SvgReader(WallElevation.For(evaluation, "square/north").ToSvg()).Texts().Where(text => text.Part == "bh-finding").Select(text => text.Text));
        Assert.Contains(finding.Message[finding.Message.IndexOf("set 44 in", StringComparison.Ordinal)..], told, StringComparison.Ordinal);
    }

    [Fact]
    public void Allowed_IsShadedOnlyForABoxOfTheWall()
    {
        WallElevation picture = Picture(wall => wall);
        Assert.Contains(new SvgReader(picture.ToSvg(PictureOptions.Default.WithAllowedFor(OneBox.Id))).All, one => (string?)one.Attribute("class") == "bh-allowed");
        Assert.DoesNotContain(new SvgReader(picture.ToSvg()).All, one => (string?)one.Attribute("class") == "bh-allowed");
        Assert.Throws<ArgumentException>(() => picture.ToSvg(PictureOptions.Default.WithAllowedFor("nobody")));
    }

    [Fact]
    public void Layers_ThatAreLeftOut_AreInNeitherDrawingNorLegend()
    {
        string svg = Picture(wall => wall).ToSvg(PictureOptions.Default.WithLayers(PictureLayers.All & ~PictureLayers.Framing));
        Assert.DoesNotContain("bh-stud", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("corner stud", svg, StringComparison.Ordinal);
        Assert.Contains("corner stud", Picture(wall => wall).ToSvg(), StringComparison.Ordinal);
        Assert.Empty(new SvgReader(Picture(wall => wall).ToSvg(PictureOptions.Default.WithLayers(PictureLayers.None))).Clashes());
    }

    // What isn't sure is dashed or a range, never drawn as if it were known.
    [Fact]
    public void Studs_ThatAreAssumed_AreDashed()
    {
        SvgReader assumed = new(Picture(wall => wall.WithStuds(new StudLayout().WithSpacing(In("16")))).ToSvg());
        SvgReader known = new(Picture(wall => wall.WithStuds(new StudLayout().WithSpacing(In("16")).WithKnown(StudKnowledge.Measured))).ToSvg());
        static int Dashed(SvgReader svg) => svg.All.Count(one => (string?)one.Attribute("class") == "bh-stud" && one.Attribute("stroke-dasharray") is not null);
        Assert.Equal((8, 0), (Dashed(assumed), Dashed(known)));
    }

    [Fact]
    public void Boxes_OfAFloorNotChosen_ShowARange()
    {
        OneBox of = new() { Room = room => room.WithFloor(OneBox.Floor(new(In("0"), In("2")))) };
        string svg = WallElevation.For(of.At(BoxHeight.Parse("18 in to center above finished floor")).Evaluate(), OneBox.WallAddress).ToSvg();
        Assert.Contains("bh-body-range", svg, StringComparison.Ordinal);
        Assert.Contains("18 in to 20 in to center", svg, StringComparison.Ordinal);
    }

    // A flight of 15 risers over 109 in: the first nosing 30 in along, 10 in more for each tread.
    [Fact]
    public void ForStair_ShowsTreadsAsTheyAreNumbered()
    {
        OneBox of = new() { Room = room => room.WithFloor(OneBox.Floor(In("3/4"))), Wall = wall => wall.WithLength(In("200")) };
        Dwelling house = of.At(BoxHeight.Parse("10 in to bottom above nosing")).Build();
        house = house.WithStoreys(house.Storeys.With(new Storey("upper").WithAboveBelow(In("109"))))
            .WithFlights(new[] { new StairFlight("main", "ground", "upper", 15).WithTread(In("10")).WithWall(OneBox.WallAddress).WithFirstNosing(In("30")).WithClimbs(WallEnd.Right) });
        Evaluation evaluation = new LayoutEvaluator(RuleSet.Empty).Evaluate(house);
        WallElevation picture = WallElevation.ForStair(evaluation, "main");
        Assert.Equal(Enumerable.Range(1, 15), picture.Wall.Stair!.Treads.Select(tread => tread.Number));
        Assert.Equal(In("40"), picture.Wall.Stair.Treads[1].Along.RoundNearest());
        SvgReader svg = new(picture.ToSvg());
        Assert.Equal(Enumerable.Range(1, 15).Select(number => number.ToString(CultureInfo.InvariantCulture)), svg.Texts().Where(text => text.Part == "bh-tread").Select(text => text.Text));
        Assert.Empty(svg.Clashes());
        Assert.Throws<ArgumentException>(() => WallElevation.ForStair(evaluation, "other"));
    }

    [Fact]
    public void Options_OutOfRange_AreRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PictureOptions.Default.WithWidth(119));
        Assert.Throws<ArgumentOutOfRangeException>(() => PictureOptions.Default.WithFontSize(101));
        Assert.Throws<ArgumentOutOfRangeException>(() => PictureOptions.Default.WithDrawingHeight(0));
        Assert.Throws<ArgumentException>(() => PictureOptions.Default.WithIdPrefix("1\""));
        Assert.Throws<ArgumentNullException>(() => WallElevation.For(null!, "room/wall"));
        Assert.Throws<ArgumentException>(() => WallElevation.For(new OneBox().Evaluate(), "room/nowhere"));
    }

    private static bool Complain(IEnumerable<string> clashes)
    {
        string[] all = clashes.Take(5).ToArray();
        Assert.True(all.Length == 0, string.Join("; ", all));
        return false;
    }

    private static PictureOptions Options((int Seed, int Width, int Font) page) => PictureOptions.Default.WithWidth(page.Width).WithFontSize(page.Font);

    private static IEnumerable<WallElevation> Walls(int seed)
    {
        Dwelling house = OrdinaryHouses.Make(seed, 4);
        Evaluation evaluation = new LayoutEvaluator(Rules).Evaluate(house);
        return house.Rooms.SelectMany(room => room.Walls.Select(wall => room.Id + "/" + wall.Id)).OrderByDescending(address => evaluation.Wall(address).Boxes.Count).Select(address => WallElevation.For(evaluation, address));
    }

    private static WallElevation Picture(Func<Wall, Wall> with)
    {
        OneBox of = new()
        {
            Rules = Rules,
            Storey = new Storey("ground").WithStuds(new StudLayout().WithSpacing(In("16")).WithKnown(StudKnowledge.Declared)).WithBoards(new BoardLayout().WithWidths(new[] { In("48"), In("48") }))
                .WithCeiling(new Ceiling().WithFraming(In("97-1/8")).WithBoard(In("5/8"))),
            Room = room => room.WithFloor(OneBox.Floor(In("3/4"))),
            Wall = with,
        };
        return WallElevation.For(of.At(BoxHeight.Parse("48 in to top above subfloor")).Evaluate(), OneBox.WallAddress);
    }
}
