using System;
using System.Globalization;
using System.Linq;
using BoxHeights.Tests.Cases;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Where on a wall a box is too far behind: random finishes against a comparison of rectangles in plain sixteenths of an inch.</summary>
public sealed class SetbackPlaceTests
{
    private const int Board = 8;
    private const int HalfWidth = 18;
    private const int HalfHeight = 30;

    private static readonly Arbitrary<int> Seeds = Arb.From(Gen.Choose(1, int.MaxValue - 1), _ => []);

    /// <summary>A finish in sixteenths: its rectangle, thickness of bed and finish together, and whether it burns.</summary>
    private sealed record Patch(int Left, int Right, int Bottom, int Top, int Thick, bool Burns);

    [Fact]
    public void State_BoxAnywhereAmongFinishes_AgreesWithRectangles() => Prop.ForAll(Seeds, seed =>
    {
        Random random = new(seed);
        Patch[] patches = Patches(random);
        int setFor = random.Next(0, 20);
        (int at, int up) = Near(random, patches);
        Assert.True(Expected(patches, setFor, at, up) == House(patches, setFor, at, up).Verdict(), seed.ToString(CultureInfo.InvariantCulture));
        return true;
    }).Check(Tries.Always(400));

    // The session says of a box that is moved what a fresh evaluation says of it there.
    [Fact]
    public void Move_OntoAndOffFinishes_IsJudgedAnew() => Prop.ForAll(Seeds, seed =>
    {
        Random random = new(seed);
        Patch[] patches = Patches(random);
        int setFor = random.Next(0, 20);
        OneBox house = House(patches, setFor, 1000, 1000);
        LayoutSession session = new LayoutEvaluator(house.Rules).Open(house.Build());
        bool failed = session.Findings.Count > 0;
        for (int step = 0; step < 8; step++)
        {
            (int at, int up) = Near(random, patches);
            SessionChange change = session.Move(OneBox.Id, Sixteenths(at), BoxHeight.ToCenter(Sixteenths(up), Datum.Subfloor));
            bool fails = Expected(patches, setFor, at, up) == Verdict.Fails;
            Assert.Equal(fails, session.Findings.Count > 0);
            Assert.Equal(!failed && fails ? 1 : 0, change.Appeared.Count);
            Assert.Equal(failed && !fails ? 1 : 0, change.Cleared.Count);
            failed = fails;
        }

        return true;
    }).Check(Tries.Always(60));

    // A box of 2-1/4 x 3-3/4 in beside tile from 60 in, up to 48 in: touching an edge is clear of it, one tick more isn't.
    [Fact]
    public void State_OneTickOverTheEdgeOfTile_IsOnIt()
    {
        Patch[] tile = [new(960, 1200, 0, 768, 8, false)];
        foreach (int ticks in new[] { -1, 0, 1 })
        {
            OneBox beside = House(tile, 8, 960 - HalfWidth, 600);
            OneBox above = House(tile, 8, 1000, 768 + HalfHeight);
            Verdict expected = ticks > 0 ? Verdict.Fails : Verdict.Passes;
            Assert.Equal(expected, (beside with { Box = beside.Box.WithAt(Sixteenths(960 - HalfWidth) + Distance.FromTicks(ticks)) }).Verdict());
            Assert.Equal(expected, above.At(BoxHeight.ToCenter(Sixteenths(768 + HalfHeight) - Distance.FromTicks(ticks), Datum.Subfloor)).Verdict());
        }
    }

    // The tile ends 4 in above a finished floor that isn't chosen, 0 to 1-1/4 in: between, whether the box meets it depends on the floor.
    [Theory]
    [InlineData("4", Verdict.Unknown, MissingFacts.FloorFinish)]
    [InlineData("3-15/16", Verdict.Fails, MissingFacts.None)]
    [InlineData("5-1/4", Verdict.Passes, MissingFacts.None)]
    public void State_EdgeOfTileNotKnown_DependsOnTheFloor(string bottom, Verdict expected, MissingFacts needs)
    {
        OneBox house = House([], 8, 1000, 0);
        Finish tile = new Finish("tile", FinishKind.Tile, Sixteenths(960), Sixteenths(1200)).WithTop(new Level(CaseFile.Inches("4"), Datum.FinishedFloor)).WithThickness(Sixteenths(6)).WithBed(Sixteenths(2));
        house = house with { Wall = wall => wall.WithBoards(new BoardLayout().WithThickness(Sixteenths(Board))).WithFinishes(new[] { tile }) };
        Check check = house.At(BoxHeight.ToBottom(CaseFile.Inches(bottom), Datum.Subfloor)).Check()!.Value;
        Assert.Equal((expected, needs), (check.Verdict, check.Needs));
    }

