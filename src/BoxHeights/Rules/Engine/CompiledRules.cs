using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A rule set by families, each in the order of ids.</summary>
internal sealed class CompiledRules
{
    // So many catalogs and lists of a caller's own kinds are kept apart: a set is shared by all evaluators that are made for it.
    private const int MostKinds = 8;

    private readonly List<HabitRule> habits = [];
    private volatile KnownKinds[] kinds = [];

    public CompiledRules(RuleSet rules)
    {
        List<PlacementRule> placement = [];
        List<LimitRule> limit = [];
        List<ProvisionRule> provision = [];
        List<SpaceRule> space = [];
        foreach (Rule rule in rules.Rows)
        {
            switch (rule)
            {
                case PlacementRule { Overhead: { } overhead } one:
                    space.Add(overhead);
                    if (one.Scope.WithoutCeilings is { } rest)
                    {
                        Add(placement, one with { Scope = rest });
                    }

                    break;
                case PlacementRule one:
                    Add(placement, one);
                    break;
                case LimitRule one:
                    Add(limit, one);
                    break;
                case ProvisionRule one:
                    Add(provision, one);
                    break;
                case SpaceRule one:
                    space.Add(one);
                    break;
                case HabitRule one:
                    habits.Add(one);
                    break;
            }
        }

        Set = rules;
        RoomForBoxes = HabitOf<RoomForBoxes>() ?? RoomForBoxes.None;
        Placement = placement.ToArray();
        HasRelief = placement.Exists(rule => rule.MayLetOff);
        LooksAtOld = placement.Exists(rule => rule.OrLevelWithOld is not null) || provision.Exists(rule => rule.LooksAtOld);
        Limit = limit.ToArray();
        Provision = provision.ToArray();
        Space = space.ToArray();
        LooksAtOwnBoxesOnly = space.TrueForAll(rule => rule.LooksAtOwnBoxesOnly);

        void Add<T>(List<T> family, T rule)
            where T : Rule
        {
            family.Add(rule);
            OfBoxes.Add(rule);
        }
    }

    public RuleSet Set { get; }

    /// <summary>How much room a box is given that is added.</summary>
    public RoomForBoxes RoomForBoxes { get; }

    /// <summary>The first custom of a form, by the order of ids; null where the set has none.</summary>
    public T? HabitOf<T>()
        where T : HabitRule
    {
        foreach (T habit in HabitsOf<T>())
        {
            return habit;
        }

        return null;
    }

    /// <summary>The customs of a form, in the order of their ids.</summary>
    public IEnumerable<T> HabitsOf<T>()
        where T : HabitRule
    {
        foreach (HabitRule rule in habits)
        {
            if (rule is T habit)
            {
                yield return habit;
            }
        }
    }

    /// <summary>The heights that rows wish for a box, in the order of their ids.</summary>
    public IEnumerable<BoxHeight> PreferredFor(BoxTraits box, RoomKind room)
    {
        foreach (PlacementRule rule in Placement)
        {
            if (rule.Preferred is { Edge: not null } preferred && rule.Scope.Covers(box, room))
            {
                yield return preferred;
            }
        }
    }

    /// <summary>Every name of a kind that is known with a catalog; those of the last few are kept.</summary>
    public KnownKinds KindsWith(PartsCatalog catalog, Items<string> own)
    {
        KnownKinds[] kept = kinds;
        foreach (KnownKinds known in kept)
        {
            if (ReferenceEquals(known.Catalog, catalog) && known.Own == own)
            {
                return known;
            }
        }

        KnownKinds made = new(Set, catalog, own);
        List<KnownKinds> all = [made, .. kept];
        all.RemoveRange(System.Math.Min(all.Count, MostKinds), System.Math.Max(0, all.Count - MostKinds));
        kinds = all.ToArray();
        return made;
    }

    public PlacementRule[] Placement { get; }

    /// <summary>Whether a rule may let one box off because others nearby meet it.</summary>
    public bool HasRelief { get; }

    /// <summary>Whether a rule may let one box off because it is level with another that was there before.</summary>
    public bool LooksAtOld { get; }

    public LimitRule[] Limit { get; }

    public ProvisionRule[] Provision { get; }

    public SpaceRule[] Space { get; }

    /// <summary>Every rule that speaks of boxes one by one or in groups, in the order of ids.</summary>
    public List<Rule> OfBoxes { get; } = [];

    /// <summary>Whether every rule for spaces says that it looks at its own boxes alone, and of others only at what <see cref="DwellingMemo"/> says is listed.</summary>
    public bool LooksAtOwnBoxesOnly { get; }
}
