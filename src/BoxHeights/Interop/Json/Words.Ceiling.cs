namespace BoxHeights.Interop;

/// <content>What a ceiling is measured from.</content>
internal static partial class Words
{
    internal static readonly Codec<CeilingOrigin> CeilingOrigin = new WordCodec<CeilingOrigin>(
        "ceilingOrigin", "a subfloor to measure from", (BoxHeights.CeilingOrigin.RoomSubfloor, "room-subfloor"), (BoxHeights.CeilingOrigin.StoreySubfloor, "storey-subfloor"));
}
