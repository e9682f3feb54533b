using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>What a person walks through: common practice, no source.</summary>
public sealed class ThingInPlanTests
{
    // A window to the floor whose sill nobody states is still a window; a hatch has a sill, and a door's may be said to lie at the floor.
    [Theory]
    [InlineData("door", null, true)]
    [InlineData("cased", null, true)]
    [InlineData("door", "0", true)]
    [InlineData("door", "1/128", false)]
    [InlineData("window", null, false)]
    [InlineData("window", "0", false)]
    [InlineData("window", "36", false)]
    [InlineData("pass-through", null, false)]
    [InlineData("pass-through", "0", false)]
    public void IsDoorway_OfAKindAndASill_IsWhatOneWalksThrough(string kind, string? sill, bool walked)
    {
        Opening opening = new("o", new OpeningKind(kind), CaseFile.Inches("20"), CaseFile.Inches("50"));
        opening = sill is null ? opening : opening.WithSill(new Level(CaseFile.Inches(sill), Datum.Subfloor));
        Assert.Equal(walked, ThingInPlan.IsDoorway(opening));
        Assert.Equal(walked, ThingInPlan.HasDoorway(new Wall("w", CaseFile.Inches("100")).WithOpenings(new[] { opening })));
    }
}
