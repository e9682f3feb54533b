using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Why a height can't be told, in the same words in every report.</summary>
internal static class Reasons
{
    /// <summary>What to add to a height that doesn't say to which edge of the box it goes.</summary>
    public const string AddEdge = "add \"to top\", \"to center\" or \"to bottom\" to it";

    public const string NoEdge = "its height names no edge of the box: " + AddEdge;

    public const string NoSize = "its height goes to another edge, and the size of the box isn't known";

    public const string BoxRange = "it depends on the box: measure yours";

    /// <summary>What isn't known of a datum.</summary>
    public static string NotKnown(Datum? because) => because is null or Datum.FinishedFloor
        ? "the floor isn't chosen"
        : "where the " + DatumText.Name(because.Value) + " lies isn't known" + because switch
        {
            Datum.LevelLine or Datum.Grade => ": its storey doesn't state it",
            Datum.FinishedCeiling => ": the framing and the board of the ceiling aren't stated",
            _ => "",
        };

    /// <summary>What is at fault in the description of a box.</summary>
    public static string Faults(List<LayoutFault> faults, string boxId)
    {
        Items<string> said = new Items<string>(faults.FindAll(fault => fault.Subject == boxId).ConvertAll(fault => fault.Message)).Distinct();
        return said.Count == 0 ? "its description is at fault" : string.Join("; ", said);
    }
}
