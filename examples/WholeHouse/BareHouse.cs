using BoxHeights;

namespace WholeHouse;

/// <summary>A house as the framers left it.</summary>
internal static class BareHouse
{
    /// <summary>The same house: what was there before stays, what is still to be set isn't there yet.</summary>
    public static Dwelling Of(Dwelling dwelling)
    {
        foreach (PlacedBox placed in dwelling.PlacedBoxes())
        {
            dwelling = placed.Box.Existing ? dwelling : dwelling.WithoutBox(placed.Box.Id);
        }

        return dwelling;
    }
}
