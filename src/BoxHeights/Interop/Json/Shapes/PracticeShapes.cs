namespace BoxHeights.Interop;

/// <summary>A builder's own heights.</summary>
internal static class PracticeShapes
{
    internal static Shape<PlaceAnchor> Anchor { get; } = new ShapeBuilder<PlaceAnchor>("placeAnchor", "What boxes of a purpose are set beside or behind; distances along the wall from its outline to the center of the box.")
        .Required("things", x => x.Things, new ListCodec<string>(Texts.Id), "Kinds of fixture, interruption, opening or covering; any of them will do.", out MemberKey<Items<string>> things)
        .Required("upTo", x => x.UpTo, Texts.Distance, "How far outside the outline at most.", out MemberKey<Distance> upTo)
        .Optional("beyond", x => x.Beyond, (x, v) => x.WithBeyond(v), Texts.Distance, "How far outside the outline at least; absent where it may be within it.")
        .Build(v => new(v.Get(things), v.Get(upTo)));

    internal static Shape<PracticeHeight> Height { get; } = new ShapeBuilder<PracticeHeight>("practiceHeight", "A height at which a crew sets boxes of one purpose.")
        .Required("purpose", x => x.Purpose, Kinds.BoxPurpose, "What the boxes are for.", out MemberKey<BoxPurpose> purpose)
        .Required("height", x => x.Height, Texts.Height, "The height aimed at, with its edge.", out MemberKey<BoxHeight> height)
        .Optional("noLower", x => x.NoLower, (x, v) => x.WithNoLower(v), Texts.Height, "The lowest height that nobody would remark on.")
        .Optional("noHigher", x => x.NoHigher, (x, v) => x.WithNoHigher(v), Texts.Height, "The highest height that nobody would remark on.")
        .Optional("anchor", x => x.Anchor, (x, v) => x.WithAnchor(v), Anchor, "The thing that its boxes are set beside or behind.")
        .Build(v => new(v.Get(purpose), v.Get(height)));

    internal static Shape<PracticeTable> Table { get; } = new ShapeBuilder<PracticeTable>("practiceTable", "A builder's own heights, in place of the usual ones or beside them.")
        .Required("name", x => x.Name, Texts.Plain, "Whose table it is; findings cite it.", out MemberKey<string> name)
        .List("heights", x => x.Heights, (x, v) => x.WithHeights(v), Height, "The heights, one for each purpose.")
        .BuildDocument(v => new(v.Get(name)));
}
