using System;
using System.Globalization;
using System.Linq;
using BoxHeights.Rules;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Conductors by their metric cross section: read, printed and counted as such. Every number of the rows is made up.</summary>
public sealed class MetricConductorTests
{
    private static readonly Citation House = new("Invented wiring rules");

    private static readonly FillCounting Counting = new(
        new ConductorAllowance[]
        {
            new(ConductorSize.FromSquareMillimeters(1.5m), Volume.FromCubicCentimeters(20)), new(ConductorSize.FromSquareMillimeters(2.5m), Volume.FromCubicCentimeters(25)),
        },
        GroundCounting.AllAsOne);

    // Cross sections of IEC 60228; those of gauges between them are 0.823, 1.31, 2.08, 3.31, 5.26, 8.37 and 13.3 mm² (ASTM B258, from memory).
    [Fact]
    public void Sizes_InOrder_AreThoseOfTheirAreas()
    {
        (string Text, double Area)[] sizes =
        [
            ("0.5 mm2", 0.5), ("0.75 mm2", 0.75), ("1 mm2", 1), ("1.5 mm2", 1.5), ("2.5 mm2", 2.5), ("4 mm2", 4), ("6 mm2", 6), ("10 mm2", 10), ("16 mm2", 16),
            ("18 AWG", 0.823), ("16 AWG", 1.31), ("14 AWG", 2.08), ("12 AWG", 3.31), ("10 AWG", 5.26), ("8 AWG", 8.37), ("6 AWG", 13.3),
        ];
        Assert.Equal(sizes.OrderBy(one => one.Area).Select(one => one.Text), sizes.Select(one => ConductorSize.Parse(one.Text)).Order().Select(size => size.ToString()));
        Assert.Equal((0, 2.5m), (ConductorSize.Parse("2.5 mm²").Awg, ConductorSize.Parse("2.50 mm2").SquareMillimeters));
        Assert.Equal((14, 0m), (ConductorSize.Awg14.Awg, ConductorSize.Awg14.SquareMillimeters));
    }

