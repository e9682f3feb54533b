namespace BoxHeights;

/// <summary>The best places of a run with two ends.</summary>
internal static class LinePath
{
    /// <summary>The indices of the places chosen, from left to right.</summary>
    public static int[] Choose(RunPlaces places, RunAim aim, out RunWindows windows)
    {
        windows = new(places, aim);
        aim.Wishes.ForEach(windows.Require);
        aim.Faces.ForEach(windows.Require);
        return EvenPath.Choose(windows.Steps());
    }
}
