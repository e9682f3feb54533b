using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;

namespace BoxHeights.Tests.Rules;

/// <summary>A wall with an opening and a filled part, and one box on it; lengths in eighths of an inch.</summary>
internal sealed record FramingSketch(int Length, int Spacing, bool FromRight, int Left, int Right, int? Sill, int? Head, int PartLeft, int PartRight, bool IsPost, string Method, int Width, int At, int Center, StudSide? Open, (int From, int To) Span)
{
    private const int Tall = 30;

    // Dressed lumber is 1-1/2 in thick, the flange of a drywall stud 1-1/4 in.
    private int Thick => ThickOf(Open);

    public static Arbitrary<FramingSketch> Any { get; } = Arb.From(Gen.Choose(1, int.MaxValue - 1).Select(seed =>
    {
        Random random = new(seed);
        int length = random.Next(640, 1600);
        int left = random.Next(40, length - 140);
        int width = random.Next(80, Math.Min(500, length - left - 40));
        int part = random.Next(0, length - 60);
        int wide = random.Next(3) switch { 0 => 18, 1 => 32, _ => 60 };
        int spacing = random.Next(2) == 0 ? 128 : 192;
        StudSide? open = random.Next(3) switch { 0 => StudSide.Left, 1 => StudSide.Right, _ => null };
        int thick = ThickOf(open);

        // Near a stud's side or a jack's or a king's more often than not.
        bool fromRight = random.Next(2) == 0;
        int near = (random.Next(1, length / spacing) * spacing) - (thick / 2);
        int stud = fromRight ? length - near - thick : near;
        int side = random.Next(6) switch
        {
            0 or 3 => stud + thick,
            4 => stud - wide,
            1 => left + width + (thick * random.Next(0, 3)),
            2 => left - (thick * random.Next(0, 3)) - wide,
            _ => random.Next(0, length),
        };
        int at = Math.Min(Math.Max((wide / 2) + side + random.Next(-4, 5), wide / 2), length - (wide / 2));
        int least = new[] { 100, 110, 115, 116, 117, 118, 119, 180 }[random.Next(8)];
        return new FramingSketch(
            length, spacing, fromRight, left, left + width, random.Next(2) == 0 ? null : random.Next(100, 400), random.Next(3) == 0 ? null : random.Next(500, 680),
            part, part + random.Next(10, 60), random.Next(2) == 0, new[] { "stud", "stud", "bar", "bar", "cut-in" }[random.Next(5)], wide, at, random.Next(20, 700), open, (least, least + random.Next(0, 70)));
    }));

    public static Wall Studded(Wall wall) => wall.WithStuds(new StudLayout().WithSpacing(Eighths(128)).WithKnown(StudKnowledge.Measured));

    /// <summary>A box 2-1/4 by 3-3/4 in among studs 16 in on center.</summary>
    public static OneBox Plain(string method, int at) => new()
    {
        Rules = OneBox.Only(RuleSets.RoughInPractice, "framing-fit"),
        Wall = Studded,
        Box = new OneBox().Box.WithSize(new BoxSize(Eighths(18), Eighths(Tall))).WithAt(Eighths(at)).WithHeight(BoxHeight.ToTop(Eighths(384), Datum.Subfloor)).WithMounting(MountingOf(method)),
    };

    public OneBox Box(RuleSet rules)
    {
        Opening opening = new Opening("opening", Sill is null ? OpeningKind.Door : OpeningKind.Window, Eighths(Left), Eighths(Right))
            .WithSill(Sill is { } sill ? new Level(Eighths(sill), Datum.Subfloor) : null).WithHead(Head is { } head ? new Level(Eighths(head), Datum.Subfloor) : null);
        StudLayout studs = new StudLayout().WithSpacing(Eighths(Spacing)).WithFrom(FromRight ? WallEnd.Right : WallEnd.Left).WithKnown(StudKnowledge.Declared)
            .WithThickness(Eighths(Thick)).WithOpenSide(Open);
        NoCavity part = new(IsPost ? NoCavityKind.Post : NoCavityKind.Duct, Eighths(PartLeft), Eighths(PartRight));
        OneBox box = Plain(Method, At);
        return box with
        {
            Rules = rules,
            Wall = wall => wall.WithLength(Eighths(Length)).WithStuds(studs).WithOpenings(new[] { opening }).WithNoCavity(new[] { part }),
            Box = box.Box.WithSize(new BoxSize(Eighths(Width), Eighths(Tall))).WithHeight(BoxHeight.ToCenter(Eighths(Center), Datum.Subfloor))
                .WithMounting(MountingOf(Method).WithSpan(new DistanceRange(Eighths(Span.From), Eighths(Span.To)))),
        };
    }

