using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Reflection;
using System.Text.RegularExpressions;
using BoxHeights.Rules;
using BoxHeights.Tests.Rules;
using Xunit;
using static BoxHeights.Tests.Standards.InventedCountry;

namespace BoxHeights.Tests.Standards;

/// <summary>The library is ready for a country that it has never heard of: whatever it says of its houses shows no trace of another's documents, measures, parts or words.</summary>
public sealed class ReadinessTests
{
    private static readonly LayoutEvaluator Evaluator = new(Set, EvaluatorOptions.Default.WithCatalog(Catalog));
    private static readonly RoughInPlanner Planner = new(Set, RoughInOptions.Default.WithEvaluation(EvaluatorOptions.Default.WithCatalog(Catalog)));

    // Each house is looked at once for all its papers.
    private static readonly (string, Lazy<Evaluation>)[] States =
    [
        ("as described", new(() => Evaluator.Evaluate(House()))), ("mended", new(() => Evaluator.Evaluate(Evaluator.Evaluate(House()).Mend().Dwelling))), ("planned", new(() => Evaluator.Evaluate(Planner.Plan(Bare()).Dwelling))),
    ];

    public static TheoryData<string> Papers() => new(All().Select(paper => paper.Name));

    [Theory]
    [MemberData(nameof(Papers))]
    public void Paper_OfAnInventedCountry_ShowsNoOtherOne(string name)
    {
        string text = Plain(All().Single(paper => paper.Name == name).Text());
        string found = string.Join("\n", Traces().Matches(text).Select(match => name + ": …" + text.Substring(Math.Max(0, match.Index - 60), Math.Min(120, text.Length - Math.Max(0, match.Index - 60))).ReplaceLineEndings(" ") + "…"));
        Assert.True(found.Length == 0, found);
        Assert.True(text.Length > 40, name + " says something");
    }

    // What the scan has to find, so that it can fail.
    [Theory]
    [InlineData("set it 48 in to top")]
    [InlineData("gap of 1/8 in round it")]
    [InlineData("within 6 ft of an outlet")]
    [InlineData("NEC 2023 210.52(A)")]
    [InlineData("a duplex-receptacle")]
    [InlineData("14 AWG")]
    [InlineData("at most 1219 mm")]
    [InlineData("1219.2 mm above")]
    [InlineData("20.3 in3")]
    [InlineData("two 2x blocks")]
    [InlineData("assumed 38.1 mm thick")]
    public void Traces_OfTheUnitedStates_AreFound(string text) => Assert.Matches(Traces(), text);

    [Fact]
    public void Paper_ThatIsWritten_IsMadeOfAnEvaluation()
    {
        Assert.Equal(PaperTypes, PapersOf.Select(paper => paper.DeclaringType));
        Assert.Contains(typeof(CutoutList), PaperTypes);
    }

    /// <summary>What its document is a model of: a form without a row there is named here.</summary>
    [Fact]
    public void Set_OfTheInventedCountry_HasARowOfEveryForm()
    {
        Type[] forms = [.. typeof(Rule).Assembly.GetExportedTypes().Where(type => type.IsSubclassOf(typeof(Rule)) && !type.IsAbstract)];
        Assert.True(forms.Length >= 36, forms.Length + " forms");
        Assert.Empty(forms.Except(Set.Rows.Select(row => row.GetType())));
    }

    /// <summary>A measure that is usual somewhere is one that it states itself, so that <see cref="Boxes.UsualMeasuresTests"/> shows it to be asked.</summary>
    [Fact]
    public void Measures_OfTheInventedCountry_AreAllItsOwn() => Assert.All(
        typeof(UsualMeasures).GetProperties(BindingFlags.Public | BindingFlags.Instance),
        measure => Assert.NotEqual(measure.GetValue(UsualMeasures.Generic), measure.GetValue(Catalog.UsualMeasures)));

