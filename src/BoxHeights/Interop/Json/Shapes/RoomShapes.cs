namespace BoxHeights.Interop;

/// <summary>Rooms and what stands in them.</summary>
internal static class RoomShapes
{
    internal static Shape<Ceiling> Ceiling { get; } = new ShapeBuilder<Ceiling>("ceiling", "How a ceiling is built up, from its framing down.")
        .Optional("framing", x => x.Framing, (x, v) => x.WithFraming(v), Ranges.Distance, "From the subfloor up to the underside of the ceiling framing (the rough height).")
        .Optional("from", x => x.From, (x, v) => x.WithFrom(v), Words.CeilingOrigin, "The subfloor that the framing is measured from; the storey's for a storey's ceiling and the room's for a room's unless stated.")
        .Optional("strapping", x => x.Strapping, (x, v) => x.WithStrapping(v), Ranges.OrNone, "The thickness of furring under the framing; zero is \"none\".")
        .Optional("board", x => x.Board, (x, v) => x.WithBoard(v), Ranges.Distance, "The thickness of all layers of ceiling board.")
        .Build(_ => new());

    internal static Shape<Fixture> Fixture { get; } = new ShapeBuilder<Fixture>("fixture", "A fixture, an appliance or a piece of furniture.")
        .Required("id", x => x.Id, Texts.Id, "The name it is addressed by in its room.", out MemberKey<string> id)
        .Required("kind", x => x.Kind, Kinds.FixtureKind, "What it is.", out MemberKey<FixtureKind> kind)
        .Optional("wall", x => x.Wall, (x, v) => x.WithWall(v), Texts.Plain, "The id of the wall it stands against.")
        .Optional("left", x => x.Left, (x, v) => x.WithLeft(v), Texts.Distance, "Its left end along that wall.")
        .Optional("right", x => x.Right, (x, v) => x.WithRight(v), Texts.Distance, "Its right end along that wall.")
        .Optional("depth", x => x.Depth, (x, v) => x.WithDepth(v), Texts.Distance, "How far it reaches into the room.")
        .List("plan", x => x.Plan, (x, v) => x.WithPlan(v), PlanPointCodec.Instance, "Two opposite corners of it in plan, where it stands free; of more of them the rectangle that holds them.")
        .Optional("top", x => x.Top, (x, v) => x.WithTop(v), Texts.Level, "The height of its top, for what is reached over.")
        .Optional("rim", x => x.Rim, (x, v) => x.WithRim(v), Texts.Level, "The height of a tub's rim or a shower's threshold.")
        .Optional("screen", x => x.Screen, (x, v) => x.WithScreen(v), Texts.Plain, "What closes it off (\"none\", \"glass to ceiling\").")
        .Build(v => new(v.Get(id), v.Get(kind)));

    internal static Shape<Freestanding> Freestanding { get; } = new ShapeBuilder<Freestanding>("freestanding", "Something that stands in a room, away from its walls.")
        .Required("id", x => x.Id, Texts.Id, "The name it is addressed by in its room.", out MemberKey<string> id)
        .Required("kind", x => x.Kind, Kinds.FreestandingKind, "What it is.", out MemberKey<FreestandingKind> kind)
        .List("corners", x => x.Corners, (x, v) => x.WithCorners(v), PlanPointCodec.Instance, "Its outline in plan: three corners or more, in order, either way round.")
        .List("line", x => x.Line, (x, v) => x.WithLine(v), PlanPointCodec.Instance, "Its line in plan, for rails and half walls; of an island, a peninsula or a bar, the side of its outline that divides the room.")
        .Optional("top", x => x.Top, (x, v) => x.WithTop(v), Texts.Level, "The height of its top.")
        .Optional("overhang", x => x.Overhang, (x, v) => x.WithOverhang(v), Texts.Distance, "How far its top reaches beyond its base.")
        .Build(v => new(v.Get(id), v.Get(kind)));

