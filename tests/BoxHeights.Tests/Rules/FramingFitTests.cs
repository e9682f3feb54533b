using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Boxes against whatever stands in a wall: brute force, mirrors, and where nothing may be said.</summary>
public sealed class FramingFitTests
{
    private static readonly RuleSet Row = OneBox.Only(RuleSets.RoughInPractice, "framing-fit");
    private static readonly RuleSet Filled = OneBox.Only(RuleSets.RoughInPractice, "in-cavity");

    [Theory]
    [InlineData(MountingMethod.Masonry)]
    [InlineData(MountingMethod.Surface)]
    [InlineData(MountingMethod.Cabinet)]
    [InlineData(null)]
    public void Box_ThatAsksNothingOfStuds_HasNothingSaidOfIt(MountingMethod? how)
    {
        OneBox box = Sketch.Plain("stud", 512);
        Assert.Null((box with { Box = box.Box.WithMounting(how is { } method ? new Mounting(method) : null) }).Check());
    }

    [Fact]
    public void Box_WithoutStudsOrAPlaceOrNew_HasNothingSaidOfIt()
    {
        OneBox box = Sketch.Plain("stud", 512);
        Assert.Equal(Verdict.Fails, box.Verdict());
        Assert.Null((box with { Wall = wall => wall }).Check());
        Assert.Null((box with { Wall = wall => wall.WithStuds(new StudLayout().WithKnown(StudKnowledge.Measured)) }).Check());
        Assert.Null((box with { Box = box.Box.WithAt(null) }).Check());
        Assert.Empty((box with { Box = box.Box.WithAt(null) }).Evaluate().Findings);
        Assert.Null((box with { Box = box.Box.WithExisting(true) }).Check());
        Assert.Null((box with { Box = box.Box.WithSurface(BoxSurface.Cabinet) }).Check());
    }

    [Fact]
    public void CutInBox_HasToMissTheStud_WhetherOrNotItsMountingIsStated()
    {
        OneBox box = Sketch.Plain("cut-in", 512);
        Assert.Equal(Verdict.Fails, box.Verdict());
        Assert.Equal(Verdict.Fails, (box with { Box = box.Box.WithMounting(null).WithKind(BoxKind.CutIn) }).Verdict());
    }

    // 144 in is nine times 16: pulled from either end the studs stand alike. A foot more, and from the right they stand 12 in off those from the left.
    [Theory]
    [InlineData(1152, "bar", 512, Verdict.Fails)]
    [InlineData(1152, "stud", 512, Verdict.Fails)]
    [InlineData(1152, "stud", 576, Verdict.Passes)]
    [InlineData(1248, "bar", 512, Verdict.Passes)]
    [InlineData(1248, "stud", 512, Verdict.Passes)]
    [InlineData(1248, "bar", 9, Verdict.Fails)]
    public void AssumedStuds_LeaveOutOnlyWhatHoldsFromBothEnds(int length, string method, int at, Verdict expected)
    {
        OneBox box = Sketch.Plain(method, at);
        Assert.Equal(expected, (box with { Wall = wall => wall.WithLength(Sketch.Eighths(length)).WithStuds(new StudLayout().WithSpacing(Sketch.Eighths(128))) }).Verdict());
    }