    /// <summary>Where a length may be written in code: all others are of a country, and belong in its rows or among its usual measures.</summary>
    private static readonly (string Place, string Why)[] WithLengths =
    [
        ("Standards/", "rows"), ("Boxes/GenericParts.cs", "the catalog's rows"), ("Boxes/UsualMeasures.cs", "what is usual where"),
        ("Wordings/", "how finely is printed"), ("Interop/", "units"), ("Pictures/", "paper"),
        ("Rules/Engine/SettledOptions.cs", "options that the units settle"), ("Planning/StairLightOptions.cs", "options"),
        ("Layout/DrawingTolerance.cs", "how far drawings are off anywhere"), ("Resolving/Resolver.Plan.cs", "how finely a fault is printed"),
        ("Resolving/ResolvedBox.cs", "larger than any house"), ("Planning/RoughInDraft.Rooms.cs", "longer than any wall"), ("Rules/Forms/Things/RoomAnchor.cs", "further than any row reaches"),
        ("Rules/Forms/Clearances/WallTop.cs", "into what pieces a slope is cut"), ("Views/RuleSet.Asking.cs", "a wall for a question"), ("Planning/RunBoxes.cs", "whether a length is in whole feet"),
    ];

    [Fact]
    public void Lengths_AreWrittenInRowsAndAmongUsualMeasuresAlone()
    {
        string source = Path.Combine(Repository.Root, "src", "BoxHeights");
        string[] found = [.. Directory.GetFiles(source, "*.cs", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(source, file).Replace('\\', '/'))
            .Where(file => !file.StartsWith("bin/", StringComparison.Ordinal) && !file.StartsWith("obj/", StringComparison.Ordinal) && Lengths().IsMatch(File.ReadAllText(Path.Combine(source, file))))];
        Assert.DoesNotContain(found, file => !WithLengths.Any(one => file.StartsWith(one.Place, StringComparison.Ordinal)));
        Assert.All(WithLengths, one => Assert.True(found.Any(file => file.StartsWith(one.Place, StringComparison.Ordinal)), one.Place + " has none"));
    }

    [Theory]
    [InlineData("Distance.FromInches(1, 1, 2)")]
    [InlineData("Distance.FromFeetInches(5, 0)")]
    [InlineData("Distance.FromMillimeters(25m)")]
    [InlineData("Level.Parse(\"48 in above subfloor\")")]
    [InlineData("Volume.FromCubicInches(14)")]
    [InlineData("using static BoxHeights.Shorthand;")]
    [InlineData("Shorthand.In(48)")]
    public void Lengths_InCode_AreFound(string text) => Assert.Matches(Lengths(), text);

    private static Regex Lengths() => new("\\b(Distance|Volume)\\.From(Inches|Feet|FeetInches|Millimeters|CubicInches|CubicCentimeters)\\([0-9]|\\b(Distance|Level|BoxHeight|Volume)\\.Parse\\(\"|(?m:^using static BoxHeights\\.Shorthand;)|\\bShorthand\\.[A-Z]", RegexOptions.CultureInvariant);

    // Two rooms, so that no mate may be elsewhere: one alone, three, and two that a third controls with.
    [Theory]
    [InlineData("two-way-switch", "a two-way switch alone")]
    [InlineData("two-way-switch two-way-switch two-way-switch", "3 two-way switches")]
    [InlineData("crossing-switch", "a crossing switch without two-way switches")]
    [InlineData("two-way-switch crossing-switch two-way-switch", "")]
    public void Switches_ThatGoTogether_AreCalledByItsOwnNames(string devices, string said)
    {
        Dwelling house = House();
        DeviceBox[] switches = [.. devices.Split(' ').Select((device, i) => new DeviceBox("w" + i, BoxPurpose.Switch).WithDevices(new[] { new DeviceKind(device) }).WithAt(Mm(500 + (300 * i))).WithHeight(BoxHeight.ToCenter(Mm(1000), Datum.FinishedFloor)))];
        Room living = house.Rooms[1];
        Dwelling with = house.WithRooms(house.Rooms.Select(room => room.Id == living.Id ? room.WithWalls(room.Walls.Select(wall => wall.Id == "east" ? wall.WithBoxes(switches) : wall)) : room));
        Evaluation evaluation = Evaluator.Evaluate(with);
        Finding[] found = [.. evaluation.Findings.AsEnumerable().Where(finding => finding.RuleId == "two-way-mates")];
        Assert.Equal(said.Length == 0 ? 0 : 1, found.Length);
        Assert.All(found, finding => Assert.Contains(said, finding.Message, StringComparison.Ordinal));
        Assert.DoesNotMatch(Traces(), evaluation.ToText());
    }

