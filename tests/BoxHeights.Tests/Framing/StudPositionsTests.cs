using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Cases;
using Fractions;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Framing;

public sealed class StudPositionsTests
{
    private static readonly Fraction InchesInAMillimeter = new(10, 254);

    [Fact]
    public void TryCenter_OfPublishedLayouts_IsThePublishedPlace()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("studs.csv"))
        {
            Fraction unit = row["unit"] == "mm" ? InchesInAMillimeter : Fraction.One;
            Distance Of(string name) => CaseFile.Inches(CaseFile.Number(row[name]) * unit);
            StudSide side = row["side"] == "right" ? StudSide.Right : StudSide.Left;
            StudLayout layout = new() { Spacing = Of("spacing"), Thickness = Of("thickness"), From = row["from"] == "right" ? WallEnd.Right : WallEnd.Left };
            StudPositions studs = StudPositions.Along(layout, Of("wall"));
            Assert.True(studs.TryCenter(int.Parse(row["stud"], System.Globalization.CultureInfo.InvariantCulture), side, Of("width"), out Distance center), row["id"]);
            Assert.Equal(Of("center"), center);

            // The second road: stud centers are whole spacings from the end that the layout is pulled from, and a box is half of stud and box beside one.
            Fraction beside = (CaseFile.Number(row["thickness"]) + CaseFile.Number(row["width"])) / new Fraction(2);
            Fraction from = CaseFile.Number(row["center"]) + (side == StudSide.Right ? -beside : beside);
            Fraction fromEnd = row["from"] == "right" ? CaseFile.Number(row["wall"]) - from : from;
            Assert.True((fromEnd / CaseFile.Number(row["spacing"])).Denominator.IsOne, row["id"]);
        }
    }

    [Fact]
    public void Along_PulledFromTheRight_MirrorsTheLeft() => Prop.ForAll(Layouts(), at =>
    {
        StudPositions left = StudPositions.Along(at.Layout with { From = WallEnd.Left }, at.Wall);
        StudPositions right = StudPositions.Along(at.Layout with { From = WallEnd.Right }, at.Wall);
        Distance wide = CaseFile.Inches("2-1/4");
        return left.Count == right.Count && Enumerable.Range(1, left.Count).All(stud =>
            left.TryCenter(stud, StudSide.Left, wide, out Distance one) && right.TryCenter(left.Count + 1 - stud, StudSide.Right, wide, out Distance other)
            && one == at.Wall - other);
    }).Check(Tries.Always(100));

    [Fact]
    public void Along_StudsOfAWall_StandWithinIt() => Prop.ForAll(Layouts(), at =>
    {
        StudPositions studs = StudPositions.Along(at.Layout, at.Wall);
        Distance[] centers = Enumerable.Range(1, studs.Count).Select(stud => CenterOf(studs, stud, at.Layout.Thickness!.Value)).ToArray();
        return centers.Zip(centers.Skip(1), (a, b) => b - a == at.Layout.Spacing).All(even => even)
            && centers.All(center => center > Distance.Zero && center < at.Wall);
    }).Check(Tries.Always(100));

    [Fact]
    public void Along_MeasuredFaces_AreTakenAsTheyAreInOrder()
    {
        StudLayout layout = new() { Spacing = CaseFile.Inches("16"), Faces = new[] { CaseFile.Inches("40"), CaseFile.Inches("12"), CaseFile.Inches("25") }, Known = StudKnowledge.Measured };
        StudPositions studs = StudPositions.Along(layout, CaseFile.Inches("60"));
        Assert.Equal(3, studs.Count);
        Assert.Equal(StudKnowledge.Measured, studs.Known);
        Assert.True(studs.TryCenter(1, StudSide.Left, CaseFile.Inches("4"), out Distance first));
        Assert.Equal(CaseFile.Inches("10"), first);
        Assert.True(studs.TryCenter(3, StudSide.Right, CaseFile.Inches("4"), out Distance last));
        Assert.Equal(CaseFile.Inches("43-1/2"), last);
    }

    // In 33 in of wall the second stud at 16 on center would stand from 31-1/4 to 32-3/4, where the corner's stands from 31-1/2 on: there is one stud, whichever end is the first.
    [Theory]
    [InlineData(WallEnd.Left, "15-1/4")]
    [InlineData(WallEnd.Right, "16-1/4")]
    public void Along_MarkOnTheFarCornersStud_IsNoStud(WallEnd from, string face)
    {
        StudPositions studs = StudPositions.Along(new StudLayout { Spacing = CaseFile.Inches("16"), From = from }, CaseFile.Inches("33"));
        Assert.Equal(1, studs.Count);
        Assert.True(studs.TryFaces(1, out Distance left, out _));
        Assert.Equal(CaseFile.Inches(face), left);

        // 34-1/4 in: it touches the corner's and stands.
        Assert.Equal(2, StudPositions.Along(new StudLayout { Spacing = CaseFile.Inches("16"), From = from }, CaseFile.Inches("34-1/4")).Count);
    }

    // 15-1/4 in to the first stud's face, and 3 in for it and the corner's: 18-1/4 in hold one.
    [Theory]
    [InlineData(-1, 0)]
    [InlineData(0, 1)]
    [InlineData(1, 1)]
    public void Along_AWallThatJustHoldsOneStud_HasIt(int ticks, int studs) =>
        Assert.Equal(studs, StudPositions.Along(new StudLayout { Spacing = CaseFile.Inches("16") }, CaseFile.Inches("18-1/4") + Distance.FromTicks(ticks)).Count);

    [Fact]
    public void Faces_OfAnyLayout_AreThoseOfEachStud() => Prop.ForAll(Layouts(), at =>
    {
        StudPositions studs = StudPositions.Along(at.Layout, at.Wall);
        return studs.Faces.Count == studs.Count && Enumerable.Range(1, studs.Count).All(stud => studs.TryFaces(stud, out Distance left, out Distance right)
            && studs.Faces[stud - 1] == new DistanceRange(left, right) && right - left == at.Layout.Thickness);
    }).Check(Tries.Always(100));

    [Fact]
    public void TryCenter_NoSuchStud_IsFalse()
    {
        StudPositions studs = StudPositions.Along(new StudLayout { Spacing = CaseFile.Inches("16") }, CaseFile.Inches("40"));
        Assert.Equal(2, studs.Count);
        Assert.False(studs.TryCenter(0, StudSide.Left, CaseFile.Inches("2"), out _));
        Assert.False(studs.TryCenter(3, StudSide.Left, CaseFile.Inches("2"), out _));
        Assert.Throws<ArgumentNullException>(() => StudPositions.Along(null!, CaseFile.Inches("40")));
    }

    private static Distance CenterOf(StudPositions studs, int stud, Distance thickness)
    {
        Assert.True(studs.TryCenter(stud, StudSide.Left, Distance.Zero, out Distance face));
        return face + Distance.FromTicks(thickness.Ticks / 2);
    }

    private static Arbitrary<(StudLayout Layout, Distance Wall)> Layouts() => Arb.From(
        from spacing in Gen.Elements("12", "16", "19-1/4", "24")
        from thickness in Gen.Elements("1-1/2", "1-5/8", "3")
        from end in Gen.Elements(WallEnd.Left, WallEnd.Right)
        from wall in Gen.Choose(64, 3000)
        select (new StudLayout { Spacing = CaseFile.Inches(spacing), Thickness = CaseFile.Inches(thickness), From = end }, Distance.FromTicks(wall * 127_000L)));
}
