using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

public sealed class RuleSetTests
{
    private static readonly RuleSet Nec = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023);
    private static readonly RuleSet All = Nec + RuleSets.RoughInPractice + RuleSets.Ada2010;

    [Fact]
    public void Add_InAnyOrder_IsTheSameSet()
    {
        RuleSet other = RuleSets.Ada2010 + RuleSets.RoughInPractice + Nec;
        Assert.Equal(All, other);
        Assert.Equal(All.GetHashCode(), other.GetHashCode());
        Assert.Equal(All.Fingerprint, other.Fingerprint);
        Assert.Equal(All.Describe(), other.Describe());
    }

    [Fact]
    public void New_RowsShuffled_IsTheSameSet() => Prop.ForAll(Arb.From(Gen.Shuffle(All.Rows.ToArray())), rows =>
    {
        RuleSet set = new(rows);
        return set.Equals(All) && set.Fingerprint == All.Fingerprint;
    }).Check(Tries.Always(100));

    [Fact]
    public void Add_IdenticalRows_CountOnce()
    {
        Assert.Equal(All, All + RuleSets.Ada2010);
        Assert.Equal(All.Rows.Count, (All + All).Rows.Count);
        Assert.Equal(Nec, Nec + RuleSets.UnitedStatesDwelling(NecEdition.Nec2023));
        Assert.Equal(Nec, Nec + RuleSet.Empty);
    }

    [Fact]
    public void Add_OtherContentUnderOneId_ThrowsAndNamesIt()
    {
        ArgumentException two = Assert.Throws<ArgumentException>(() => RuleSets.UnitedStatesDwelling(NecEdition.Nec2017) + Nec);
        Assert.Contains("\"box-depth\"", two.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => All + RuleSets.Ada2010.WithSeverity("ada-reach", Severity.Note));
    }

    [Fact]
    public void With_ARowOfTheSameId_ReplacesIt()
    {
        HeightBand band = (HeightBand)RuleSets.Ada2010.Row("ada-reach");
        RuleSet stricter = OneBox.Only(RuleSets.Ada2010, "ada-reach").With(band with { Low = CaseFile.Inches("18") });
        Assert.Single(stricter.Rows);
        Assert.Equal(CaseFile.Inches("18"), ((HeightBand)stricter.Row("ada-reach")).Low);
        Assert.NotEqual(OneBox.Only(RuleSets.Ada2010, "ada-reach").Fingerprint, stricter.Fingerprint);
        Assert.Equal(CaseFile.Inches("15"), ((HeightBand)RuleSets.Ada2010.Row("ada-reach")).Low);
    }

    [Fact]
    public void Without_ARow_LeavesTheOthers()
    {
        RuleSet fewer = All.Without("ada-reach");
        Assert.Equal(Nec + RuleSets.RoughInPractice, fewer);
        ArgumentException none = Assert.Throws<ArgumentException>(() => fewer.Without("ada-reach"));
        Assert.Contains("box-fill", none.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void WithSeverity_ARow_ChangesItsFindings()
    {
        OneBox box = new OneBox { Rules = RuleSets.Ada2010 }.At(BoxHeight.ToCenter(CaseFile.Inches("60"), Datum.FinishedFloor));
        Assert.Equal(Severity.Violation, box.Evaluate().Findings.Single().Severity);
        Assert.True(box.Evaluate().HasViolations);
        box = box with { Rules = RuleSets.Ada2010.WithSeverity("ada-reach", Severity.Advice) };
        Assert.Equal(Severity.Advice, box.Evaluate().Findings.Single().Severity);
        Assert.False(box.Evaluate().HasViolations);
        Assert.NotEqual(RuleSets.Ada2010.Fingerprint, box.Rules.Fingerprint);
        Assert.Equal(box.Rules.Fingerprint, box.Evaluate().RuleSetFingerprint);
    }

    [Fact]
    public void WithReading_EachRowThatHasSome_ThereAndBack()
    {
        Assert.Contains(All.Rows, row => row.Readings.Count > 0);
        foreach (Rule row in All.Rows)
        {
            foreach (Reading reading in row.Readings)
            {
                RuleSet other = All.WithReading(row.Id, reading.Id);
                Assert.Equal(reading.Id, other.Row(row.Id).ReadingId);
                Assert.Equal(reading.Rule.Numbers, other.Row(row.Id).Numbers);
                Assert.Contains(other.Row(row.Id).Readings, one => one.Id == row.ReadingId);
                Assert.NotEqual(All.Fingerprint, other.Fingerprint);

                RuleSet back = other.WithReading(row.Id, row.ReadingId);
                Assert.Equal(row.Numbers, back.Row(row.Id).Numbers);
                Assert.Equal(row.Readings.Select(one => one.Id).Order(StringComparer.Ordinal), back.Row(row.Id).Readings.Select(one => one.Id).Order(StringComparer.Ordinal));
            }

            Assert.Same(All, All.WithReading(row.Id, row.ReadingId));
            Assert.Throws<ArgumentException>(() => All.WithReading(row.Id, "no-such-reading"));
        }
    }

    // Who reads what a set asks for reads words: two of them that are run together, or with a capital within, are names of the code.
    [Fact]
    public void Describe_OfEveryUsualSet_IsInWords()
    {
        string text = (RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.UnitedStatesOutlets(NecEdition.Nec2023) + RuleSets.RoughInPractice + RuleSets.Ada2010).Describe();
        Assert.DoesNotMatch("[a-z][A-Z]", text);
        Assert.All(typeof(WallPieces).GetEnumNames().Where(name => name.Skip(1).Any(char.IsUpper)), name => Assert.DoesNotContain(name, text, StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain("range, range", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Describe_EachRow_IsNamedWithItsCitation()
    {
        string text = All.Describe();
        Assert.True(All.Rows.Count > 10);
        foreach (Rule row in All.Rows)
        {
            Assert.Contains("\n" + row.Id + " [", "\n" + text, StringComparison.Ordinal);
            Assert.Contains(row.Citation.Document, text, StringComparison.Ordinal);
            foreach (Reading reading in row.Readings)
            {
                Assert.Contains("(" + reading.Id + ")", text, StringComparison.Ordinal);
            }
        }

        Assert.Equal("", RuleSet.Empty.Describe());
    }

    // What a row says must show in the fingerprint, or two different sets would pass for one.
    [Fact]
    public void Fingerprint_AnyNumberOfARowChanged_IsAnother()
    {
        HeightBand band = (HeightBand)RuleSets.Ada2010.Row("ada-reach");
        Rule[] changed =
        [
            band with { Low = CaseFile.Inches("16") }, band with { High = CaseFile.Inches("47") }, band with { Datum = Datum.Subfloor },
            band with { LowLine = TargetLine.Center }, band with { HighLine = TargetLine.Center }, band with { Over = null }, band with { Severity = Severity.Note },
            band with { Over = band.Over! with { SideTopAtMost = CaseFile.Inches("35") } }, band with { Over = band.Over! with { ShallowDepth = null } },
            band with { Revision = 2 }, band with { NoteUnder = CaseFile.Inches("1") }, band with { YieldsWhenForced = true },
            band with { IsKeepOut = true }, band with { Preferred = BoxHeight.ToTop(CaseFile.Inches("40"), Datum.Subfloor) },
            band with { Scope = band.Scope with { ExceptDedicated = false } },
            band with { Scope = band.Scope with { Rooms = new[] { RoomKind.Kitchen } } }, band with { Readings = new[] { new Reading("other", "otherwise", band) } },
            band with { ReadingId = "other" },
        ];
        string[] prints = changed.Append(band).Select(row => new RuleSet([row]).Fingerprint).ToArray();
        Assert.Equal(prints.Length, prints.Distinct(StringComparer.Ordinal).Count());
        Assert.All(prints, print => Assert.Matches("^[0-9a-f]{16}$", print));
    }

    [Fact]
    public void Find_NoSuchRow_NamesThoseThereAre() =>
        Assert.Contains("ada-reach", Assert.Throws<ArgumentException>(() => RuleSets.Ada2010.Row("reach")).Message, StringComparison.Ordinal);

    [Fact]
    public void Add_Null_Throws()
    {
        Assert.Throws<ArgumentNullException>(() => All + null!);
        Assert.Throws<ArgumentNullException>(() => All.With(null!));
        Assert.Throws<ArgumentException>(() => new RuleSet([null!]));
    }

    [Fact]
    public void UnitedStatesDwelling_NoSuchEdition_Throws() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => RuleSets.UnitedStatesDwelling((NecEdition)2014));

    [Fact]
    public void FillCounting_NoSuchEdition_Throws() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => RuleSets.FillCounting((NecEdition)2014));

    // A comma for a point, and the sign of another minus: the rows are the same.
    [Fact]
    public void Fingerprint_InAnotherCulture_IsTheSame()
    {
        string here = (RuleSets.UnitedStatesOutlets(NecEdition.Nec2023) + RuleSets.RoughInPractice).Fingerprint;
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            foreach (string culture in new[] { "de-DE", "sv-SE", "fa-IR" })
            {
                CultureInfo.CurrentCulture = new CultureInfo(culture);
                Assert.Equal(here, (RuleSets.UnitedStatesOutlets(NecEdition.Nec2023) + RuleSets.RoughInPractice).Fingerprint);
                Assert.Contains("Part = 12.5", new OwnRule(12.5m).Data(), StringComparison.Ordinal);
                Assert.Equal(culture, CultureInfo.CurrentCulture.Name);
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private sealed record OwnRule(decimal Part) : LimitRule("own", "as it is", Severity.Note, Citation.CommonPractice)
    {
        public override string Numbers => "a part";

        public override void State(PlacementSite site, LimitStatement statement)
        {
        }

        public override IEnumerable<DeviceBox> Mends(BoxTraits box, Quantity measured, PartsCatalog catalog) => [];
    }
}
