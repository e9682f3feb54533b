using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>What stands upright in a stud wall: the studs of its layout, and what corners and openings add to them.</summary>
/// <remarks>
/// A stud stands in each corner; a jack beside each opening and a king beside the jack, added without disturbing the layout; studs of the layout that an
/// opening cuts go on as cripples under its sill. Where the studs are listed one by one, a listed stud in such a place is taken for what stands there.
/// An assumed layout may have been pulled from either end: only what both ways agree on is sure. Layout from a government builder's manual; jacks and kings are common practice, no source.
/// </remarks>
public sealed class WallFraming
{
    /// <summary>More pieces than a wall of 100 ft has aren't worked through one by one where each costs work.</summary>
    internal const int MostWorkedThrough = 1_000;

    private readonly Wall wall;
    private readonly StudLayout layout;
    private readonly StudPositions studs;

    private WallFraming(Wall wall, StudLayout layout, UsualMeasures usual)
    {
        this.wall = wall;
        this.layout = layout = layout.In(usual);
        Usual = usual;
        studs = StudPositions.Along(layout, wall.Length);
        Thickness = layout.Thickness!.Value;

        if (studs.Count > 0 || layout.Spacing is not null)
        {
            // Corners, and a king, a jack and a cripple on either side of each opening.
            List<FramingMember> members = new(studs.Count + 2 + (6 * wall.Openings.Count));
            Corners(members);
            foreach (Opening opening in wall.Openings)
            {
                Around(opening, members);
            }

            Studs(members);
            members.Sort(static (a, b) => a.Left.CompareTo(b.Left));
            Members = new(members);
        }
    }

    /// <summary>How many members it has, and how well they are known.</summary>
    public override string ToString() => wall.Id + ": " + Members.Count + " members, " + Known;

    /// <summary>How well the layout is known.</summary>
    public StudKnowledge Known => studs.Known;

    /// <summary>What of it measures as it usually does.</summary>
    internal UsualMeasures Usual { get; }

    /// <summary>The side that the open side of its metal studs faces; null for lumber, or where it isn't stated.</summary>
    internal StudSide? OpenSide => layout.OpenSide;

    /// <summary>The thickness of a piece, along the wall: a stud's edge, or a metal stud's flange.</summary>
    public Distance Thickness { get; }

    /// <summary>Whether it is of dressed lumber: no open side is stated, and by its thickness, since the flanges of partition studs are thinner. Metal studs stand in a track where lumber has plates.</summary>
    internal bool IsLumber => OpenSide is null && Thickness >= Usual.Lumber;

    /// <summary>The pieces, from left to right; none unless a spacing or the faces of studs are stated.</summary>
    public Items<FramingMember> Members { get; }

    /// <summary>Works out the framing of a wall.</summary>
    /// <param name="wall">The wall.</param>
    /// <param name="layout">The layout of its studs.</param>
    /// <param name="usual">What isn't stated of it.</param>
    /// <exception cref="ArgumentNullException">One of them is null.</exception>
    /// <exception cref="ArgumentException">The wall would have more than 10,000 studs.</exception>
    internal static WallFraming Of(Wall wall, StudLayout layout, UsualMeasures usual) =>
        new(wall ?? throw new ArgumentNullException(nameof(wall)), layout ?? throw new ArgumentNullException(nameof(layout)), usual);

    /// <summary>How much room there is beside a face until the next piece that surely stands, or the wall's end.</summary>
    /// <param name="face">The face, from the wall's left end.</param>
    /// <param name="toward">The side of the face that is meant.</param>
    /// <returns>Zero where a piece covers that side of the face.</returns>
    public Distance RoomBeside(Distance face, StudSide toward)
    {
        Distance room = toward == StudSide.Right ? wall.Length - face : face;
        foreach (FramingMember member in Members)
        {
            bool beyond = member.IsSure && (toward == StudSide.Right ? member.Right > face : member.Left < face);
            if (beyond)
            {
                room = Distance.Min(room, toward == StudSide.Right ? member.Left - face : face - member.Right);
            }
        }

        return Distance.Max(room, Distance.Zero);
    }

