namespace BoxHeights;

/// <summary>What a room is for. An open list: <c>new RoomKind("…")</c> makes one of your own.</summary>
[Kind("kitchen")]
[Kind("bathroom")]
[Kind("bedroom")]
[Kind("living-room")]
[Kind("dining-room")]
[Kind("family-room")]
[Kind("hall")]
[Kind("foyer")]
[Kind("laundry")]
[Kind("garage")]
[Kind("closet")]
[Kind("office")]
[Kind("basement")]
[Kind("attic")]
[Kind("stair")]
[Kind("utility")]
[Kind("pantry")]
[Kind("breakfast-room")]
public readonly partial record struct RoomKind;
