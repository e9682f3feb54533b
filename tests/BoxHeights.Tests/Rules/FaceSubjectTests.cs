using System;
using System.Linq;
using BoxHeights.Tests.Cases;
using FsCheck;
using FsCheck.Fluent;
using Xunit;
using static BoxHeights.Tests.Rules.RequiredOutletSketch;

namespace BoxHeights.Tests.Rules;

/// <summary>Outside faces, and the decks before them: NEC 210.52(E).</summary>
public sealed class FaceSubjectTests
{
    private static readonly Distance Tick = Distance.FromTicks(1);

    [Fact]
    public void FaceOutlets_FrontBackAndEntrance_AreLackingWhereTheyAre()
    {
        DeviceBox Outside(string id, string device, string purpose, int at) => new DeviceBox(id, new BoxPurpose(purpose)).WithDevices(new[] { new DeviceKind(device) })
            .WithAt(Distance.FromInches(at, 0, 1)).WithHeight(BoxHeight.ToCenter(In("20"), Datum.Grade));
        OutsideFace Face(string id, params DeviceBox[] boxes) => new OutsideFace(id).WithWalls(new[] { new Wall("face", In("300")).WithOpenings(new[] { new Opening(id + "-door", OpeningKind.Door, In("100"), In("138")) }).WithBoxes(boxes) });
        Dwelling house = new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey.WithGradeBelowSubfloor(In("12")) })
            .WithOutside(new[] { Face("front", Outside("x1", "gfci-receptacle", "exterior", 40), Outside("l1", "luminaire", "light", 90)), Face("back", Outside("bell", "doorbell-button", "doorbell", 90)) });
        Finding receptacle = Assert.Single(Evaluate(NecEdition.Nec2023, "front-and-back", house).Findings);
        Assert.Equal("back", receptacle.Subject);
        Assert.True(Evaluate(NecEdition.Nec2023, "front-and-back", receptacle.Remedies[0].ApplyTo(house)).IsClean);
        Assert.Equal("back", Assert.Single(Evaluate(NecEdition.Nec2023, "entrance-light", house).Findings).Subject);
        Assert.True(Evaluate(NecEdition.Nec2023, "front-and-back", house.WithOccupancy(Occupancy.CoveredMultifamily)).IsClean);
    }

    // Until 2017 a deck counts that is reached from inside; from 2020 one within 4 in of the house.
    [Fact]
    public void Deck_WithoutADoor_IsAskedForAReceptacleFrom2020()
    {
        Assert.True(Evaluate(NecEdition.Nec2017, "deck-receptacle", Deck(In("1"), null)).IsClean);
        Assert.Single(Evaluate(NecEdition.Nec2020, "deck-receptacle", Deck(In("1"), null)).Findings);
        Finding open = Assert.Single(Evaluate(NecEdition.Nec2023, "deck-receptacle", Deck(null, null)).Findings);
        Assert.Equal((Verdict.Unknown, MissingFacts.PlanPlace), (open.Verdict, open.Needs));
    }

    // From a deck nobody reaches what is under its surface.
    [Theory]
    [InlineData(-1, 1)]
    [InlineData(0, 0)]
    public void Deck_ReceptacleUnderItsSurface_DoesNotServeIt(int ticks, int lacking)
    {
        Dwelling house = Deck(In("1"), In("20"));
        Level surface = house.Outside[0].Platforms[0].Surface!.Value;
        Dwelling set = house.WithBoxes(box => box.WithHeight(BoxHeight.ToCenter(surface.Offset + Distance.FromTicks(ticks), surface.Datum)));
        Assert.Equal(lacking, Evaluate(NecEdition.Nec2023, "deck-receptacle", set).Findings.Count);
    }

    // 78 in above grade is no more than that above a deck that stands on it; higher up the deck's surface decides.
    [Fact]
    public void Deck_OfUnstatedSurface_IsUnknownOnlyWhereThatDecides()
    {
        Distance limit = In(CaseFile.Table("required-outlets.csv").First(row => row["what"] == "above the deck")["value"]);
        Finding? Found(BoxHeight height)
        {
            Dwelling house = Deck(In("1"), In("20")).WithBoxes(box => box.WithHeight(height));
            return Evaluate(NecEdition.Nec2023, "deck-receptacle", house.WithOutside(house.Outside.Select(face => face.WithPlatforms(face.Platforms.Select(deck => deck.WithSurface(null)).ToArray())).ToArray())).Findings.SingleOrDefault();
        }

        Assert.Null(Found(BoxHeight.ToCenter(limit - Tick, Datum.Grade)));
        Assert.Null(Found(BoxHeight.ToCenter(limit, Datum.Grade)));
        Finding high = Found(BoxHeight.ToCenter(limit + Tick, Datum.Grade))!;
        Assert.Equal((Verdict.Unknown, MissingFacts.Datum), (high.Verdict, high.Needs));
    }

    // NEC 210.70(A)(2), from memory, asks for light on the outer side of each outdoor entrance. A light beside one door leaves another in the dark that is 30 ft away;
    // one between two doors a few feet apart lights both.
    [Theory]
    [InlineData(new[] { 100, 496 }, new[] { 140 }, "front door-1")]
    [InlineData(new[] { 100, 496 }, new[] { 490 }, "front door-0")]
    [InlineData(new[] { 100, 496 }, new[] { 140, 490 }, "")]
    [InlineData(new[] { 100, 196 }, new[] { 166 }, "")]
    [InlineData(new[] { 100, 196 }, new[] { 240 }, "")]
    [InlineData(new[] { 100, 196, 700 }, new[] { 166 }, "front door-2")]
    [InlineData(new[] { 100 }, new[] { 800 }, "front")]
    [InlineData(new[] { 100, 196 }, new[] { 800 }, "front")]
    public void EntranceLight_FarFromAnEntrance_DoesntLightIt(int[] doors, int[] lights, string dark)
    {
        Dwelling house = Entrances(doors, lights.Select(at => Distance.FromInches(at)).ToArray());
        Evaluation evaluation = Evaluate(NecEdition.Nec2023, "entrance-light", house);
        Assert.Equal(dark, string.Join(", ", evaluation.Findings.Select(one => one.Subject)));
        Assert.All(evaluation.Findings, one => Assert.Equal(Verdict.Fails, one.Verdict));
        Assert.Empty(evaluation.NotJudged);
        Assert.True(Evaluate(NecEdition.Nec2023, "entrance-light", evaluation.Mend().Dwelling).IsClean);
    }

    // Doors 5 ft apart share the light that is added; one 30 ft further on gets its own.
    [Fact]
    public void Mend_OfDarkEntrances_AddsOneLightForThoseThatAreClose()
    {
        Dwelling house = Entrances([100, 196, 700], []);
        Evaluation evaluation = new LayoutEvaluator(OneBox.Only(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023), "entrance-light"), EvaluatorOptions.Default.WithAllBoxesAreDescribed(true)).Evaluate(house);
        Assert.Equal(["front door-0", "front door-2"], evaluation.Findings.Select(one => one.Subject));
        Assert.Equal(2, evaluation.Mend().Dwelling.PlacedBoxes().Count(placed => placed.Box.Purpose == BoxPurpose.Light));
    }

    // How far a light reaches depends on the light: within 10 ft is taken for granted, up to 20 ft is told as not judged. Common practice, no source.
    [Fact]
    public void EntranceLight_BeyondTenFeet_IsToldAsNotJudged()
    {
        Assert.Empty(Open(In("120") - Tick));
        Assert.Empty(Open(In("120")));
        Assert.Equal(["entrance-light: whether the one that is nearest reaches it only a look on site could tell (front door-0)"], Open(In("120") + Tick));

        static string[] Open(Distance off) => [.. Evaluate(NecEdition.Nec2023, "entrance-light", Entrances([100], [In("136") + off])).NotJudged];
    }

    /// <summary>By brute force, in whole inches: the way from each door to the nearest light.</summary>
    [Fact]
    public void EntranceLight_OfRandomFaces_IsLackingWhereNoLightIsNear()
    {
        Prop.ForAll(Arb.From(Gen.Choose(0, 400).ArrayOf(6)), n =>
        {
            int[] doors = [n[0] % 100, 140 + (n[1] % 260), 440 + n[2]];
            int[] lights = [.. n.Skip(3).Take(1 + (n[5] % 3)).Select(at => at * 2)];
            int[] off = [.. doors.Select(left => lights.Min(at => Math.Max(0, Math.Max(left - at, at - left - 36))))];
            Evaluation evaluation = Evaluate(NecEdition.Nec2023, "entrance-light", Entrances(doors, lights.Select(at => Distance.FromInches(at)).ToArray()));
            return evaluation.Findings.Any(one => one.Verdict == Verdict.Fails) == off.Any(far => far > 240) && evaluation.NotJudged.Sum(line => line.Split("door-").Length - 1) == off.Count(far => far is > 120 and <= 240);
        }).Check(Tries.Always(100));
    }

    // A house all of whose boxes are described, of which nobody said what is before its front door: nobody looked at that.
    [Theory]
    [InlineData(true, "", "entrance-light: no outside face is described before its entrance (square)")]
    [InlineData(false, "", "")]
    [InlineData(true, "linked", "")]
    [InlineData(true, "of no room", "")]
    public void Entrance_WithoutAFaceBeforeIt_IsToldAsNotJudged(bool isWhole, string face, string told)
    {
        Opening door = new Opening("door", OpeningKind.Door, In("20"), In("56")).WithEntrance(EntranceSide.Inside);
        Wall outer = new Wall("face", In("144")).WithOpenings(new[] { door.WithEntrance(null) }).WithBoxes(new[] { SquareRoom.Box("luminaire", "light", In("70"), In("66")).WithId("l").WithHeight(BoxHeight.ToCenter(In("66"), Datum.Subfloor)) });
        Dwelling house = new SquareRoom { NorthOpenings = [door], NorthIsBackOf = face == "linked" ? "north/face" : null }.House();
        house = face.Length == 0 ? house : house.WithOutside(new[] { new OutsideFace("north").WithWalls(new[] { face == "linked" ? outer.WithOpenings(new[] { door.WithEntrance(null).WithLeft(In("88")).WithRight(In("124")) }) : outer }) });
        Evaluation evaluation = new LayoutEvaluator(OneBox.Only(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023), "entrance-light"), EvaluatorOptions.Default.WithAllBoxesAreDescribed(isWhole)).Evaluate(house);
        Assert.Equal(told, string.Join("; ", evaluation.NotJudged));
    }

    [Theory]
    [InlineData(true, null, "front-and-back: no outside face is described that is called front or back or rear (case)")]
    [InlineData(false, null, "")]
    [InlineData(false, "street", "front-and-back: no outside face is described that is called front or back or rear (case)")]
    [InlineData(true, "back", "")]
    public void FrontAndBack_WithoutEither_IsToldAsNotJudged(bool isWhole, string? face, string told)
    {
        Dwelling house = new SquareRoom().House();
        house = face is null ? house : house.WithOutside(new[] { new OutsideFace(face).WithWalls(new[] { new Wall("face", In("144")).WithBoxes(new[] { Receptacle(In("60"), "30").WithPurpose(BoxPurpose.Exterior).WithId("x") }) }) });
        Evaluation evaluation = new LayoutEvaluator(OneBox.Only(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023), "front-and-back"), EvaluatorOptions.Default.WithAllBoxesAreDescribed(isWhole)).Evaluate(house);
        Assert.Equal(told, string.Join("; ", evaluation.NotJudged));
    }
}
