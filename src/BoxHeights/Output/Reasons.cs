namespace BoxHeights;

/// <summary>Why a height can't be told, in the same words in every report.</summary>
internal static class Reasons
{
    public const string NoEdge = "its height names no edge";

    public const string NoSize = "its height goes to another edge, and the size of the box isn't known";

    public const string BoxRange = "it depends on the box: measure yours";

    /// <summary>What isn't known of a datum.</summary>
    public static string NotKnown(Datum? because) => because is null or Datum.FinishedFloor
        ? "the floor isn't chosen"
        : "where the " + DatumText.Name(because.Value) + " lies isn't known";

    /// <summary>What is at fault in the description of a box.</summary>
    public static string Faults(Resolver resolved, string boxId)
    {
        Items<string> said = new Items<string>(resolved.Faults.FindAll(fault => fault.Subject == boxId).ConvertAll(fault => fault.Message)).Distinct();
        return said.Count == 0 ? "its description is at fault" : string.Join("; ", said);
    }
}
