namespace BoxHeights.Rules;

/// <summary>A room's only light in its ceiling sits in a box that can hold a ceiling fan.</summary>
/// <remarks>
/// Which places are fit for a fan no document says; one light alone is taken for one, several are not. A dwelling that marks no box as able to hold a fan
/// isn't judged: whether its boxes can isn't described.
/// </remarks>
[Row]
public sealed partial record FanReady : SpaceRule, IBoxKind
{
    private static readonly Wording NoneForFans = $"no box is described as able to hold a fan";

    /// <inheritdoc/>
    public override bool LooksAtOwnBoxesOnly => true;

    /// <inheritdoc/>
    public override SpaceKind Subject => SpaceKind.Room;

    /// <inheritdoc/>
    public override string Numbers => "one light alone in a ceiling can hold a fan";

    /// <inheritdoc/>
    public override void Judge(SpaceView space, SpaceStatement statement)
    {
        SpaceBox? only = null;
        foreach (SpaceBox box in space.Boxes)
        {
            if (box.Traits.Surface != BoxSurface.Ceiling || !Scope.Covers(box.Traits, box.Room))
            {
                continue;
            }

            if (only is not null)
            {
                return;
            }

            only = box;
        }

        if (only is null)
        {
            return;
        }

        if (HoldsFan(only.Source))
        {
            statement.Meets(only.Id, only.Address);
            return;
        }

        if (!(MarksAny(space.Dwelling) ? space.Whole.Some(this) : space.Whole.None(this)))
        {
            statement.LeavesOpen(NoneForFans);
            return;
        }

        statement.Finds(only.Id, only.Address, Verdict.Fails, Quantity.Of(0), QuantitySet.AtLeast(1), () => $"a box that isn't marked for a fan", () => $"take a box that can hold a fan, or put framing behind it that can");
    }

    /// <summary>A box of the kind that is made for fans is one, marked or not.</summary>
    private static bool HoldsFan(DeviceBox box) => box.FanRated || box.Kind == BoxKind.FanRated;

    bool IBoxKind.IsOne(DeviceBox box) => HoldsFan(box);

    private static bool MarksAny(Dwelling dwelling)
    {
        foreach (Room room in dwelling.Rooms)
        {
            foreach (DeviceBox box in room.Overhead)
            {
                if (HoldsFan(box))
                {
                    return true;
                }
            }
        }

        return false;
    }
}
