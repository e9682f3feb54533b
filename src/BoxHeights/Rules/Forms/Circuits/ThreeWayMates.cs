namespace BoxHeights.Rules;

/// <summary>Three-way switches come in pairs, with four-way ones between the two: an odd one has no mate.</summary>
/// <remarks>
/// Which light a switch controls isn't described, so that only their number tells. Silent where the mate may be one that isn't described: in a dwelling of one room,
/// beside work that was there before, and where a switch's devices aren't stated.
/// </remarks>
[Row]
public sealed partial record ThreeWayMates : SpaceRule
{
    private static readonly Wording MayHaveAMate = $"a switch that isn't described, or that was there before, may be the mate of a three-way switch";

    /// <inheritdoc/>
    public override SpaceKind Subject => SpaceKind.Dwelling;

    /// <inheritdoc/>
    public override bool LooksAtOwnBoxesOnly => true;

    internal override bool LooksAt(BoxTraits box, DwellingMemo whole) =>
        box.IsExisting || (box.Purpose == BoxPurpose.Switch && box.Devices.Count == 0) || box.Devices.Contains(DeviceKind.ThreeWaySwitch) || box.Devices.Contains(DeviceKind.FourWaySwitch);

    /// <inheritdoc/>
    public override string Numbers => "an even number of three-way switches, two at least where there is a four-way switch";

    /// <inheritdoc/>
    public override void Judge(SpaceView space, SpaceStatement statement)
    {
        int threeWays = 0;
        int fourWays = 0;
        bool isOpen = space.Dwelling.Rooms.Count < 2;
        SpaceBox? last = null;
        foreach (SpaceBox box in space.Boxes)
        {
            isOpen |= box.Traits.IsExisting || (box.Traits.Purpose == BoxPurpose.Switch && box.Traits.Devices.Count == 0);
            foreach (DeviceKind device in box.Traits.Devices)
            {
                threeWays += device == DeviceKind.ThreeWaySwitch ? 1 : 0;
                fourWays += device == DeviceKind.FourWaySwitch ? 1 : 0;
                last = device == DeviceKind.ThreeWaySwitch || (device == DeviceKind.FourWaySwitch && last is null) ? box : last;
            }
        }

        int lacking = threeWays % 2 == 1 ? 1 : fourWays > 0 && threeWays == 0 ? 2 : 0;
        if (lacking == 0)
        {
            if (threeWays > 0)
            {
                statement.Meets(space.Id, space.Id);
            }

            return;
        }

        if (isOpen || space.Whole.HasBoxesAtFault)
        {
            statement.LeavesOpen(MayHaveAMate);
            return;
        }

        // One that is alone is known; of several it isn't known which.
        Finds(space, statement, threeWays, lacking, threeWays + fourWays == 1 ? last : null);
    }

    private static void Finds(SpaceView space, SpaceStatement statement, int threeWays, int lacking, SpaceBox? lone) =>
        statement.Finds(
            lone?.Id ?? space.Id, lone?.Address ?? space.Id, Verdict.Fails, Quantity.Of(threeWays), QuantitySet.AtLeast(threeWays + lacking),
            () => threeWays == 0 ? $"a four-way switch without three-way switches"
                : threeWays == 1 ? $"a three-way switch alone"
                : (Wording)$"{threeWays} three-way switches");
}