    /// <summary>The full stud of the layout that stands nearest to a place along the wall, and the side of it that the place is on: none that an opening cuts, and none where a corner, king or jack stands instead.</summary>
    /// <param name="along">From the wall's left end.</param>
    /// <returns>Null where no such stud stands between the corners.</returns>
    public (int Stud, StudSide Side)? Nearest(Distance along) => Nearest(along, static member => member.Part == FramingPart.Stud);

    /// <summary>The same at a height, where a short stud under a sill counts as well.</summary>
    /// <param name="along">From the wall's left end.</param>
    /// <param name="up">Above the storey's subfloor.</param>
    /// <param name="levels">Where the datums of the room lie.</param>
    /// <exception cref="ArgumentNullException"><paramref name="levels"/> is null.</exception>
    /// <returns>Null where no such stud stands between the corners.</returns>
    public (int Stud, StudSide Side)? Nearest(Distance along, Distance up, Levels levels) =>
        levels is null ? throw new ArgumentNullException(nameof(levels)) : Nearest(along, member => member.StandsAt(up, levels));

    private (int Stud, StudSide Side)? Nearest(Distance along, Predicate<FramingMember> which)
    {
        (int Stud, StudSide Side)? nearest = null;
        Distance least = Distance.MaxValue;
        foreach (FramingMember member in Members)
        {
            Distance middle = member.Left + Distance.FromTicks(Thickness.Ticks / 2);
            if (member is { Number: { } number, IsReplaced: false } && which(member) && (along - middle).Abs() is var away && away < least)
            {
                least = away;
                nearest = (number, along >= middle ? StudSide.Right : StudSide.Left);
            }
        }

        return nearest;
    }

    /// <summary>The outermost face of the pieces that stand one against the other from a place outward: corner studs from a wall's end, jack and king from an opening's side.</summary>
    /// <param name="start">The place, from the wall's left end.</param>
    /// <param name="way">The way to go from there.</param>
    /// <returns>The place itself where no piece that surely stands is there.</returns>
    internal Distance FaceOfPack(Distance start, WallEnd way)
    {
        Distance face = start;
        bool grew = true;
        while (grew)
        {
            grew = false;
            foreach (FramingMember member in Members)
            {
                bool isNext = member.IsSure && (way == WallEnd.Right ? member.Left <= face && face < member.Right : member.Left < face && face <= member.Right);
                face = !isNext ? face : way == WallEnd.Right ? member.Right : member.Left;
                grew |= isNext;
            }
        }

        return face;
    }

    /// <summary>Whether where a piece stands is only assumed: a stud of an assumed layout, and not what corners and openings add.</summary>
    internal bool IsAssumed(in FramingMember member) => Known == StudKnowledge.Assumed && (member.Part is FramingPart.Stud or FramingPart.Cripple);

    /// <summary>Whether it is known where short studs stand under an opening's sill: who lists full studs one by one leaves them out.</summary>
    internal bool KnowsUnder(Opening opening) => layout.Faces.Exists(face => opening.Left <= face && face < opening.Right) || layout.Faces.Count == 0;

    private void Corners(List<FramingMember> members)
    {
        if (wall.Length >= Thickness * 2)
        {
            Implied(members, new(FramingPart.Corner, Distance.Zero, Thickness, true), Distance.Zero, Thickness);
            Implied(members, new(FramingPart.Corner, wall.Length - Thickness, wall.Length, true), wall.Length - Thickness, wall.Length);
        }
    }