    // The leaf slides in on the left: 30 in and 1 in of wall without a stud or a cavity; the king on that side stands beyond it.
    [Fact]
    public void PocketDoor_HasNoCavityOnThePocketSideAndNoJackThere()
    {
        OneBox box = Sketch.Plain("stud", 0) with
        {
            Rules = new RuleSet([Row.Find("framing-fit"), Filled.Find("in-cavity")]),
            Wall = wall => wall.WithStuds(new StudLayout().WithFaces(new[] { Sketch.Eighths(64) }).WithKnown(StudKnowledge.Measured)).WithOpenings(new[]
            {
                new Opening("pocket", OpeningKind.PocketDoor, Sketch.Eighths(640), Sketch.Eighths(880)).WithLeaf(Sketch.Eighths(240)).WithPocketOn(WallEnd.Left),
            }),
        };
        string[] FindingsAt(int at) => (box with { Box = box.Box.WithAt(Sketch.Eighths(at)) }).Evaluate().Findings.Select(finding => finding.RuleId).ToArray();

        Assert.Equal(["in-cavity"], FindingsAt(600));
        Assert.Equal(["in-cavity"], FindingsAt(640 - 248 + 9));
        Assert.Empty(FindingsAt(640 - 248 - 24 - 9));
        Assert.Empty(FindingsAt(880 + 24 + 9));
        Assert.Equal(["framing-fit"], FindingsAt(880 + 24));
    }

    // Described as all of its frame, 61 in for a leaf of 30: the doorway is the 31 in at the strike, the pocket the rest.
    [Theory]
    [InlineData(WallEnd.Left, 632)]
    [InlineData(WallEnd.Right, 640)]
    public void PocketDoor_DescribedAsItsWholeFrame_HasItsPocketWithin(WallEnd side, int doorway)
    {
        OneBox box = Sketch.Plain("bar", 0) with
        {
            Rules = Filled,
            Wall = wall => wall.WithOpenings(new[] { new Opening("pocket", OpeningKind.PocketDoor, Sketch.Eighths(392), Sketch.Eighths(880)).WithLeaf(Sketch.Eighths(240)).WithPocketOn(side) }),
        };
        string[] FindingsAt(int at) => (box with { Box = box.Box.WithAt(Sketch.Eighths(at)) }).Evaluate().Findings.Select(finding => finding.RuleId).ToArray();
        int inside = side == WallEnd.Left ? -1 : 1;
        Assert.Equal(["in-cavity"], FindingsAt(doorway + (inside * 9)));
        Assert.Empty(FindingsAt(doorway - (inside * 9)));
    }

    [Theory]
    [InlineData("header")]
    [InlineData("duct")]
    [InlineData("stringer")]
    public void FilledPart_HoldsNoBoxButOneOnTheFace(string kind)
    {
        // 60 to 90 in along, 82-1/2 to 91-3/4 in up: the box, 2-1/4 by 3-3/4 in, touches it at 82-1/2 in, and beside it at 58-7/8 in.
        OneBox box = Sketch.Plain("bar", 600) with
        {
            Rules = Filled,
            Wall = wall => wall.WithNoCavity(new[] { new NoCavity(new NoCavityKind(kind), Sketch.Eighths(480), Sketch.Eighths(720)).WithBottom(Level.Parse("82-1/2 in above subfloor")).WithTop(Level.Parse("91-3/4 in above subfloor")) }),
        };
        BoxHeight touching = BoxHeight.Parse("82-1/2 in to top above subfloor");
        BoxHeight across = touching.WithValue(touching.Value + Distance.FromTicks(1));
        Assert.Equal(Verdict.Passes, box.At(touching).Verdict());
        Assert.Equal(Verdict.Fails, box.At(across).Verdict());
        Assert.Equal(Verdict.Passes, (box with { Box = box.Box.WithAt(Sketch.Eighths(471)) }).At(across).Verdict());
        Assert.Equal(Verdict.Fails, (box with { Box = box.Box.WithAt(Sketch.Eighths(471) + Distance.FromTicks(1)) }).At(across).Verdict());
        Assert.Null((box with { Box = box.Box.WithMounting(new Mounting(MountingMethod.Surface)) }).At(across).Check());
    }

