namespace BoxHeights.Rules;

/// <summary>Things of which it isn't said where they stand in plan.</summary>
internal static class UnplacedThings
{
    /// <summary>Why a rule can't judge where something isn't placed.</summary>
    public static readonly Wording NoPlace = $"it isn't said where everything stands in plan";

    /// <summary>Whether the fault of the description that a thing has no place is a finding itself: then it isn't told a second time.</summary>
    public static bool IsToldToLack(Fixture fixture, WallPlan plan) => fixture.Plan.Count == 0 && fixture.Wall is null && plan.Closes;

    /// <summary>Whether a room has such a thing.</summary>
    public static bool AnyIsToldToLack(Room room, WallPlan plan) => room.Fixtures.Exists(fixture => IsToldToLack(fixture, plan));
}