    private void Around(Opening opening, List<FramingMember> members)
    {
        if (opening.Right <= opening.Left || (opening.Kind == OpeningKind.PocketDoor && opening.PocketOn is null))
        {
            return;
        }

        (Distance left, Distance right) = (opening.Left, opening.Right);
        if (DoorPocket.TryOf(opening, Usual, out DoorPocket pocket))
        {
            (left, right) = (Distance.Min(left, pocket.Left), Distance.Max(right, pocket.Right));
        }

        Implied(members, new(FramingPart.Jack, left - Thickness, left, true, opening.Head), left - (Thickness * 2), left);
        Implied(members, new(FramingPart.King, left - (Thickness * 2), left - Thickness, true), left - (Thickness * 2), left);
        Implied(members, new(FramingPart.Jack, right, right + Thickness, true, opening.Head), right, right + (Thickness * 2));
        Implied(members, new(FramingPart.King, right + Thickness, right + (Thickness * 2), true), right, right + (Thickness * 2));
        if (opening.Sill is { } sill && right - left >= Thickness * 2)
        {
            members.Add(new(FramingPart.Cripple, left, left + Thickness, false, sill));
            members.Add(new(FramingPart.Cripple, right - Thickness, right, false, sill));
        }
    }

    /// <summary>A piece that isn't listed but has to be there, unless it would stand beyond the wall, in another opening, or where a listed stud is what stands there.</summary>
    private void Implied(List<FramingMember> members, in FramingMember member, Distance packLeft, Distance packRight)
    {
        if (member.Left < Distance.Zero || member.Right > wall.Length || IsInOpening(member.Left, member.Right))
        {
            return;
        }

        for (int stud = 1; layout.Faces.Count > 0 && stud <= studs.Count; stud++)
        {
            studs.TryFaces(stud, out Distance left, out Distance right);
            if (left < packRight && packLeft < right && !IsInOpening(left, right))
            {
                return;
            }
        }

        members.Add(member);
    }

    private void Studs(List<FramingMember> members)
    {
        StudPositions? otherWay = OtherWay();
        int implied = members.Count;
        for (int stud = 1; stud <= studs.Count; stud++)
        {
            studs.TryFaces(stud, out Distance left, out Distance right);
            bool isSure = otherWay is null || otherWay.HasFace(left);
            if (IsTaken(members, implied, left, right))
            {
                members.Add(new(FramingPart.Stud, left, right, false, number: stud, isReplaced: true));
            }
            else if (!IsInOpening(left, right))
            {
                members.Add(new(FramingPart.Stud, left, right, isSure, number: stud));
            }
            else
            {
                Cripples(members, stud, left, right, isSure);
            }
        }
    }

    private void Cripples(List<FramingMember> members, int stud, Distance left, Distance right, bool isSure)
    {
        foreach (Opening opening in wall.Openings)
        {
            if (opening.Sill is { } sill && left < opening.Right && opening.Left < right)
            {
                members.Add(new(FramingPart.Cripple, left, right, isSure, sill, stud));
            }
        }
    }

    /// <summary>The studs of an assumed layout if it was pulled from the other end, none where it is listed; null where the layout is known.</summary>
    private StudPositions? OtherWay() => layout.Known != StudKnowledge.Assumed ? null
        : layout.Faces.Count > 0 ? StudPositions.None
        : StudPositions.Along(layout.WithFrom(layout.From == WallEnd.Left ? WallEnd.Right : WallEnd.Left), wall.Length);

    private static bool IsTaken(List<FramingMember> members, int implied, Distance left, Distance right)
    {
        for (int i = 0; i < implied; i++)
        {
            if (members[i].IsSure && members[i].Left < right && left < members[i].Right)
            {
                return true;
            }
        }

        return false;
    }

    private bool IsInOpening(Distance left, Distance right)
    {
        foreach (Opening opening in wall.Openings)
        {
            bool pocketed = DoorPocket.TryOf(opening, Usual, out DoorPocket pocket) && left < pocket.Right && pocket.Left < right;
            if (pocketed || (left < opening.Right && opening.Left < right))
            {
                return true;
            }
        }

        return false;
    }
}