    // 58 in above the subfloor to an edge that isn't named, tile from 59-1/2: a bottom at 58 has its top on it, a top at 58 hasn't.
    [Theory]
    [InlineData("58", Verdict.Unknown)]
    [InlineData("62", Verdict.Fails)]
    [InlineData("50", Verdict.Passes)]
    public void State_EdgeMeantNotStated_CountsWhereItMatters(string height, Verdict expected)
    {
        OneBox house = House([new(0, 2000, 952, 1400, 8, false)], 8, 1000, 0).At(BoxHeight.EdgeUnstated(CaseFile.Inches(height), Datum.Subfloor));
        Check check = house.Check()!.Value;
        Assert.Equal(expected, check.Verdict);
        Assert.Equal(expected == Verdict.Unknown ? MissingFacts.EdgeMeant : MissingFacts.None, check.Needs);
    }

    private static Patch[] Patches(Random random) => Enumerable.Range(0, random.Next(0, 4)).Select(_ =>
    {
        int left = random.Next(0, 1600);
        int bottom = random.Next(0, 1000);
        return new Patch(left, left + random.Next(1, 600), bottom, bottom + random.Next(1, 400), random.Next(0, 12), random.Next(2) == 0);
    }).ToArray();

    /// <summary>A place anywhere, or within two sixteenths of where the box would touch the edges of a patch.</summary>
    private static (int At, int Up) Near(Random random, Patch[] patches)
    {
        int at = random.Next(HalfWidth, 2304 - HalfWidth);
        int up = random.Next(HalfHeight, 1500);
        if (patches.Length > 0 && random.Next(3) > 0)
        {
            Patch patch = patches[random.Next(patches.Length)];
            int nudge = random.Next(-2, 3);
            at = random.Next(3) switch { 0 => patch.Left - HalfWidth + nudge, 1 => patch.Right + HalfWidth + nudge, _ => (patch.Left + patch.Right) / 2 };
            up = random.Next(3) switch { 0 => patch.Bottom - HalfHeight + nudge, 1 => patch.Top + HalfHeight + nudge, _ => (patch.Bottom + patch.Top) / 2 };
        }

        return (Math.Clamp(at, HalfWidth, 2304 - HalfWidth), Math.Max(up, HalfHeight));
    }

    private static Verdict Expected(Patch[] patches, int setFor, int at, int up)
    {
        bool fails = Board - setFor > 4;
        foreach (Patch patch in patches)
        {
            bool meets = at + HalfWidth > patch.Left && at - HalfWidth < patch.Right && up + HalfHeight > patch.Bottom && up - HalfHeight < patch.Top;
            fails |= meets && Board + patch.Thick - setFor > (patch.Burns ? 0 : 4);
        }

        return fails ? Verdict.Fails : Verdict.Passes;
    }

    private static OneBox House(Patch[] patches, int setFor, int at, int up)
    {
        OneBox box = SetbackCaseTests.Placed(null, Sixteenths(Board), Sixteenths(setFor));
        return box with
        {
            Wall = wall => wall.WithBoards(new BoardLayout().WithThickness(Sixteenths(Board))).WithFinishes(patches.Select((patch, i) => new Finish("patch" + i, FinishKind.Panel, Sixteenths(patch.Left), Sixteenths(patch.Right))
                .WithBottom(new Level(Sixteenths(patch.Bottom), Datum.Subfloor)).WithTop(new Level(Sixteenths(patch.Top), Datum.Subfloor))
                .WithThickness(Sixteenths(patch.Thick)).WithCombustible(patch.Burns)).ToArray()),
            Box = box.Box.WithSize(new BoxSize(Sixteenths(2 * HalfWidth), Sixteenths(2 * HalfHeight))).WithAt(Sixteenths(at)).WithHeight(BoxHeight.ToCenter(Sixteenths(up), Datum.Subfloor)),
        };
    }

    private static Distance Sixteenths(int sixteenths) => DwellingGen.Sixteenths(sixteenths);
}
