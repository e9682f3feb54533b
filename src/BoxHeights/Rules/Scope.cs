namespace BoxHeights;

/// <summary>What this library doesn't look at, and the caution that goes with every report: one place for both.</summary>
internal static class Scope
{
    public const string Caution =
        "A planning aid, not an approval. Local codes and amendments, the authority having jurisdiction, listings and instructions, and licensed practice decide.";

    public static Items<string> NotCovered { get; } = new[]
    {
        "receptacle spacing and required outlets", "circuits, conductor sizes and loads", "GFCI and AFCI protection", "tamper and weather resistance",
        "cable protection, support and free length", "grounding and bonding", "clear floor space, force and grip of operation", "rated walls",
        "studs, headers, pockets and whatever else fills a wall", "box against box, depth and setback of boxes", "tub, shower and sink zones", "door swings, stairs and furniture",
    };
}
