namespace BoxHeights.Rules;

/// <summary>Between a plate and the casing beside, above or below it some wall is seen.</summary>
internal static class CasingStrips
{
    /// <summary>States the places that leave enough wall to be seen, or lap onto the casing, which isn't its concern. Openings without stated casing aren't judged.</summary>
    /// <param name="site">The box and its surroundings.</param>
    /// <param name="least">The narrowest strip of wall that does.</param>
    /// <param name="statement">Takes the slabs.</param>
    public static void State(PlacementSite site, Distance least, PlacementStatement statement)
    {
        if (site.Box.Plate is not { } plate)
        {
            // The rule about lapping onto casing says that the plate's size is missing.
            return;
        }

        Distance tick = Distance.FromTicks(1);
        foreach (TrimmedOpening trimmed in site.TrimmedOpenings)
        {
            if (!trimmed.IsCased)
            {
                continue;
            }

            statement.About = trimmed.Opening;
            Distance left = trimmed.Left - plate.HalfWidth;
            Distance right = trimmed.Right + plate.HalfWidth;
            AllowedHeights over = trimmed.Top is { } top ? site.AtLeast(TargetLine.PlateBottom, top, trimmed.Left, trimmed.Right) : AllowedHeights.Nothing;
            AllowedHeights under = trimmed.Bottom is { } bottom ? site.AtMost(TargetLine.PlateTop, bottom, trimmed.Left, trimmed.Right) : AllowedHeights.Nothing;
            statement.Within(left - least + tick, left, over | under);
            statement.Within(right, right + least - tick, over | under);

            // Over the head or under the stool: lapping, or off by enough.
            if (trimmed.Top is { } head)
            {
                statement.Within(left + tick, right - tick, site.AtMost(TargetLine.PlateBottom, Up(head, -tick), trimmed.Left, trimmed.Right)
                    | site.AtLeast(TargetLine.PlateBottom, Up(head, least), trimmed.Left, trimmed.Right));
            }

            if (trimmed.Bottom is { } stool)
            {
                statement.Within(left + tick, right - tick, site.AtLeast(TargetLine.PlateTop, Up(stool, tick), trimmed.Left, trimmed.Right)
                    | site.AtMost(TargetLine.PlateTop, Up(stool, -least), trimmed.Left, trimmed.Right));
            }
        }
    }

    private static Level Up(Level level, Distance by) => new(level.Offset + by, level.Datum);
}
