#if !NETSTANDARD_ASSET
using System;
using System.IO;
using System.Linq;
using System.Text;
using System.Xml.Linq;
using SkiaSharp;
using Svg.Skia;

namespace BoxHeights.Tests.Pictures;

/// <summary>A picture as pixels, drawn by a library that knows nothing of this one. Letters are left out: fonts differ from machine to machine, and where labels stand is tested from the SVG.</summary>
internal static class Rendering
{
    public static SKBitmap Of(string svg, int width)
    {
        XDocument drawing = XDocument.Parse(svg);
        drawing.Descendants().Where(one => one.Name.LocalName == "text").ToList().ForEach(text => text.Remove());
        using SKSvg read = new();
        SKPicture picture = read.FromSvg(drawing.ToString(SaveOptions.DisableFormatting)) ?? throw new InvalidDataException("The renderer reads nothing.");
        float scale = width / picture.CullRect.Width;
        return picture.ToBitmap(SKColors.White, scale, scale, SKColorType.Rgba8888, SKAlphaType.Premul, SKColorSpace.CreateSrgb())!;
    }

    public static byte[] Png(SKBitmap bitmap)
    {
        using SKData data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    /// <summary>Where two pictures differ by more than an eighth of full contrast, as a share of all pixels.</summary>
    public static double Difference(SKBitmap one, SKBitmap other) => one.Width != other.Width || one.Height != other.Height
        ? 1
        : Enumerable.Range(0, one.Width * one.Height).Count(i => IsOff(one, other, i % one.Width, i / one.Width)) / (double)(one.Width * one.Height);

    /// <summary>The picture and where it differs from another, for a message: darker signs for more ink, "!" where they differ.</summary>
    public static string Sketch(SKBitmap now, SKBitmap before)
    {
        const int Columns = 96;
        StringBuilder text = new();
        int cell = Math.Max(1, now.Width / Columns);
        for (int y = 0; y < now.Height; y += cell * 2)
        {
            for (int x = 0; x < now.Width; x += cell)
            {
                (int ink, int off, int all) = (0, 0, 0);
                for (int dy = 0; dy < cell * 2 && y + dy < now.Height; dy++)
                {
                    for (int dx = 0; dx < cell && x + dx < now.Width; dx++)
                    {
                        all++;
                        ink += 255 - now.GetPixel(x + dx, y + dy).Green;
                        off += x + dx >= before.Width || y + dy >= before.Height || IsOff(now, before, x + dx, y + dy) ? 1 : 0;
                    }
                }

                text.Append(off * 8 > all ? '!' : " .:+#"[Math.Min(4, ink * 8 / (all * 255))]);
            }

            text.Append('\n');
        }

        return text.ToString();
    }

    private static bool IsOff(SKBitmap one, SKBitmap other, int x, int y)
    {
        (SKColor a, SKColor b) = (one.GetPixel(x, y), other.GetPixel(x, y));
        return Math.Max(Math.Abs(a.Red - b.Red), Math.Max(Math.Abs(a.Green - b.Green), Math.Abs(a.Blue - b.Blue))) > 32;
    }
}
#endif