    [Theory]
    [InlineData("3 mm2")]
    [InlineData("0 mm2")]
    [InlineData("-1.5 mm2")]
    [InlineData("2,5 mm2")]
    [InlineData("2.5")]
    [InlineData("2.5 AWG")]
    [InlineData("14 mm2")]
    public void TryParse_NoSize_IsFalse(string text)
    {
        Assert.False(ConductorSize.TryParse(text, out ConductorSize size));
        Assert.Equal(default, size);
        if (decimal.TryParse(text.Split(' ')[0], NumberStyles.Number, CultureInfo.InvariantCulture, out decimal area) && area != 2.5m)
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => ConductorSize.FromSquareMillimeters(area));
        }
    }

    // G: one core of the number protects; X: none does (as harmonized cables are named).
    [Theory]
    [InlineData("3G1.5", "1.5 mm2", 2, true)]
    [InlineData("5g2.5", "2.5 mm2", 4, true)]
    [InlineData(" 2X0.75 ", "0.75 mm2", 2, false)]
    [InlineData("3x4", "4 mm2", 3, false)]
    public void Cable_OfCores_HasThoseConductors(string text, string size, int insulated, bool ground)
    {
        CableType cable = CableType.Parse(text);
        Assert.Equal((size, insulated, ground), (cable.Size.ToString(), cable.InsulatedConductors, cable.HasGround));
        Assert.Equal(text.Trim().ToUpperInvariant(), cable.ToString());
        Assert.Equal(cable, new CableType(ConductorSize.Parse(size), insulated, 0, ground));
    }

    [Theory]
    [InlineData("3G3")]
    [InlineData("1X1.5")]
    [InlineData("2G1.5")]
    [InlineData("11G1.5")]
    [InlineData("G1.5")]
    [InlineData("3G")]
    [InlineData("3G1.5-2")]
    [InlineData("1.5-2")]
    public void Cable_ThatIsNone_IsntRead(string text)
    {
        Assert.False(CableType.TryParse(text, out CableType cable));
        Assert.Equal(default, cable);
    }

    [Fact]
    public void Cable_OfTwoGroups_IsNoMetricOne() => Assert.Throws<ArgumentException>(() => new CableType(ConductorSize.FromSquareMillimeters(1.5m), 2, 2));

    // Two of 1.5 mm² (40 mL), four of 2.5 mm² (100 mL), all grounds as one of 2.5 mm² (25 mL), a device on the 1.5 or the 2.5 (40 or 50 mL): 205 or 215 mL.
    [Theory]
    [InlineData(204, Verdict.Fails)]
    [InlineData(205, Verdict.Unknown)]
    [InlineData(214, Verdict.Unknown)]
    [InlineData(215, Verdict.Passes)]
    public void Fill_OfMetricCables_IsTheirSum(int milliliters, Verdict expected)
    {
        DeviceBox box = Box.WithVolume(Volume.FromCubicCentimeters(milliliters)).WithClamps(CableClamps.None);
        Finding? finding = Evaluate(new FillLimit("fill", "large enough", Severity.Violation, House, Counting), box).Findings.SingleOrDefault();
        Assert.Equal(expected, finding?.Verdict ?? Verdict.Passes);
        Assert.True(finding is null || finding.Message.Contains("2.5 mm2 conductors", StringComparison.Ordinal), finding?.Message);
        Assert.DoesNotContain("AWG", finding?.Message ?? "", StringComparison.Ordinal);
    }

    [Fact]
    public void Circuit_OfMetricCables_IsMendedByAMetricOne()
    {
        CircuitRating row = new("circuit", "on a circuit of 20 A", Severity.Violation, House, 20, new ConductorRating[] { new(ConductorSize.FromSquareMillimeters(1.5m), 16), new(ConductorSize.FromSquareMillimeters(2.5m), 20) })
        {
            Scope = RuleScope.Everything with { Devices = new[] { DeviceKind.DuplexReceptacle } },
        };
        Assert.Empty(Evaluate(row, Box.WithCables(new[] { CableType.Parse("3G2.5") })).Findings);
        Evaluation thin = Evaluate(row, Box.WithCables(new[] { CableType.Parse("3G1.5") }));
        Assert.Contains("fed by 1.5 mm2, which is protected at 16 A at most", Assert.Single(thin.Findings).Message, StringComparison.Ordinal);
        Assert.Contains("feed it with 2.5 mm2 or thicker from a 20 A circuit", thin.ToText(), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => new RuleSet([row with { Amperes = 21 }]));
    }

    // A device on 1.5 mm² asks for 40 mm, on anything thicker for 50 mm.
    [Theory]
    [InlineData("3G1.5", 40, true)]
    [InlineData("3G1.5", 39, false)]
    [InlineData("3G2.5", 50, true)]
    [InlineData("3G2.5", 49, false)]
    public void Depth_OnMetricConductors_IsThatOfTheirSize(string cable, int deep, bool meets)
    {
        DepthLimit row = new("depth", "deep enough", Severity.Violation, House)
        {
            OnConductors = new DepthOnConductors[] { new(ConductorSize.FromSquareMillimeters(1.5m), Distance.FromMillimeters(40)), new(null, Distance.FromMillimeters(50)) },
        };
        DeviceBox box = Box.WithCables(new[] { CableType.Parse(cable) }).WithSize(new BoxSize(Distance.FromMillimeters(60), Distance.FromMillimeters(100), Distance.FromMillimeters(deep)));
        Assert.Equal(meets, Evaluate(row, box).Findings.Count == 0);
        Assert.Throws<ArgumentException>(() => new RuleSet([row with { OnConductors = default }]));
    }

    private static DeviceBox Box { get; } = new DeviceBox("socket", BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithGangs(1)
        .WithAt(Distance.FromMillimeters(1000)).WithHeight(BoxHeight.ToCenter(Distance.FromMillimeters(300), Datum.Subfloor)).WithCables(new[] { CableType.Parse("3G1.5"), CableType.Parse("5G2.5") });

    private static Evaluation Evaluate(Rule row, DeviceBox box) => new LayoutEvaluator(new RuleSet([row])).Evaluate(new Dwelling("case").WithUnits(LengthUnits.Millimeters).WithStoreys(new Storey("ground"))
        .WithRooms(new Room("hall", RoomKind.Hall, "ground").WithWalls(new Wall("north", Distance.FromMillimeters(3000)).WithBoxes(box))));
}
