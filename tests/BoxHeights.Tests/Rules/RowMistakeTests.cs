using System;
using System.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>A row that can't be meant is refused where it enters a set, with all that is wrong with it; and what the library offers for rows forgets no kind.</summary>
public sealed class RowMistakeTests
{
    private static readonly Citation House = new("House rules");
    private static readonly HeightBand Good = new("own", "there", Severity.Advice, House, Datum.Subfloor) { Low = CaseFile.Inches("40"), High = CaseFile.Inches("50") };

    [Theory]
    [InlineData("50", "50", null)]
    [InlineData("40", null, null)]
    [InlineData(null, "50", null)]
    [InlineData(null, null, "it has neither a Low nor a High")]
    [InlineData("50.125", "50", "its Low, 50-1/8 in, is above its High, 50 in")]
    public void HeightBand_WhoseLimitsContradict_IsRefused(string? low, string? high, string? mistake) =>
        Expect(mistake, Good with { Low = low is null ? null : CaseFile.Inches(low), High = high is null ? null : CaseFile.Inches(high) });

    [Fact]
    public void HeightBand_OneTickTooHigh_IsRefused()
    {
        Expect(null, Good with { Low = Good.High });
        Expect("its Low, ", Good with { Low = Good.High!.Value + Distance.FromTicks(1) });
    }

    [Fact]
    public void Reading_OfAnotherRow_IsRefusedWithAllThatIsWrong()
    {
        HeightBand other = Good with { Id = "other", Severity = Severity.Note, High = CaseFile.Inches("60") };
        Expect("its reading \"wide\" is a row of another id, \"other\"; its reading \"wide\" weighs otherwise.", Good with { Readings = new[] { new Reading("wide", "wider", other) } });
        Expect("its reading \"wide\" is there twice", Good with { Readings = new[] { new Reading("wide", "wider", Good), new Reading("wide", "wider", Good) } });
        Expect("its reading \"wide\" is a rule of another family", Good with { Readings = new[] { new Reading("wide", "wider", new GapLimit("own", "small", Severity.Advice, House, CaseFile.Inches("1"))) } });
        Expect("its reading \"wide\" can't be meant: it has neither", Good with { Readings = new[] { new Reading("wide", "wider", Good with { Low = null, High = null }) } });
        Expect(null, Good with { Readings = new[] { new Reading("wide", "wider", Good with { High = CaseFile.Inches("60") }) } });
    }

    // A countertop is somewhere else along each wall: a zone round a tub has none.
    [Theory]
    [InlineData("8 ft above rim", null)]
    [InlineData("8 ft above finished floor", null)]
    [InlineData("8 ft above countertop", "it is measured above countertop")]
    [InlineData("8 ft above existing plate", "it is measured above existing plate")]
    public void Zone_FromALocalDatum_IsRefused(string top, string? mistake) =>
        Expect(mistake, new Zone("own", "outside", Severity.Advice, House, new RoomAnchor { Fixtures = new[] { FixtureKind.Tub } }, CaseFile.Inches("36")) { Top = Level.Parse(top) });

    // What is set into a counter has its countertop.
    [Fact]
    public void Zone_FromTheTopOfACooktop_CanBeMeant() =>
        Expect(null, new Zone("own", "outside", Severity.Advice, House, new RoomAnchor { Interruptions = new[] { InterruptionKind.Cooktop } }, Distance.Zero) { Bottom = Level.Parse("0 in above countertop") });

    [Theory]
    [InlineData(WallPieces.None, "0", "it keeps clear of nothing")]
    [InlineData(WallPieces.Casings, "0", "it doesn't say how far")]
    [InlineData(WallPieces.Openings, "1", "it speaks of neither")]
    [InlineData(WallPieces.InsideCorners, "1", null)]
    public void KeepClear_WithoutWhatItMeasures_IsRefused(WallPieces of, string least, string? mistake) =>
        Expect(mistake, new KeepClear("own", "clear", Severity.Advice, House, of) { Least = CaseFile.Inches(least) });

