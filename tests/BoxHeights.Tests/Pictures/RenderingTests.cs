#if !NETSTANDARD_ASSET
using System;
using System.IO;
using SkiaSharp;
using Xunit;

namespace BoxHeights.Tests.Pictures;

/// <summary>Pictures as they were when somebody looked at them: a change of how they look shows here, as a picture.</summary>
public sealed class RenderingTests
{
    private const int Wide = 480;

    // Edges fall on other pixels from one version of the renderer to the next.
    private const double Tolerance = 0.01;

    private static readonly string Folder = Path.Combine(Repository.Root, "tests", "BoxHeights.Tests", "Pictures", "Renderings");

    public static TheoryData<string> Walls => [.. Scenes.Walls.Keys];

    [Theory]
    [MemberData(nameof(Walls))]
    public void WallElevation_LooksAsItDid(string name)
    {
        Evaluation evaluation = Scenes.Walls[name]();
        AssertLooksAsItDid(name, WallElevation.For(evaluation, Scenes.Address(evaluation)).ToSvg(PictureOptions.Default.WithLayers(PictureLayers.All & ~PictureLayers.Legend)));
    }

    [Fact]
    public void RoomPicture_LooksAsItDid() => AssertLooksAsItDid("plan", RoomPicture.For(Scenes.Walls["kitchen"](), "room").ToSvg());

    [Fact]
    public void PolePicture_LooksAsItDid() => AssertLooksAsItDid("pole", PolePicture.For(StoryPole.For(Scenes.Walls["crowded"]())).ToSvg());

    [Fact]
    public void BoardCutouts_LookAsTheyDid()
    {
        Evaluation evaluation = Scenes.Walls["kitchen"]();
        AssertLooksAsItDid("cutouts", BoardCutouts.For(evaluation, Scenes.Address(evaluation)).ToSvg(0));
    }

    private static void AssertLooksAsItDid(string name, string svg)
    {
        string file = Path.Combine(Folder, name + ".png");
        using SKBitmap now = Rendering.Of(svg, Wide);
        if (Environment.GetEnvironmentVariable("BOXHEIGHTS_WRITE") == "pictures")
        {
            Directory.CreateDirectory(Folder);
            File.WriteAllBytes(file, Rendering.Png(now));
        }

        Assert.True(File.Exists(file), "There is no picture " + file + ": run this test with BOXHEIGHTS_WRITE=pictures, and look at it.");
        using SKBitmap before = SKBitmap.Decode(file);
        double difference = Rendering.Difference(now, before);
        if (difference > Tolerance)
        {
            string beside = Path.Combine(AppContext.BaseDirectory, name + "-now.png");
            File.WriteAllBytes(beside, Rendering.Png(now));
            Assert.Fail(FormattableString.Invariant($"{name}: {difference:P1} of it looks otherwise (\"!\" below). Now: {beside}; before: {file}. If it is meant, run with BOXHEIGHTS_WRITE=pictures.\n")
                + Rendering.Sketch(now, before));
        }
    }
}
#endif
