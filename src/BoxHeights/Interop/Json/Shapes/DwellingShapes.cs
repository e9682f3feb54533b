namespace BoxHeights.Interop;

/// <summary>The dwelling, its storeys, flights and outside faces.</summary>
internal static class DwellingShapes
{
    internal static Shape<Storey> Storey { get; } = new ShapeBuilder<Storey>("storey", "One storey: everything that stands on one subfloor level.")
        .Required("id", x => x.Id, Texts.Id, "The name it is addressed by; not empty, without \"/\".", out MemberKey<string> id)
        .Optional("levelLine", x => x.LevelLine, (x, v) => x.WithLevelLine(v), Texts.Level, "The height of the line that the crew shoots through the storey, usually from its subfloor.")
        .Optional("gradeBelowSubfloor", x => x.GradeBelowSubfloor, (x, v) => x.WithGradeBelowSubfloor(v), Ranges.Distance, "How far the finished grade outside lies below this storey's subfloor.")
        .Optional("aboveBelow", x => x.AboveBelow, (x, v) => x.WithAboveBelow(v), Texts.Distance, "From the subfloor of the storey below up to this storey's subfloor.")
        .Optional("ceiling", x => x.Ceiling, (x, v) => x.WithCeiling(v), RoomShapes.Ceiling, "The ceiling of each room that doesn't state its own.")
        .Optional("studs", x => x.Studs, (x, v) => x.WithStuds(v), WallShapes.Studs, "The studs of each wall that doesn't state its own.")
        .Optional("boards", x => x.Boards, (x, v) => x.WithBoards(v), WallShapes.Boards, "The wall board of each wall that doesn't state its own.")
        .Build(v => new(v.Get(id)));

    internal static Shape<StairLights> Lights { get; } = new ShapeBuilder<StairLights>("stairLights", "Lights along a flight: one place on each so many treads.")
        .Required("every", x => x.Every, Texts.Count, "One light every so many treads; at least 1.", out MemberKey<int> every)
        .Optional("startTread", x => x.StartTread, (x, v) => x.WithStartTread(v), Texts.Count, "The tread of the first light, counted from 1.")
        .Optional("phase", x => x.Phase, (x, v) => x.WithPhase(v), Texts.Ratio, "Where on its tread each light sits: 0 at the nosing, 1 at the next.")
        .Optional("aboveTread", x => x.AboveTread, (x, v) => x.WithAboveTread(v), Texts.Distance, "How high above its tread each light sits.")
        .Optional("gangs", x => x.Gangs, (x, v) => x.WithGangs(v), Texts.Count, "The width of each light's box in device widths.")
        .Build(v => new(v.Get(every)));

    internal static Shape<StairFlight> Flight { get; } = new ShapeBuilder<StairFlight>("stairFlight", "A flight of stairs between two storeys.")
        .Required("id", x => x.Id, Texts.Id, "The name it is addressed by; not empty, without \"/\".", out MemberKey<string> id)
        .Required("from", x => x.From, Texts.Id, "The id of the storey that it starts from: the lower one.", out MemberKey<string> from)
        .Required("to", x => x.To, Texts.Id, "The id of the storey that it leads to.", out MemberKey<string> to)
        .Required("risers", x => x.Risers, Texts.Count, "How many risers it has; at least 1.", out MemberKey<int> risers)
        .Optional("tread", x => x.Tread, (x, v) => x.WithTread(v), Texts.Distance, "From nosing to nosing.")
        .Optional("run", x => x.Run, (x, v) => x.WithRun(v), Texts.Distance, "All treads together, from the first nosing to the last, instead of the tread; that counts where both are stated.")
        .Optional("nosing", x => x.Nosing, (x, v) => x.WithNosing(v), Texts.Distance, "How far a tread reaches beyond the riser below it.")
        .Optional("treadFinish", x => x.TreadFinish, (x, v) => x.WithTreadFinish(v), Texts.Distance, "The thickness of finish on each tread.")
        .Optional("cutForFloorBelow", x => x.CutForFloorBelow, (x, v) => x.WithCutForFloorBelow(v), Texts.Distance, "The thickness of finish floor at its foot that its carriages are cut for; the floor that is laid there unless stated.")
        .Optional("cutForFloorAbove", x => x.CutForFloorAbove, (x, v) => x.WithCutForFloorAbove(v), Texts.Distance, "The thickness of finish floor at its head that its carriages are cut for; the floor that is laid there unless stated.")
        .Optional("wall", x => x.Wall, (x, v) => x.WithWall(v), Texts.Plain, "The address of the wall beside it (\"hall/stair\").")
        .Optional("firstNosing", x => x.FirstNosing, (x, v) => x.WithFirstNosing(v), Texts.Distance, "Where the first nosing is along that wall.")
        .Optional("climbs", x => x.Climbs, (x, v) => x.WithClimbs(v), Words.WallEnd, "The end of that wall that it climbs toward, seen by someone who faces the wall; the right unless stated.")
        .Optional("lights", x => x.Lights, (x, v) => x.WithLights(v), Lights, "The lights along it.")
        .Build(v => new(v.Get(id), v.Get(from), v.Get(to), v.Get(risers)));

