namespace BoxHeights;

/// <summary>Where the operated parts of a box's devices may end, from its center up: ranges where a device's style isn't stated.</summary>
[Told]
internal readonly partial struct OperableRange
{
    public DistanceRange Lowest { get; }

    public DistanceRange Highest { get; }

    /// <summary>The parts of all devices together; null where a device isn't known, or none is operated.</summary>
    /// <param name="devices">The devices of the box.</param>
    /// <param name="onItsSide">Whether the box is turned by a quarter.</param>
    /// <param name="catalog">Where its devices are found.</param>
    /// <param name="grip">How far above the center the highest known grip is at its highest; null where none is known.</param>
    public static OperableRange? Of(Items<DeviceKind> devices, bool onItsSide, PartsCatalog catalog, out DistanceRange? grip)
    {
        OperableRange? all = null;
        bool known = true;
        grip = null;
        foreach (DeviceKind device in devices)
        {
            OperableRange? one = null;
            DistanceRange? held = null;
            if (catalog.TryFindDevice(device, out DevicePart? part) && !TryParts(onItsSide, part, catalog, ref one, ref held))
            {
                (one, held) = (null, null);
            }

            if (one is { } parts)
            {
                all = all is { } some
                    ? new(new(Distance.Min(some.Lowest.From, parts.Lowest.From), Distance.Min(some.Lowest.To, parts.Lowest.To)), Higher(some.Highest, parts.Highest))
                    : parts;
                grip = held is { } high && grip is { } higher ? Higher(higher, high) : grip ?? held;
            }
            else if (device.IsOperated)
            {
                known = false;
            }
        }

        return known ? all : null;
    }

    /// <summary>What a device of one of several styles may have: false where one of them isn't known.</summary>
    private static bool TryParts(bool onItsSide, DevicePart part, PartsCatalog catalog, ref OperableRange? all, ref DistanceRange? grip)
    {
        if (part.Styles.Count == 0)
        {
            if ((onItsSide ? part.OnItsSide : part.Operable) is not { } one)
            {
                return false;
            }

            OperableRange some = all ?? new(-one.Below, one.Above);
            all = new(With(some.Lowest, -one.Below), With(some.Highest, one.Above));
            grip = one.GripHigh is not { } high ? grip : grip is { } known ? With(known, high) : high;
            return true;
        }

        foreach (DeviceKind style in part.Styles)
        {
            // A style that is itself one of several would never end: it counts by its own parts.
            if (!catalog.TryFindDevice(style, out DevicePart? of) || !TryParts(onItsSide, of.Styles.Count == 0 ? of : new(of.Kind, of.Operable, of.Citation, of.OnItsSide), catalog, ref all, ref grip))
            {
                return false;
            }
        }

        return true;
    }

    private static DistanceRange Higher(DistanceRange a, DistanceRange b) => new(Distance.Max(a.From, b.From), Distance.Max(a.To, b.To));

    private static DistanceRange With(DistanceRange range, Distance one) => new(Distance.Min(range.From, one), Distance.Max(range.To, one));
}