    // A bottom plate of 1-1/2 in; under a rough ceiling of 97-1/8 in one top plate at least.
    [Theory]
    [InlineData("1-1/2 in to bottom above subfloor", 1)]
    [InlineData("95-5/8 in to top above subfloor", -1)]
    public void Box_InAPlate_DoesNotFit(string limit, int inward)
    {
        OneBox box = Sketch.Plain("stud", 528 - 1);
        box = box with { Storey = box.Storey.WithCeiling(new Ceiling().WithFraming(Distance.Parse("97-1/8 in"))) };
        BoxHeight height = BoxHeight.Parse(limit);
        Assert.Equal(Verdict.Passes, box.At(height).Verdict());
        Assert.Equal(Verdict.Fails, box.At(height.WithValue(height.Value - Distance.FromTicks(inward))).Verdict());
    }

    [Fact]
    public void Post_HasSidesToNailTo()
    {
        OneBox box = Sketch.Plain("stud", 600 + 9);
        OneBox posted = box with { Wall = wall => Sketch.Studded(wall).WithNoCavity(new[] { new NoCavity(NoCavityKind.Post, Sketch.Eighths(572), Sketch.Eighths(600)) }) };
        Assert.Equal((Verdict.Fails, Verdict.Passes), (box.Verdict(), posted.Verdict()));
    }

    // Of a generic box all that is known is 2-1/8 to 2-3/8 in: within that, whether it is 1/2 in off the stud depends on the box.
    [Fact]
    public void GenericBox_ThatMayBeTooWide_DependsOnIt()
    {
        OneBox box = Sketch.Plain("cut-in", 0);
        Verdict At(string at) => (box with { Box = box.Box.WithSize(null).WithKind(BoxKind.CutIn).WithAt(Distance.Parse(at)) }).Verdict();
        Assert.Equal((Verdict.Passes, Verdict.Unknown, Verdict.Fails), (At("66-7/16 in"), At("66-3/8 in"), At("66-1/4 in")));
    }

    // On a block right against the stud, or nailed to a post, it is where it is by its own width: nothing to depend on.
    [Fact]
    public void GenericBox_RightAgainstSomething_DoesNotDependOnItsWidth()
    {
        OneBox blocked = Sketch.Plain("bar", 518 + 9);
        blocked = blocked with { Box = blocked.Box.WithSize(null).WithMounting(new Mounting(MountingMethod.Blocking)) };
        Assert.Equal(Verdict.Passes, blocked.Verdict());
        OneBox posted = blocked with { Rules = Filled, Wall = wall => wall.WithNoCavity(new[] { new NoCavity(NoCavityKind.Post, Sketch.Eighths(490), Sketch.Eighths(518)) }) };
        Assert.Equal(Verdict.Passes, posted.Verdict());
        Assert.Equal(Verdict.Fails, (posted with { Box = posted.Box.WithAt(Sketch.Eighths(525)) }).Verdict());
    }

    /// <summary>The second road: every piece as a rectangle in whole eighths of an inch, put there by the trade's words, and the box as another.</summary>
    [Fact]
    public void Verdict_OnRandomWalls_IsThatOfARectangleAmongRectangles() => Prop.ForAll(Sketch.Any, sketch =>
        (sketch.Box(Row).Check()?.Verdict ?? Verdict.Passes) == (sketch.Fits() ? Verdict.Passes : Verdict.Fails)).Check(Config.QuickThrowOnFailure.WithMaxTest(2000));

    [Fact]
    public void Verdict_InAMirror_IsTheSame() => Prop.ForAll(Sketch.Any, sketch =>
    {
        RuleSet rules = new([Row.Find("framing-fit"), Filled.Find("in-cavity")]);
        Dwelling dwelling = sketch.Box(rules).Build();
        LayoutEvaluator evaluator = new(rules);
        return DwellingGen.Lines(evaluator.Evaluate(dwelling).Findings).SequenceEqual(DwellingGen.Lines(evaluator.Evaluate(Mirror.Of(dwelling)).Findings));
    }).Check(Config.QuickThrowOnFailure.WithMaxTest(500));

    [Fact]
    public void Filled_OnRandomWalls_IsThatOfTwoRectangles() => Prop.ForAll(Sketch.Any, sketch =>
        (sketch.Box(Filled).Check()?.Verdict ?? Verdict.Passes) == (sketch.IsFilled() ? Verdict.Fails : Verdict.Passes)).Check(Config.QuickThrowOnFailure.WithMaxTest(1000));