    internal static Shape<Platform> Platform { get; } = new ShapeBuilder<Platform>("platform", "A deck, porch or balcony.")
        .Required("id", x => x.Id, Texts.Id, "The name it is addressed by at its face.", out MemberKey<string> id)
        .Required("kind", x => x.Kind, Kinds.PlatformKind, "What it is.", out MemberKey<PlatformKind> kind)
        .Required("left", x => x.Left, Texts.Distance, "Its left end along the wall, from the wall's left end (framing face).", out MemberKey<Distance> left)
        .Required("right", x => x.Right, Texts.Distance, "Its right end along the wall, from the wall's left end (framing face).", out MemberKey<Distance> right)
        .Optional("gap", x => x.Gap, (x, v) => x.WithGap(v), Texts.Distance, "The gap between the wall and the platform.")
        .Optional("surface", x => x.Surface, (x, v) => x.WithSurface(v), Texts.Level, "The height of its walking surface.")
        .Build(v => new(v.Get(id), v.Get(kind), v.Get(left), v.Get(right)));

    internal static Shape<OutsideFace> Outside { get; } = new ShapeBuilder<OutsideFace>("outsideFace", "A face of the building, seen from outside.")
        .Required("id", x => x.Id, Texts.Id, "The name it is addressed by; not empty, without \"/\".", out MemberKey<string> id)
        .Optional("storey", x => x.Storey, (x, v) => x.WithStorey(v), Texts.Plain, "The id of the storey whose subfloor its heights are taken from; the lowest unless stated.")
        .Usual("untouched", false, x => x.Untouched, (x, v) => x.WithUntouched(v), Texts.Truth, "Whether it is no part of this work: no rule is asked of it or of its boxes, which new work elsewhere is still held against. A box that says otherwise is a new one in it.")
        .List("walls", x => x.Walls, (x, v) => x.WithWalls(v), WallShapes.Wall, "Its wall faces, left to right.")
        .List("platforms", x => x.Platforms, (x, v) => x.WithPlatforms(v), Platform, "Decks, porches and balconies before it.")
        .List("fixtures", x => x.Fixtures, (x, v) => x.WithFixtures(v), RoomShapes.Fixture, "Equipment that stands before it: the outdoor unit of an air conditioner or a heat pump.")
        .Build(v => new(v.Get(id)));

    internal static Shape<Dwelling> Dwelling { get; } = new ShapeBuilder<Dwelling>("dwelling", "A dwelling as its builder describes it: storeys, rooms, outside faces and stair flights, in the user's own terms. What isn't stated is left out.")
        .Required("name", x => x.Name, Texts.Plain, "What the dwelling is called; not empty.", out MemberKey<string> name)
        .Usual("units", default(LengthUnits), x => x.Units, (x, v) => x.WithUnits(v), Words.LengthUnits, "How marks and remedies are rounded and printed; inches unless stated.")
        .Optional("occupancy", x => x.Occupancy, (x, v) => x.WithOccupancy(v), Kinds.Occupancy, "What kind of building it is; it decides which documents a caller adds.")
        .List("storeys", x => x.Storeys, (x, v) => x.WithStoreys(v), Storey, "The storeys, lowest first.")
        .List("rooms", x => x.Rooms, (x, v) => x.WithRooms(v), RoomShapes.Room, "The rooms, in the order in which they are reported.")
        .List("outside", x => x.Outside, (x, v) => x.WithOutside(v), Outside, "Faces of the building seen from outside.")
        .List("flights", x => x.Flights, (x, v) => x.WithFlights(v), Flight, "Flights of stairs.")
        .BuildDocument(v => new(v.Get(name)));
}