    // Its way to count says nothing of wide receptacles: one of 32 A in two gangs takes one.
    [Fact]
    public void Fill_OfALargeReceptacle_TakesNoMoreThanItsOwnCountingSays()
    {
        DeviceBox box = new DeviceBox("large", BoxPurpose.General).WithDevices(new[] { DeviceKind.SingleReceptacle }).WithRating("230 V 32 A").WithGangs(2).WithCables(CableType.Parse("3G2.5"));
        FillCounting counting = ((FillLimit)Set.Row("box-room")).Counting;
        Assert.Equal((1, 2), (Devices(counting), Devices(counting.WithWideAbove(31))));

        int Devices(FillCounting by) => (int)(BoxFill.Least(box, by).Lines.Single(line => line.What.Contains("device", StringComparison.Ordinal)).Quarters / 8);
    }

    [Fact]
    public void Evaluate_InventedCountry_FindsItsMistakesAndNoOthers()
    {
        Evaluation evaluation = Evaluator.Evaluate(House());
        Assert.Equal(
            ["as-drawn p2", "basin-socket bath", "socket-line p2", "sockets-by-area bed", "switch-line s1", "wall-sockets living/south", "water-zone p4"],
            evaluation.Findings.AsEnumerable().Select(finding => finding.RuleId + " " + finding.Subject.Split(' ')[0]).Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Mend_InventedCountry_LeavesNothing()
    {
        MendedDwelling mended = Evaluator.Evaluate(House()).Mend();
        Assert.Empty(mended.Left.AsEnumerable().Select(cause => cause.Title));
        Assert.Equal("1000 mm to center", mended.Dwelling.PlacedBoxes().AsEnumerable().Single(one => one.Box.Id == "s1").Box.Height!.Value.ToString().Split(" above")[0]);
    }

    [Fact]
    public void Plan_InventedCountry_HasItsOwnBoxesAtItsOwnHeights()
    {
        RoomPlan plan = Planner.Plan(Bare());
        Assert.Empty(plan.Obstacles);
        PlacedBox[] planned = [.. plan.Dwelling.PlacedBoxes()];
        Assert.Equal(3, planned.Count(one => one.Box.Purpose == BoxPurpose.Switch));
        Assert.All(planned.Where(one => one.Box.Purpose == BoxPurpose.Switch), one => Assert.Equal(Mm(1000), one.Box.Height!.Value.Value));
        Assert.All(planned.Where(one => one.Box.Purpose == BoxPurpose.General), one => Assert.Equal(Socket, Assert.Single(one.Box.Devices)));

        // 4.3 × 3.1 m are 13.33 m2: four sockets for parts of 4 m2.
        Assert.Equal(4, planned.Count(one => one.Address.StartsWith("bed/", StringComparison.Ordinal) && one.Box.Devices.Contains(Socket)));
        Assert.Empty(Evaluator.Evaluate(plan.Dwelling).Findings.AsEnumerable().Select(finding => finding.Message));
    }

    // A fifth of 2500 mm is kept in hand: one socket in the middle serves 2000 mm to either side.
    [Theory]
    [InlineData("4500", 1)]
    [InlineData("4500+t", 2)]
    public void Plan_OfAWall_KeepsItsOwnPartOfTheReachInHand(string end, int sockets)
    {
        Dwelling house = RoomSketch.House("living-room", ["9000 door:0:500 door:" + end + ":9000"], metric: true);
        Assert.Equal(sockets, new RoughInPlanner(new(new[] { Set.Row("wall-sockets"), Set.Row("room-for-sockets") })).Plan(house).Dwelling.PlacedBoxes().Count);
    }

    // A round box of 68 mm is as round in the picture: its corners have half its height.
    [Fact]
    public void Wall_WithRoundBoxes_ShowsThemRound()
    {
        Match body = Regex.Match(WallElevation.For(Evaluator.Evaluate(House()), "bed/east").ToSvg(), "<rect class=\"[^\"]*-body\"[^>]*height=\"([0-9.]+)\" rx=\"([0-9.]+)\"");
        Assert.True(body.Success);
        Assert.Equal(decimal.Parse(body.Groups[1].Value, CultureInfo.InvariantCulture), 2 * decimal.Parse(body.Groups[2].Value, CultureInfo.InvariantCulture), 1);
        Assert.DoesNotMatch("-body\"[^>]* rx=", WallElevation.For(new LayoutEvaluator(Set).Evaluate(House()), "bed/east").ToSvg());
    }

    private static Dwelling Bare()
    {
        Dwelling house = House();
        return house.WithRooms(house.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => wall.WithBoxes(default)))));
    }

    /// <summary>Every paper, so that a new one is held to this too.</summary>
    private static IEnumerable<Type> PaperTypes => typeof(Evaluation).Assembly.GetExportedTypes().Where(type => type.GetMethod("ToMarkdown", []) is not null);

    private static IEnumerable<MethodInfo> PapersOf => PaperTypes.Select(type => type.GetMethod("For", [typeof(Evaluation)])).OfType<MethodInfo>();

    private static string Written(object paper) => string.Concat(new[] { "ToMarkdown", "ToCsv" }.Select(way => paper.GetType().GetMethod(way, [])?.Invoke(paper, null)));

    private static IEnumerable<(string Name, Func<string> Text)> All()
    {
        foreach ((string state, Lazy<Evaluation> of) in States)
        {
            yield return ("report, " + state, () => of.Value.ToText());
            yield return ("mending, " + state, () => of.Value.Mend().ToText());
            foreach (MethodInfo paper in PapersOf)
            {
                yield return (paper.DeclaringType!.Name + ", " + state, () => Written(paper.Invoke(null, [of.Value])!));
            }

            yield return ("pole, " + state, () => PolePicture.For(StoryPole.For(of.Value)).ToSvg());
            yield return ("booklet, " + state, () => Booklet.For(of.Value).ToHtml());
            yield return ("walls, " + state, () => string.Concat(of.Value.Dwelling.Rooms.AsEnumerable().SelectMany(room => room.Walls.AsEnumerable().Select(wall => WallElevation.For(of.Value, room.Id + "/" + wall.Id).ToSvg()))));
            yield return ("rooms, " + state, () => string.Concat(of.Value.Dwelling.Rooms.AsEnumerable().Select(room => RoomPicture.For(of.Value, room.Id).ToSvg())));
        }

        yield return ("plan", () => Planner.Plan(Bare()).ToText());
        yield return ("plan of what is there", () => Planner.Plan(House()).ToText());
        yield return ("rules", Set.Describe);
    }

    /// <summary>What a person reads of it: markup and styles are none of the text.</summary>
    private static string Plain(string text) => Regex.Replace(Regex.Replace(text, "<style.*?</style>", " ", RegexOptions.Singleline), "<[^>]*>", " ");

    /// <summary>Inches and feet, documents and wire of the United States, their words for devices and lumber, and round inches in whole or tenths of millimeters.</summary>
    private static Regex Traces() => new(
        "(?<!mm)[0-9](\\s|-)?(in|ft|feet|foot|inch|inches|in2|in3|in²|in³|ft2|ft²)\\b|[0-9]+/(2|4|8|16|32|64)\\b|\\b(inch|inches|feet)\\b|[0-9][″′]"
        + "|\\b(NEC|ADA|IRC|IBC|NFPA|ANSI|NEMA|A117|AWG|UFAS|HUD|National Electrical|International Residential|Fair Housing|Canadian)\\b"
        + "|duplex|gfci|decorator|nail-on|\\b2x\\b|four-square|octagon|2-by|three-way|four-way|standard plate|common practice"
        + "|\\b(1219(\\.2)?|1118|1117\\.6|1016|1321|1320\\.8|914(\\.4)?|610|609\\.6|406(\\.4)?|1829|1828\\.8|305|304\\.8|152(\\.4)?|203(\\.2)?|46|69\\.8[0-9]*|114\\.3|12\\.7|6\\.35|25\\.4|31\\.75|31\\.8|38\\.1|76\\.2) mm\\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
}
