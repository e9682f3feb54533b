namespace BoxHeights.Interop;

/// <summary>Walls, their framing and their board.</summary>
internal static class WallShapes
{
    internal static Shape<StudLayout> Studs { get; } = new ShapeBuilder<StudLayout>("studLayout", "How studs are laid out along a wall: a rule, or the studs themselves.")
        .Optional("spacing", x => x.Spacing, (x, v) => x.WithSpacing(v), Texts.Distance, "From center to center.")
        .Optional("firstFace", x => x.FirstFace, (x, v) => x.WithFirstFace(v), Texts.Distance, "From the end that the layout was pulled from to the near face of the first stud; spacing less half a stud unless stated.")
        .Usual("from", default(WallEnd), x => x.From, (x, v) => x.WithFrom(v), Words.WallEnd, "The end that the layout was pulled from.")
        .Optional("thickness", x => x.Thickness, (x, v) => x.WithThickness(v), Texts.Distance, "The thickness of a stud; 1-1/2 in unless stated.")
        .List("faces", x => x.Faces, (x, v) => x.WithFaces(v), Texts.Distance, "The left faces of the studs themselves, from the wall's left end, where they are known one by one.")
        .Usual("known", default(StudKnowledge), x => x.Known, (x, v) => x.WithKnown(v), Words.StudKnowledge, "Whether the layout is assumed, declared by the framer, or measured.")
        .Optional("openSide", x => x.OpenSide, (x, v) => x.WithOpenSide(v), Words.StudSide, "The side that the open, lipped side of metal studs faces; not for lumber.")
        .Build(_ => new());

    internal static Shape<ButtJoint> ButtJoint { get; } = new ShapeBuilder<ButtJoint>("buttJoint", "Where two sheets of a course of wall board meet end to end.")
        .Required("course", x => x.Course, Texts.Count, "The course, in hanging order: the first is 1.", out MemberKey<int> course)
        .Required("along", x => x.Along, Texts.Distance, "From the wall's left end.", out MemberKey<Distance> joint)
        .Build(v => new(v.Get(course), v.Get(joint)));

    internal static Shape<BoardLayout> Boards { get; } = new ShapeBuilder<BoardLayout>("boardLayout", "How wall board is hung.")
        .Usual("hung", default(BoardDirection), x => x.Hung, (x, v) => x.WithHung(v), Words.BoardDirection, "Whether the long edges run horizontally or vertically.")
        .List("widths", x => x.Widths, (x, v) => x.WithWidths(v), Texts.Distance, "The widths of the courses, in hanging order. What courses that lie across leave is a strip of its own; of upright sheets the last width is that of all that follow.")
        .Usual("from", default(BoardOrigin), x => x.From, (x, v) => x.WithFrom(v), Words.BoardOrigin, "Where hanging starts.")
        .Optional("thickness", x => x.Thickness, (x, v) => x.WithThickness(v), Texts.Distance, "The thickness of all its layers.")
        .Optional("floorGap", x => x.FloorGap, (x, v) => x.WithFloorGap(v), Texts.Distance, "The gap left above the subfloor; anything up to 1 in unless stated.")
        .List("buttJoints", x => x.ButtJoints, (x, v) => x.WithButtJoints(v), ButtJoint, "Where the sheets of courses that lie across meet end to end; not stated unless listed. Those of a storey's layout are of no wall.")
        .Build(_ => new());

    internal static Shape<WallTopPoint> TopPoint { get; } = new ShapeBuilder<WallTopPoint>("wallTopPoint", "A point on the top of a wall's framing.")
        .Required("along", x => x.Along, Texts.Distance, "From the wall's left end.", out MemberKey<Distance> along)
        .Required("up", x => x.Up, Texts.Distance, "From the subfloor.", out MemberKey<Distance> up)
        .Build(v => new(v.Get(along), v.Get(up)));

    internal static Shape<Wall> Wall { get; } = new ShapeBuilder<Wall>("wall", "One face of a wall, seen from inside its room: \"along\" runs from its left end to the right, framing face to framing face.")
        .Required("id", x => x.Id, Texts.Id, "The name it is addressed by within its room (\"kitchen/north\" is the wall \"north\" of the room \"kitchen\").", out MemberKey<string> id)
        .Required("length", x => x.Length, Texts.Distance, "Its length between framing faces; more than zero.", out MemberKey<Distance> length)
        .Usual("turn", 90m, x => x.TurnDegrees, (x, v) => x.WithTurnDegrees(v), Texts.Turn, "The turn from this face to the next, in degrees: 90 is an inside corner, −90 an outside corner.")
        .Usual("open", false, x => x.Open, (x, v) => x.WithOpen(v), Texts.Truth, "Whether this side is open: no wall stands there.")
        .Usual("exterior", false, x => x.Exterior, (x, v) => x.WithExterior(v), Texts.Truth, "Whether it is an outside wall.")
        .Usual("bearing", false, x => x.Bearing, (x, v) => x.WithBearing(v), Texts.Truth, "Whether it carries a floor, a ceiling or a roof, so that a header lies over each of its openings.")
        .Optional("backOf", x => x.BackOf, (x, v) => x.WithBackOf(v), Texts.Plain, "The address of the face on its other side (\"laundry/west\").")
        .Optional("backOffset", x => x.BackOffset, (x, v) => x.WithBackOffset(v), Texts.Distance, "How far right of this face's left end the other face's right end lies.")
        .Optional("cavity", x => x.Cavity, (x, v) => x.WithCavity(v), Texts.Distance, "The depth of the stud cavity.")
        .Usual("rated", false, x => x.Rated, (x, v) => x.WithRated(v), Texts.Truth, "Whether it is declared a fire-resistance rated wall.")
        .Usual("cavityFilled", false, x => x.CavityFilled, (x, v) => x.WithCavityFilled(v), Texts.Truth, "Whether its stud cavity is filled with loose-fill cellulose, rock wool or slag wool.")
        .List("top", x => x.Top, (x, v) => x.WithTop(v), TopPoint, "The top of the framing where it isn't level, from left to right.")
        .Optional("studs", x => x.Studs, (x, v) => x.WithStuds(v), Studs, "Its studs; the storey's unless stated.")
        .Optional("boards", x => x.Boards, (x, v) => x.WithBoards(v), Boards, "Its board; the storey's unless stated.")
        .List("openings", x => x.Openings, (x, v) => x.WithOpenings(v), SurfaceShapes.Opening, "Doors, windows and other openings in it.")
        .List("counters", x => x.Counters, (x, v) => x.WithCounters(v), SurfaceShapes.Counter, "Counters that stand against it.")
        .List("finishes", x => x.Finishes, (x, v) => x.WithFinishes(v), SurfaceShapes.Finish, "Finishes that lie on parts of it: backsplash, wainscot, tile.")
        .List("coverings", x => x.Coverings, (x, v) => x.WithCoverings(v), SurfaceShapes.Covering, "What hides parts of it: cabinets, mirrors, panels.")
        .List("noCavity", x => x.NoCavity, (x, v) => x.WithNoCavity(v), SurfaceShapes.NoCavity, "Where nothing can be set into it: headers, posts, pockets, ducts.")
        .List("boxes", x => x.Boxes, (x, v) => x.WithBoxes(v), BoxShapes.Box, "The boxes on it.")
        .Build(v => new(v.Get(id), v.Get(length)));
}