    public bool IsFilled() => At - (Width / 2) < PartRight && PartLeft < At + (Width / 2);

    public bool Fits()
    {
        int from = At - (Width / 2);
        int top = Center + (Tall / 2);
        if (Open is null && top - Tall < Thick)
        {
            // In the bottom plate; metal studs stand in a thin track.
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

    /// <summary>Whether the box isn't held by the open side of a metal stud alone: kings, jacks, corners, posts and webs hold it, and studs at the opening may be turned.</summary>
    public bool IsOffTheOpenSide()
    {
        int from = At - (Width / 2);
        int top = Center + (Tall / 2);
        if (Method != "stud" || Open is not { } open || (from < Right && Left < from + Width && (Sill is null || top >= Sill)))
        {
            return true;
        }

        bool IsAtRightOf(int face) => Math.Abs(from - face) <= 2 && IsFree(face);
        bool IsAtLeftOf(int face) => Math.Abs(from + Width - face) <= 2 && IsFree(face - Width);
        List<(int Left, int Right, int Top)> standing = Standing();
        int[] oneWay = standing.Where(piece => Layout().Contains(piece.Left) && piece.Top == int.MaxValue && !Packs().Contains(piece))
            .Select(piece => piece.Left).Where(stud => stud >= Right + (2 * Thick) || stud + Thick <= Left - (2 * Thick)).ToArray();
        IEnumerable<(int Left, int Right, int Top)> others = [.. standing, .. Perhaps(), .. IsPost ? [(PartLeft, PartRight, int.MaxValue)] : Array.Empty<(int, int, int)>()];
        bool isHeld = others.Where(piece => top <= piece.Top).Any(piece => oneWay.Contains(piece.Left)
            ? open == StudSide.Right ? IsAtLeftOf(piece.Left) : IsAtRightOf(piece.Right)
            : IsAtLeftOf(piece.Left) || IsAtRightOf(piece.Right));
        return isHeld || !oneWay.Any(stud => open == StudSide.Right ? IsAtRightOf(stud + Thick) : IsAtLeftOf(stud));
    }

    /// <summary>Whether the bay that the box is in is one that its bar spans, as far as the bay is sure.</summary>
    public bool IsSpanned()
    {
        int from = At - (Width / 2);
        int top = Center + (Tall / 2);
        List<(int Left, int Right, int Top)> standing = Standing();
        (int Left, int Right, int Top)[] before = [.. standing.Where(piece => piece.Right <= from)];
        (int Left, int Right, int Top)[] after = [.. standing.Where(piece => piece.Left >= from + Width)];
        if (Method != "bar" || before.Length == 0 || after.Length == 0 || before.Length + after.Length < standing.Count)
        {
            return true;
        }

        (int Left, int Right, int Top) left = before.MaxBy(piece => piece.Right);
        (int Left, int Right, int Top) right = after.MinBy(piece => piece.Left);
        bool IsIn(int one, int other) => one < right.Left && left.Right < other;
        bool isSure = !Perhaps().Any(piece => IsIn(piece.Left, piece.Right)) && !IsIn(PartLeft, PartRight)
            && top < left.Top && top < right.Top && (!IsIn(Left, Right) || top < Sill);
        return !isSure || (right.Left - left.Right >= Span.From && right.Left - left.Right <= Span.To);
    }

    public override string ToString() =>
        $"wall {Length}, studs {Spacing} from the {(FromRight ? "right" : "left")}, opening {Left}..{Right} up {Sill}..{Head}, {(IsPost ? "post" : "duct")} {PartLeft}..{PartRight}, {Method} box {Width} wide at {At}, center {Center}, open {Open}, span {Span}";

    private static int ThickOf(StudSide? open) => open is null ? 12 : 10;

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

    /// <summary>The studs that the layout asks for; where a mark falls on the stud in the far corner, that one is it.</summary>
    private IEnumerable<int> Layout()
    {
        for (int near = Spacing - (Thick / 2); near + Thick <= Length - Thick; near += Spacing)
        {
            yield return FromRight ? Length - near - Thick : near;
        }
    }
}
