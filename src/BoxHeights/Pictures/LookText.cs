namespace BoxHeights;

/// <summary>What the legend says of each look; empty for what needs no word.</summary>
internal static class LookText
{
    public static string Of(Look look) => look switch
    {
        Look.Stud => "stud",
        Look.King => "king stud",
        Look.Jack => "jack stud",
        Look.Cripple => "cripple stud",
        Look.Corner => "corner stud",
        Look.NotSure => "may stand here or not",
        Look.Assumed => "assumed, not seen",
        Look.Range => "not known exactly: somewhere in here",
        Look.NoCavity => "no cavity for a box",
        Look.Opening => "rough opening",
        Look.Casing => "outer edge of casing",
        Look.DoorLeaf => "door leaf, and what it hides when open",
        Look.Seam => "board seam",
        Look.Counter => "countertop",
        Look.Finish => "finish on the wall",
        Look.Covering => "cabinet, mirror or other covering",
        Look.Fixture => "fixture or furniture",
        Look.Platform => "what one stands on outside",
        Look.Freestanding => "stands free in the room",
        Look.Box => "box",
        Look.Plate => "cover plate",
        Look.Operable => "operated parts",
        Look.Overhead => "box in the ceiling",
        Look.InFloor => "box in the floor",
        Look.Allowed => "center of the box allowed here",
        Look.AllowedLine => "center of the box allowed at this height alone",
        Look.MaybeAllowed => "allowed for some of what isn't known",
        Look.Grade => "grade",
        Look.Nosing => "stair",
        Look.Served => "served by a receptacle",
        Look.SwitchLeg => "from a switch to what it controls",
        Look.Uncovered => "not served, or maybe not",
        Look.WallLine => "wall, by its framing face",
        Look.Window => "window",
        Look.Doorway => "door or cased opening",
        Look.Swing => "door leaf and its swing",
        Look.Board => "board",
        Look.Cutout => "cutout",
        _ => "",
    };
}