    /// <summary>A wall with an opening and a filled part, and one box on it; lengths in eighths of an inch.</summary>
    private sealed record Sketch(int Length, int Spacing, bool FromRight, int Left, int Right, int? Sill, int? Head, int PartLeft, int PartRight, bool IsPost, string Method, int Width, int At, int Center)
    {
        private const int Thick = 12;
        private const int Tall = 30;

        public static Arbitrary<Sketch> Any { get; } = Arb.From(Gen.Choose(1, int.MaxValue - 1).Select(seed =>
        {
            Random random = new(seed);
            int length = random.Next(640, 1600);
            int left = random.Next(40, length - 140);
            int width = random.Next(80, Math.Min(500, length - left - 40));
            int part = random.Next(0, length - 60);
            int wide = random.Next(3) switch { 0 => 18, 1 => 32, _ => 60 };
            int spacing = random.Next(2) == 0 ? 128 : 192;

            // Near a stud's side or a jack's or a king's more often than not.
            int side = random.Next(4) switch
            {
                0 => (random.Next(1, length / spacing) * spacing) + 6,
                1 => left + width + (Thick * random.Next(0, 3)),
                2 => left - (Thick * random.Next(0, 3)) - wide,
                _ => random.Next(0, length),
            };
            int at = Math.Min(Math.Max((wide / 2) + side + random.Next(-4, 5), wide / 2), length - (wide / 2));
            return new Sketch(
                length, spacing, random.Next(2) == 0, left, left + width, random.Next(2) == 0 ? null : random.Next(100, 400), random.Next(3) == 0 ? null : random.Next(500, 680),
                part, part + random.Next(10, 60), random.Next(2) == 0, new[] { "stud", "bar", "cut-in" }[random.Next(3)], wide, at, random.Next(20, 700));
        }));

        public static Distance Eighths(int eighths) => Distance.FromInches(eighths / 8m);

        public static Wall Studded(Wall wall) => wall.WithStuds(new StudLayout().WithSpacing(Eighths(128)).WithKnown(StudKnowledge.Measured));

        /// <summary>A box 2-1/4 by 3-3/4 in among studs 16 in on center.</summary>
        public static OneBox Plain(string method, int at) => new()
        {
            Rules = Row,
            Wall = Studded,
            Box = new OneBox().Box.WithSize(new BoxSize(Eighths(18), Eighths(Tall))).WithAt(Eighths(at)).WithHeight(BoxHeight.ToTop(Eighths(384), Datum.Subfloor)).WithMounting(MountingOf(method)),
        };

        public OneBox Box(RuleSet rules)
        {
            Opening opening = new Opening("opening", Sill is null ? OpeningKind.Door : OpeningKind.Window, Eighths(Left), Eighths(Right))
                .WithSill(Sill is { } sill ? new Level(Eighths(sill), Datum.Subfloor) : null).WithHead(Head is { } head ? new Level(Eighths(head), Datum.Subfloor) : null);
            StudLayout studs = new StudLayout().WithSpacing(Eighths(Spacing)).WithFrom(FromRight ? WallEnd.Right : WallEnd.Left).WithKnown(StudKnowledge.Declared);
            NoCavity part = new(IsPost ? NoCavityKind.Post : NoCavityKind.Duct, Eighths(PartLeft), Eighths(PartRight));
            OneBox box = Plain(Method, At);
            return box with
            {
                Rules = rules,
                Wall = wall => wall.WithLength(Eighths(Length)).WithStuds(studs).WithOpenings(new[] { opening }).WithNoCavity(new[] { part }),
                Box = box.Box.WithSize(new BoxSize(Eighths(Width), Eighths(Tall))).WithHeight(BoxHeight.ToCenter(Eighths(Center), Datum.Subfloor)),
            };
        }

