namespace BoxHeights;

/// <summary>How a box is built.</summary>
/// <remarks>An open list: <c>new BoxKind("weatherproof-surface")</c> makes one of your own. <c>default</c> has the empty name and means "not stated".</remarks>
[Kind("nail-on", "A plastic box with its own nails, for new work on a stud's side.")]
[Kind("cut-in", "An old-work box that clamps to the board and needs no stud.")]
[Kind("four-square", "A metal box 4 in square, with a plaster ring for its device.")]
[Kind("four-eleven-square", "A metal box 4-11/16 in square, with a plaster ring for its device.")]
[Kind("octagon", "A round or eight-sided ceiling or light box 4 in across.")]
[Kind("handy", "A metal utility box 4 × 2-1/8 in, often on the surface.")]
[Kind("metal-device", "A metal box 3 × 2 in a gang, whose sides come off to join gangs.")]
[Kind("masonry", "A metal box made to be built into masonry.")]
[Kind("cast", "A cast box with threaded hubs, mostly on the surface: FS, 1-3/4 in deep at the least, or FD, 2-3/8 in.")]
[Kind("pancake", "A shallow round box for a light on a thin wall or ceiling.")]
[Kind("low-voltage-bracket", "An open bracket for data and television; never for line voltage.")]
[Kind("fan-rated", "A ceiling box made to carry a paddle fan.")]
public readonly partial record struct BoxKind;
