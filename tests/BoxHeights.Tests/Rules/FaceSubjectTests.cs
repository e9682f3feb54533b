using System.Linq;
using BoxHeights.Tests.Cases;
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
}