    [Fact]
    public void HeightBand_FromADatumThatIsnt_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => new HeightBand("own", "low", Severity.Advice, House, (Datum)77));

    [Fact]
    public void ProudLimit_BelowZero_IsRefused() => Expect("is negative", new ProudLimit("own", "flat", Severity.Advice, House, Distance.FromTicks(-1)));

    [Fact]
    public void HeightBand_OfOneHeightThatIsntAllowed_IsRefused() => Expect("is above its High", Good with { Low = Good.High, HighIsStrict = true });

    [Fact]
    public void Zone_WhoseBottomIsItsTop_IsRefused() => Expect("its Bottom, ", new Zone("own", "outside", Severity.Advice, House, new RoomAnchor { Fixtures = new[] { FixtureKind.Tub } }, CaseFile.Inches("36"))
    {
        Bottom = new Level(CaseFile.Inches("20"), Datum.FinishedFloor),
        Top = new Level(CaseFile.Inches("20"), Datum.FinishedFloor),
    });

    // The one number of this form isn't told by anything that it shows.
    [Fact]
    public void RowWhoseNumbersDontTellItFromAnother_CantReplaceIt()
    {
        RuleSet set = new([new Hidden(1)]);
        ArgumentException refused = Assert.Throws<ArgumentException>(() => set.With(new Hidden(2)));
        Assert.Contains("let its Numbers say all that it goes by", refused.Message, StringComparison.Ordinal);
        Assert.Equal(set, set.With(new Hidden(1)));
    }

    [Fact]
    public void Row_InOtherWords_MayReplaceIt_AndHasTheSameFingerprint()
    {
        RuleSet set = new([Good]);
        RuleSet reworded = set.With(Good with { Summary = "where it belongs", Citation = new("Another book"), LeavesOut = "the rest" });
        Assert.Equal(set.Fingerprint, reworded.Fingerprint);
        Assert.NotEqual(set, reworded);
        Assert.NotEqual(set.Fingerprint, set.With(Good with { High = Good.High!.Value + Distance.FromTicks(1) }).Fingerprint);
        Assert.NotEqual(set.Fingerprint, set.With(Good with { Relief = Relief.ComparableInRoom }).Fingerprint);
        Assert.NotEqual(set.Fingerprint, set.With(Good with { Readings = new[] { new Reading("low", "lower", Good with { High = CaseFile.Inches("45") }) } }).Fingerprint);
    }

    [Fact]
    public void Groups_HoldEveryKindOfTheirSort()
    {
        Assert.Equal(DeviceKind.Known.Where(kind => kind.Name.EndsWith("receptacle", StringComparison.Ordinal)), DeviceKind.Receptacles);
        Assert.Contains(DeviceKind.GfciReceptacle, DeviceKind.Receptacles);
        Assert.Equal(["switch", "three-way-switch", "four-way-switch", "dimmer", "toggle-switch", "rocker-switch", "push-switch", "three-way-toggle-switch", "three-way-rocker-switch",
            "four-way-toggle-switch", "four-way-rocker-switch", "slide-dimmer", "rotary-dimmer", "fan-control"], DeviceKind.Switches.Select(kind => kind.Name));
        Assert.Equal(DeviceKind.Known.Where(kind => kind.IsSwitch || kind.IsReceptacle || kind == DeviceKind.Thermostat || kind == DeviceKind.DoorbellButton), DeviceKind.Operated);
    }

    [Fact]
    public void EveryRowOfTheLibrary_CanBeMeant_AndHasDataOfItsOwn()
    {
        Rule[] rows = [.. Enum.GetValues<NecEdition>().SelectMany(edition => (RuleSets.UnitedStatesDwelling(edition) + RuleSets.UnitedStatesOutlets(edition)).Rows).Concat(RuleSets.RoughInPractice.Rows).Concat(RuleSets.CanadaDwelling.Rows)];
        Assert.True(rows.Length > 150);
        foreach (Rule[] same in rows.GroupBy(row => row.Data()).Select(group => group.ToArray()))
        {
            Assert.All(same, row => Assert.True(row.IsSameInOtherWords(same[0]), row.Id + "\n" + row.Data()));
        }
    }

    [Fact]
    public void ControlledLights_ThatKnowNoSwitchesThatGoTogether_AreRefused()
    {
        ControlledLights row = new("own", "in pairs", Severity.Advice, House, new[] { DeviceKind.Luminaire }, ControlAsked.OfWays);
        Expect("has no Ways", row);
        Expect(null, row with { Asked = ControlAsked.OfEachLight });
        Expect(null, row with { Ways = new(new[] { DeviceKind.Switch }, new[] { DeviceKind.ThreeWaySwitch }, default) });
    }

    private static void Expect(string? mistake, Rule row)
    {
        if (mistake is null)
        {
            Assert.Equal(row, new RuleSet([row]).Row(row.Id));
            return;
        }

        Assert.Contains(mistake, Assert.Throws<ArgumentException>(() => new RuleSet([row])).Message, StringComparison.Ordinal);
        Assert.Contains(mistake, Assert.Throws<ArgumentException>(() => RuleSet.Empty.With(row)).Message, StringComparison.Ordinal);
    }

    private sealed record Hidden : HiddenBase
    {
        private readonly int number;

        public Hidden(int number) => this.number = number;

        public int Number() => number;
    }

    private abstract record HiddenBase : PlacementRule
    {
        protected HiddenBase()
            : base("hidden", "there", Severity.Advice, House)
        {
        }

        public override string Numbers => "one";

        public override void State(PlacementSite site, PlacementStatement statement) => statement.Everywhere(AllowedHeights.Anything);
    }
}
