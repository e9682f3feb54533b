namespace BoxHeights.Interop;

/// <content>What a ceiling is measured from, and which way its joists run.</content>
internal static partial class Words
{
    internal static readonly Codec<CeilingOrigin> CeilingOrigin = new WordCodec<CeilingOrigin>(
        "ceilingOrigin", "a subfloor to measure from", (BoxHeights.CeilingOrigin.RoomSubfloor, "room-subfloor"), (BoxHeights.CeilingOrigin.StoreySubfloor, "storey-subfloor"));

    internal static readonly Codec<JoistRun> JoistRun = new WordCodec<JoistRun>(
        "joistRun", "which way joists run", (BoxHeights.JoistRun.Along, "along"), (BoxHeights.JoistRun.Away, "away"));
}