    internal static Shape<JoistLayout> Joists { get; } = new ShapeBuilder<JoistLayout>("joistLayout", "How the joists over a room lie, for boxes in its ceiling.")
        .Required("spacing", x => x.Spacing, Texts.Distance, "From middle to middle.", out MemberKey<Distance> spacing)
        .Usual("runs", JoistRun.Along, x => x.Runs, (x, v) => x.WithRuns(v), Words.JoistRun, "Which way they run: along the room's first wall, or away from it.")
        .Optional("first", x => x.First, (x, v) => x.WithFirst(v), Texts.Distance, "From the room's first wall to the middle of the first joist where they run along it, from the first wall's left end where they run away from it.")
        .Build(v => new(v.Get(spacing)));

    internal static Shape<RoomPlace> Place { get; } = new ShapeBuilder<RoomPlace>("roomPlace", "Where a room lies on the drawing of its storey.")
        .Required("corner", x => x.Corner, PlanPointCodec.Instance, "The left end of the room's first wall, to the right and down from the origin of the storey's drawing.", out MemberKey<PlanPoint> corner)
        .Usual("turn", 0m, x => x.TurnDegrees, (x, v) => x.WithTurnDegrees(v), Texts.Turn, "How far the first wall is turned, clockwise in degrees: 0 where it runs to the right with the room below it, 90 where it runs down with the room to its left.")
        .Build(v => new(v.Get(corner)));

    internal static Shape<Room> Room { get; } = new ShapeBuilder<Room>("room", "A room: its floor and ceiling, and its wall faces from left to right as they are seen by someone who stands in it.")
        .Required("id", x => x.Id, Texts.Id, "The name it is addressed by; not empty, without \"/\".", out MemberKey<string> id)
        .Required("kind", x => x.Kind, Kinds.RoomKind, "What the room is for.", out MemberKey<RoomKind> kind)
        .Required("storey", x => x.Storey, Texts.Id, "The id of its storey.", out MemberKey<string> storey)
        .Optional("subfloorOffset", x => x.SubfloorOffset, (x, v) => x.WithSubfloorOffset(v), Texts.Distance, "How far its subfloor lies above the storey's (negative: a sunken room); level with it unless stated.")
        .Optional("place", x => x.Place, (x, v) => x.WithPlace(v), Place, "Where it lies on the drawing of its storey, for a plan of the whole; no rule reads it.")
        .Usual("untouched", false, x => x.Untouched, (x, v) => x.WithUntouched(v), Texts.Truth, "Whether it is no part of this work: no rule is asked of it or of its boxes, which new work elsewhere is still held against. A box that says otherwise is a new one in it.")
        .Optional("floor", x => x.Floor, (x, v) => x.WithFloor(v), FloorCodec.Instance, "What will lie on the subfloor.")
        .Optional("ceiling", x => x.Ceiling, (x, v) => x.WithCeiling(v), Ceiling, "Its ceiling; the storey's unless stated.")
        .Optional("joists", x => x.Joists, (x, v) => x.WithJoists(v), Joists, "How the joists over it lie; no rule reads it.")
        .List("walls", x => x.Walls, (x, v) => x.WithWalls(v), WallShapes.Wall, "Its wall faces, left to right. They needn't close.")
        .List("freestanding", x => x.Freestanding, (x, v) => x.WithFreestanding(v), Freestanding, "Islands, railings and half walls that stand in the room.")
        .List("fixtures", x => x.Fixtures, (x, v) => x.WithFixtures(v), Fixture, "Tubs, appliances, furniture and the like.")
        .List("overhead", x => x.Overhead, (x, v) => x.WithOverhead(v), BoxShapes.Box, "Boxes in its ceiling, placed by \"plan\".")
        .List("inFloor", x => x.InFloor, (x, v) => x.WithInFloor(v), BoxShapes.Box, "Boxes in its floor, placed by \"plan\".")
        .Build(v => new(v.Get(id), v.Get(kind), v.Get(storey)));
}
