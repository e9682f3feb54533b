using Xunit;

namespace BoxHeights.Tests.Framing;

/// <summary>Where a header lies, and that one that is stated takes its place. On jacks of 1-1/2 in: common practice, no source.</summary>
public sealed class HeaderSpanTests
{
    private static readonly Opening Window = new Opening("window", OpeningKind.Window, In("40"), In("70")).WithHead(Level.Parse("80 in above subfloor"));

    [Fact]
    public void TryOf_AWindow_IsAJackLongerAtEachEnd()
    {
        Assert.True(HeaderSpan.TryOf(Window, new Wall("w", In("144")), null, UsualMeasures.Generic, out HeaderSpan header));
        Assert.Equal((In("38-1/2"), In("71-1/2"), Window.Head!.Value), (header.Left, header.Right, header.Bottom));
        Assert.Equal(Level.Parse("85-1/2 in above subfloor"), header.TopAt(In("5-1/2")));
    }

    // Over the window, or a tick of it; beside it, touching it, or something else over it.
    [Theory]
    [InlineData("header", "40", 0, "70", 0, false)]
    [InlineData("header", "20", 0, "40", 1, false)]
    [InlineData("header", "20", 0, "40", 0, true)]
    [InlineData("header", "70", -1, "90", 0, false)]
    [InlineData("header", "70", 0, "90", 0, true)]
    [InlineData("duct", "40", 0, "70", 0, true)]
    [InlineData("duct", "100", 0, "120", 0, true)]
    public void TryOf_WithSomethingStated_IsImpliedWhereNoHeaderIsOverIt(string kind, string left, int more, string right, int over, bool implied)
    {
        NoCavityKind stated = kind == "header" ? NoCavityKind.Header : NoCavityKind.Duct;
        Wall wall = new Wall("w", In("144")).WithNoCavity(new[] { new NoCavity(stated, In(left) + Distance.FromTicks(more), In(right) + Distance.FromTicks(over)) });
        Assert.Equal(implied, HeaderSpan.TryOf(Window, wall, null, UsualMeasures.Generic, out _));
    }

    [Fact]
    public void TryOf_WithoutAHeadOrWidth_IsNone()
    {
        Wall wall = new("w", In("144"));
        Assert.False(HeaderSpan.TryOf(Window.WithHead(null), wall, null, UsualMeasures.Generic, out _));
        Assert.False(HeaderSpan.TryOf(Window.WithRight(Window.Left), wall, null, UsualMeasures.Generic, out _));
    }
}
