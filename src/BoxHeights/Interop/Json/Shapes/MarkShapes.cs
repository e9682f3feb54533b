namespace BoxHeights.Interop;

/// <summary>Sheets of marks.</summary>
internal static class MarkShapes
{
    private static Shape<MarkRow> Row { get; } = new ShapeBuilder<MarkRow>("markRow", "One mark on a stud.")
        .Required("address", x => x.Address, Texts.Plain, "The wall.", out MemberKey<string> address)
        .Required("box", x => x.BoxId, Texts.Plain, "The id of the box.", out MemberKey<string> box)
        .Required("purpose", x => x.Purpose, Kinds.BoxPurpose, "What it is for.", out MemberKey<BoxPurpose> purpose)
        .Optional("fromLeftCorner", x => x.FromLeftCorner, (x, v) => x with { FromLeftCorner = v }, Texts.Distance, "From the left corner of the wall, framing face, to the box's center.")
        .Words("stud", x => x.Stud, (x, v) => x with { Stud = v }, "What it is nailed to as one sees it there.")
        .Words("stop", x => x.Stop, (x, v) => x with { Stop = v }, "Why it isn't to be marked yet.")
        .Optional("mark", x => x.Mark, (x, v) => x with { Mark = v }, Texts.Height, "The height above the room's subfloor.")
        .Optional("fromLevelLine", x => x.FromLevelLine, (x, v) => x with { FromLevelLine = v }, Texts.Distance, "The same height from the level line, plus above it.")
        .Optional("standsOut", x => x.StandsOut, (x, v) => x with { StandsOut = v }, Texts.Distance, "From the face of the framing out to the front edge of the box or its ring.")
        .Words("note", x => x.Note, (x, v) => x with { Note = v }, "What the report sets otherwise, and what was rounded.")
        .Build(v => new(v.Get(address), v.Get(box), v.Get(purpose)));

    private static Shape<LeftOutBox> LeftOut { get; } = new ShapeBuilder<LeftOutBox>("leftOutBox", "A box without a mark, and why.")
        .Required("box", x => x.BoxId, Texts.Plain, "The id of the box.", out MemberKey<string> box)
        .Required("why", x => x.Why, Texts.Plain, "Why.", out MemberKey<string> why)
        .Build(v => new(v.Get(box), v.Get(why)));

    private static Shape<WallTape> Tape { get; } = new ShapeBuilder<WallTape>("wallTape", "A tape held square off a wall.")
        .Required("address", x => x.Address, Texts.Plain, "The wall.", out MemberKey<string> address)
        .Required("along", x => x.Along, Texts.Distance, "Where along the wall it is held, from the wall's left end.", out MemberKey<Distance> along)
        .Required("away", x => x.Away, Texts.Distance, "How far the place is from the framing face of the wall.", out MemberKey<Distance> away)
        .Build(v => new(v.Get(address), v.Get(along), v.Get(away)));

    private static Shape<CeilingRow> Overhead { get; } = new ShapeBuilder<CeilingRow>("ceilingRow", "A box in a ceiling, by two tapes from walls.")
        .Required("room", x => x.Room, Texts.Plain, "The id of the room.", out MemberKey<string> room)
        .Required("box", x => x.BoxId, Texts.Plain, "The id of the box.", out MemberKey<string> box)
        .Required("purpose", x => x.Purpose, Kinds.BoxPurpose, "What it is for.", out MemberKey<BoxPurpose> purpose)
        .List("tapes", x => x.Tapes, (x, v) => x with { Tapes = v }, Tape, "The tapes to its middle; none where its place isn't known.")
        .Optional("fromJoist", x => x.FromJoist, (x, v) => x with { FromJoist = v }, Texts.Distance, "How far its middle is from that of the nearest joist.")
        .Words("stop", x => x.Stop, (x, v) => x with { Stop = v }, "Why it isn't to be set yet.")
        .Words("note", x => x.Note, (x, v) => x with { Note = v }, "What the report sets otherwise.")
        .Build(v => new(v.Get(room), v.Get(box), v.Get(purpose)));

    private static Shape<FloorRow> InFloor { get; } = new ShapeBuilder<FloorRow>("floorRow", "A box in a floor, or on what stands free on it, by two tapes from walls.")
        .Required("room", x => x.Room, Texts.Plain, "The id of the room.", out MemberKey<string> room)
        .Required("box", x => x.BoxId, Texts.Plain, "The id of the box.", out MemberKey<string> box)
        .Required("purpose", x => x.Purpose, Kinds.BoxPurpose, "What it is for.", out MemberKey<BoxPurpose> purpose)
        .Words("on", x => x.On, (x, v) => x with { On = v }, "The id of what stands where it is.")
        .List("tapes", x => x.Tapes, (x, v) => x with { Tapes = v }, Tape, "The tapes to its middle; none where its place isn't known.")
        .Optional("height", x => x.Height, (x, v) => x with { Height = v }, Texts.Height, "Its height, as it is described.")
        .Words("stop", x => x.Stop, (x, v) => x with { Stop = v }, "Why it isn't to be set yet.")
        .Words("note", x => x.Note, (x, v) => x with { Note = v }, "What the report sets otherwise.")
        .Build(v => new(v.Get(room), v.Get(box), v.Get(purpose)));

    internal static Shape<MarkSheet> Sheet { get; } = new ShapeBuilder<MarkSheet>("markSheet", "Where to mark each box, and the dwelling that the marks are of. A planning aid, never an approval.")
        .Required("title", x => x.Title, Texts.Plain, "What it says on top.", out MemberKey<string> title)
        .Required("units", x => x.Units, Words.LengthUnits, "The units in which it is printed.", out MemberKey<LengthUnits> units)
        .Required("dwelling", x => x.Dwelling, DwellingShapes.Dwelling, "The dwelling that it is cut from.", out MemberKey<Dwelling> dwelling)
        .List("rows", x => x.Rows, (x, v) => new(x.Dwelling, x.Units, x.Title, v, x.LeftOut, x.SetAlready, x.Overhead, x.InFloor), Row, "The marks, in the order in which one walks along the walls.")
        .List("leftOut", x => x.LeftOut, (x, v) => new(x.Dwelling, x.Units, x.Title, x.Rows, v, x.SetAlready, x.Overhead, x.InFloor), LeftOut, "Boxes that should have a mark and can't.")
        .List("setAlready", x => x.SetAlready, (x, v) => new(x.Dwelling, x.Units, x.Title, x.Rows, x.LeftOut, v, x.Overhead, x.InFloor), LeftOut, "Boxes that are set already.")
        .List("overhead", x => x.Overhead, (x, v) => new(x.Dwelling, x.Units, x.Title, x.Rows, x.LeftOut, x.SetAlready, v, x.InFloor), Overhead, "Boxes in ceilings.")
        .List("inFloor", x => x.InFloor, (x, v) => new(x.Dwelling, x.Units, x.Title, x.Rows, x.LeftOut, x.SetAlready, x.Overhead, v), InFloor, "Boxes in floors and on islands.")
        .BuildDocument(v => new(v.Get(dwelling), v.Get(units), v.Get(title), default, default, default, default, default));
}
