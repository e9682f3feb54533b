namespace BoxHeights.Rules;

/// <summary>Switches for one light from two places come in pairs, with others between the two: an odd one has no mate.</summary>
/// <remarks>
/// Which light a switch controls isn't described, so that only their number tells. Silent where the mate may be one that isn't described: in a dwelling of one room,
/// beside work that was there before, and where a switch's devices aren't stated.
/// </remarks>
[Row(nameof(Ways))]
public sealed partial record ThreeWayMates : SpaceRule
{
    /// <summary>Which switches they are, and what they are called.</summary>
    public SwitchWays Ways { get; init => field = Guard.NotNull(value, nameof(Ways)); }

    /// <inheritdoc/>
    public override SpaceKind Subject => SpaceKind.Dwelling;

    /// <inheritdoc/>
    public override bool LooksAtOwnBoxesOnly => true;

    internal override bool LooksAt(BoxTraits box, DwellingMemo whole) =>
        box.IsExisting || (box.Purpose == BoxPurpose.Switch && box.Devices.Count == 0) || box.Devices.Exists(device => Ways.AtEnds.Contains(device) || Ways.Between.Contains(device));

    /// <inheritdoc/>
    public override Items<string> KindsNamed => Ways.KindsNamed;

    /// <inheritdoc/>
    public override string Numbers => "an even number of " + Ways.EndName + " switches, two at least where there is a " + Ways.BetweenName + " switch";

    /// <inheritdoc/>
    public override void Judge(SpaceView space, SpaceStatement statement)
    {
        int ends = 0;
        int betweens = 0;
        bool isOpen = space.Dwelling.Rooms.Count < 2;
        SpaceBox? last = null;
        foreach (SpaceBox box in space.Boxes)
        {
            isOpen |= box.Traits.IsExisting || (box.Traits.Purpose == BoxPurpose.Switch && box.Traits.Devices.Count == 0);
            foreach (DeviceKind device in box.Traits.Devices)
            {
                (bool atEnd, bool between) = (Ways.AtEnds.Contains(device), Ways.Between.Contains(device));
                ends += atEnd ? 1 : 0;
                betweens += between ? 1 : 0;
                last = atEnd || (between && last is null) ? box : last;
            }
        }

        int lacking = ends % 2 == 1 ? 1 : betweens > 0 && ends == 0 ? 2 : 0;
        if (lacking == 0)
        {
            if (ends > 0)
            {
                statement.Meets(space.Id, space.Id);
            }

            return;
        }

        if (isOpen || space.Whole.HasBoxesAtFault)
        {
            statement.LeavesOpen($"a switch that isn't described, or that was there before, may be the mate of a {Wording.Term(Ways.EndName):ways} switch");
            return;
        }

        // One that is alone is known; of several it isn't known which.
        Finds(space, statement, ends, lacking, ends + betweens == 1 ? last : null);
    }

    private void Finds(SpaceView space, SpaceStatement statement, int ends, int lacking, SpaceBox? lone) =>
        statement.Finds(
            lone?.Id ?? space.Id, lone?.Address ?? space.Id, Verdict.Fails, Quantity.Of(ends), QuantitySet.AtLeast(ends + lacking),
            () => ends == 0 ? $"a {Wording.Term(Ways.BetweenName):between} switch without {Wording.Term(Ways.EndName):ways} switches"
                : ends == 1 ? $"a {Wording.Term(Ways.EndName):ways} switch alone"
                : (Wording)$"{ends} {Wording.Term(Ways.EndName):ways} switches",
            () => ends == 0 ? $"add {lacking} {Wording.Term(Ways.EndName):ways} switches, one at each end, or take one that needs none for it"
                : (Wording)$"add one more {Wording.Term(Ways.EndName):ways} switch, the mate of the one that has none, or take one that needs no mate for it");
}