        public bool IsFilled() => At - (Width / 2) < PartRight && PartLeft < At + (Width / 2);

        public bool Fits()
        {
            int from = At - (Width / 2);
            int top = Center + (Tall / 2);
            if (top - Tall < Thick)
            {
                // In the bottom plate.
                return false;
            }

            if (Method != "stud")
            {
                int off = Method == "cut-in" ? 4 : 0;
                return !Standing().Any(one => from - off < one.Right && one.Left < from + Width + off && Center - (Tall / 2) < one.Top);
            }

            // Reaching into the opening's width over its sill is for the rule about openings to say.
            if (from < Right && Left < from + Width && (Sill is null || top >= Sill))
            {
                return true;
            }

            // Some side of the box within 1/4 in of some face, and nothing in the box's way when it is put right against that face.
            (int Left, int Right, int Top)[] faces = [.. Standing(), .. Perhaps()];
            if (IsPost)
            {
                faces = [.. faces, (PartLeft, PartRight, int.MaxValue)];
            }

            return faces.Any(face => top <= face.Top
                && ((Math.Abs(from - face.Right) <= 2 && IsFree(face.Right)) || (Math.Abs(from + Width - face.Left) <= 2 && IsFree(face.Left - Width))));
        }

        public override string ToString() =>
            $"wall {Length}, studs {Spacing} from the {(FromRight ? "right" : "left")}, opening {Left}..{Right} up {Sill}..{Head}, {(IsPost ? "post" : "duct")} {PartLeft}..{PartRight}, {Method} box {Width} wide at {At}, center {Center}";

        private static Mounting MountingOf(string method) => new(method switch { "stud" => MountingMethod.Stud, "bar" => MountingMethod.Bar, _ => MountingMethod.CutIn });

        private bool IsFree(int from) => from >= 0 && from + Width <= Length && !Standing().Any(one => from < one.Right && one.Left < from + Width);

        /// <summary>Corners, kings, jacks up to the head, whole studs, and under a sill what is left of those that the opening cuts.</summary>
        private List<(int Left, int Right, int Top)> Standing()
        {
            List<(int Left, int Right, int Top)> pieces = Packs();
            foreach (int stud in Layout())
            {
                if (pieces.Take(6).Any(piece => stud < piece.Right && piece.Left < stud + Thick))
                {
                    continue;
                }

                if (stud >= Right || stud + Thick <= Left)
                {
                    pieces.Add((stud, stud + Thick, int.MaxValue));
                }
                else if (Sill is { } sill)
                {
                    pieces.Add((stud, stud + Thick, sill));
                }
            }

            return pieces;
        }

        /// <summary>What a framer may have left in: studs of the layout that meet a king or jack, and the cripples at the ends of a sill.</summary>
        private IEnumerable<(int Left, int Right, int Top)> Perhaps()
        {
            foreach (int stud in Layout().Where(stud => Packs().Any(piece => stud < piece.Right && piece.Left < stud + Thick)))
            {
                yield return (stud, stud + Thick, int.MaxValue);
            }

            if (Sill is { } sill)
            {
                yield return (Left, Left + Thick, sill);
                yield return (Right - Thick, Right, sill);
            }
        }

        private List<(int Left, int Right, int Top)> Packs() =>
        [
            (0, Thick, int.MaxValue), (Length - Thick, Length, int.MaxValue),
            (Left - Thick, Left, Head ?? int.MaxValue), (Left - (2 * Thick), Left - Thick, int.MaxValue),
            (Right, Right + Thick, Head ?? int.MaxValue), (Right + Thick, Right + (2 * Thick), int.MaxValue),
        ];

        private IEnumerable<int> Layout()
        {
            for (int center = Spacing; center + 6 < Length - Thick + 12; center += Spacing)
            {
                int near = center - 6;
                if (near < Length - Thick)
                {
                    yield return FromRight ? Length - near - Thick : near;
                }
            }
        }
    }
}
