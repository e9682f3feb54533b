#if !NETSTANDARD_ASSET
using BoxHeights.Interop;
using BoxHeights.Tests.Planning;
using Xunit;

namespace BoxHeights.Tests.Examples;

/// <summary>The two houses that the examples plan are those that the planner is tested with.</summary>
public sealed class BareHousesTests
{
    [Fact]
    public void File_OfTheRanch_IsTheRanch() => Assert.Equal(RanchHouse.Bare, DwellingJson.Read(Repository.Read("examples", "WholeHouse", "ranch.json")));

    [Fact]
    public void File_OfTheRowHouse_IsTheRowHouse() => Assert.Equal(RowHouse.Bare, DwellingJson.Read(Repository.Read("examples", "WholeHouse", "row-house.json")));
}
#endif
