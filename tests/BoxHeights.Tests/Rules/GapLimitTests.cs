using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using BoxHeights.Tests.Cases;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>The gap in the board round a flush box: NEC 314.21, and IBC 714.4.2 in walls that are declared rated.</summary>
public sealed class GapLimitTests
{
    private const int HalfWidth = 18;
    private const int HalfHeight = 30;

    private static readonly Arbitrary<int> Seeds = Arb.From(Gen.Choose(1, int.MaxValue - 1), _ => []);

    /// <summary>A finish in sixteenths: its rectangle, and whether it burns, if that is stated.</summary>
    private sealed record Patch(int Left, int Right, int Bottom, int Top, bool? Burns);

    [Fact]
    public void State_OneTickBelowAtAndAbove_TurnsAtTheLimit() => Assert.All(CaseFile.Table("board-gaps.csv"), Try);

    internal static void Try(Dictionary<string, string> row)
    {
        RuleSet rules = RuleSets.UnitedStatesDwelling((NecEdition)int.Parse(row["edition"], CultureInfo.InvariantCulture));
        Citation citation = rules.Row(row["rule"]).Citation;
        Assert.Equal((row["document"], row["section"], row["status"] == "memory"), (citation.Document, citation.Section, citation.Confidence == Confidence.FromMemory));
        foreach (int ticks in new[] { -1, 0, 1 })
        {
            OneBox box = Gap(CaseFile.Inches(row["limit"]) + Distance.FromTicks(ticks)) with { Rules = OneBox.Only(rules, row["rule"]), Wall = wall => wall.WithRated(row["rated"].Length > 0) };
            Assert.True((ticks > 0 ? Verdict.Fails : Verdict.Passes) == box.Verdict(), row["rule"]);
        }
    }

    [Fact]
    public void State_NotStatedOrNotFlush_IsSilent()
    {
        OneBox wide = Gap(CaseFile.Inches("1/2"));
        Assert.Equal(Verdict.Fails, wide.Verdict());
        Assert.Null((wide with { Box = wide.Box.WithBoardGap(null) }).Check());
        Assert.Null((wide with { Box = wide.Box.WithMounting(new Mounting(MountingMethod.Surface)) }).Check());
        Assert.Null((wide with { Box = wide.Box.WithSurface(BoxSurface.Cabinet) }).Check());
    }

    // What is listed for the wall has its own gap; a wall that isn't rated has nothing said of it under this rule.
    [Theory]
    [InlineData(true, FireProtection.None, Verdict.Fails)]
    [InlineData(true, FireProtection.PuttyPad, Verdict.Fails)]
    [InlineData(true, FireProtection.Listed, null)]
    [InlineData(false, FireProtection.None, null)]
    public void RatedGap_SpeaksOfRatedWallsAndBoxesThatAreNotListed(bool rated, FireProtection protection, Verdict? expected)
    {
        OneBox wide = Gap(CaseFile.Inches("1/4"));
        Check? check = (wide with { Rules = OneBox.Only(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023), "rated-gap"), Wall = wall => wall.WithRated(rated), Box = wide.Box.WithFireProtection(protection) }).Check();
        Assert.Equal(expected, check?.Verdict);
    }

    [Fact]
    public void State_BoxInACeiling_IsJudged()
    {
        DwellingBuilder dwelling = new("case");
        dwelling.Add(new Storey("ground"));
        dwelling.Room("room", RoomKind.Kitchen, "ground").With(room => room.WithOverhead(new[] { new DeviceBox("light", BoxPurpose.Light).WithKind(BoxKind.Octagon).WithBoardGap(CaseFile.Inches("3/16")) }));
        Finding finding = Assert.Single(new LayoutEvaluator(Rows).Evaluate(dwelling.Build()).Findings);
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains("with a gap of 3/16 in round it", finding.Message, StringComparison.Ordinal);
        Assert.IsType<NoneFound>(finding.Remedies.Single());
    }

    // A box that lies wholly in paneling that burns is cut into that alone (314.21 speaks of what doesn't burn); whether a finish burns may not be stated.
    [Fact]
    public void State_BoxAnywhereAmongFinishes_AgreesWithRectangles() => Prop.ForAll(Seeds, seed =>
    {
        Random random = new(seed);
        Patch[] patches = Enumerable.Range(0, random.Next(0, 4)).Select(_ =>
        {
            int left = random.Next(0, 1600);
            int bottom = random.Next(0, 1000);
            return new Patch(left, left + random.Next(1, 600), bottom, bottom + random.Next(1, 400), new bool?[] { true, false, null }[random.Next(3)]);
        }).ToArray();
        (int at, int up) = (random.Next(HalfWidth, 2304 - HalfWidth), random.Next(HalfHeight, 1500));
        if (patches.Length > 0 && random.Next(4) > 0)
        {
            Patch near = patches[random.Next(patches.Length)];
            int nudge = random.Next(-1, 2);
            at = Math.Clamp(random.Next(3) switch { 0 => near.Left + HalfWidth + nudge, 1 => near.Right - HalfWidth + nudge, _ => (near.Left + near.Right) / 2 }, HalfWidth, 2304 - HalfWidth);
            up = Math.Max(HalfHeight, random.Next(3) switch { 0 => near.Bottom + HalfHeight + nudge, 1 => near.Top - HalfHeight + nudge, _ => (near.Bottom + near.Top) / 2 });
        }

        bool In(Patch patch) => patch.Left <= at - HalfWidth && at + HalfWidth <= patch.Right && patch.Bottom <= up - HalfHeight && up + HalfHeight <= patch.Top;
        bool? burns = patches.Any(patch => patch.Burns == true && In(patch)) ? true : patches.Any(patch => patch.Burns is null && In(patch)) ? null : false;
        OneBox box = Gap(CaseFile.Inches("1/4"));
        box = box with
        {
            Wall = wall => wall.WithFinishes(patches.Select((patch, i) => new Finish("patch" + i, FinishKind.Panel, DwellingGen.Sixteenths(patch.Left), DwellingGen.Sixteenths(patch.Right))
                .WithBottom(new Level(DwellingGen.Sixteenths(patch.Bottom), Datum.Subfloor)).WithTop(new Level(DwellingGen.Sixteenths(patch.Top), Datum.Subfloor)).WithCombustible(patch.Burns)).ToArray()),
            Box = box.Box.WithSize(new BoxSize(DwellingGen.Sixteenths(2 * HalfWidth), DwellingGen.Sixteenths(2 * HalfHeight))).WithAt(DwellingGen.Sixteenths(at)).WithHeight(BoxHeight.ToCenter(DwellingGen.Sixteenths(up), Datum.Subfloor)),
        };
        Finding? finding = box.Evaluate().Findings.SingleOrDefault();
        Assert.True((burns == true) == finding is null, seed.ToString(CultureInfo.InvariantCulture));
        Assert.True(finding is null || (burns is null ? MissingFacts.Combustible : MissingFacts.None) == finding.Needs, seed.ToString(CultureInfo.InvariantCulture));
        return true;
    }).Check(Tries.Always(400));

    private static RuleSet Rows => OneBox.Only(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023), "box-gap");

    private static OneBox Gap(Distance gap) => new()
    {
        Rules = Rows,
        Box = new DeviceBox(OneBox.Id, BoxPurpose.Switch)
        {
            Devices = new[] { DeviceKind.Switch },
            At = OneBox.Middle,
            Height = BoxHeight.ToTop(CaseFile.Inches("48"), Datum.Subfloor),
            BoardGap = gap,
        },
    };
}
