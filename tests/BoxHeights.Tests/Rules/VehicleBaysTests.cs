using System.Linq;
using Xunit;
using static BoxHeights.Tests.Rules.RequiredOutletSketch;

namespace BoxHeights.Tests.Rules;

/// <summary>Garages: a receptacle for each vehicle bay.</summary>
public sealed class VehicleBaysTests
{
    // NEC 210.52(G)(1): one in each vehicle bay; a door of 16 ft leads to two.
    [Theory]
    [InlineData(108, 1, true)]
    [InlineData(192, 1, false)]
    [InlineData(192, 2, true)]
    public void Garage_OneReceptacleForEachBay(int door, int receptacles, bool enough)
    {
        SquareRoom garage = new()
        {
            Kind = RoomKind.Garage,
            Wide = In("264"),
            SouthOpenings = [new("door", new OpeningKind("overhead-door"), In("20"), In("20") + Distance.FromInches(door, 0, 1))],
            North = Enumerable.Range(1, receptacles).Select(i => Receptacle(Distance.FromInches((120 * i) - 60, 0, 1), "48").WithId("g" + i).WithPurpose(BoxPurpose.Garage)).ToArray(),
            Overhead = [Receptacle(In("0"), "0").WithId("opener").WithAt(null).WithHeight(null).WithPlan(new PlanPoint(In("100"), In("60"))).WithDedicated("door opener")],
        };
        Evaluation evaluation = Evaluate(NecEdition.Nec2023, "garage-bay", garage.House());
        Assert.Equal(enough, evaluation.IsClean);
        if (!enough)
        {
            Assert.Equal("one-bay-a-door", Assert.Single(evaluation.Findings[0].DisputedBy));
            Assert.True(Evaluate(NecEdition.Nec2023, "garage-bay", evaluation.Findings[0].Remedies[0].ApplyTo(evaluation.Dwelling)).IsClean);
        }

        Assert.True(Evaluate(NecEdition.Nec2017, "garage-bay", garage.House().WithOccupancy(Occupancy.CoveredMultifamily)).IsClean);
    }
}
