using BoxHeights.Rules;
namespace BoxHeights.Benchmarks;

/// <summary>What every contender judges: the same seeded houses by the same rows.</summary>
internal sealed class Workload
{
    /// <summary>So many that a branch predictor can't learn them by heart.</summary>
    public const int HouseCount = 64;

    /// <summary>The rows that both the library and the hand-written contenders have; a contender names a rule by its place here.</summary>
    public static string[] RuleIds { get; } =
    [
        "ada-reach", "switch-reach", "counts-as-required", "counter-receptacle", "board-seam",
        "general-height", "switch-height", "counter-height", "specified-height", "uniform-level", "box-fill",
    ];

    private Workload(Dwelling[] dwellings)
    {
        Dwellings = dwellings;
        Cases = System.Array.ConvertAll(dwellings, BoxCase.ListOf);
    }

    public Dwelling[] Dwellings { get; }

    /// <summary>The same houses as flat objects, one a box, for the contenders that don't resolve a description.</summary>
    public BoxCase[][] Cases { get; }

    public int BoxCount
    {
        get
        {
            int count = 0;
            foreach (BoxCase[] house in Cases)
            {
                count += house.Length;
            }

            return count;
        }
    }

    public static Workload Create(int houses = HouseCount)
    {
        Dwelling[] dwellings = new Dwelling[houses];
        for (int i = 0; i < houses; i++)
        {
            dwellings[i] = new HouseGenerator(i + 1).Create();
        }

        return new(dwellings);
    }

    /// <summary>Rows are picked one by one, so that a row added to a set doesn't change what is measured.</summary>
    public static RuleSet Rules()
    {
        RuleSet all = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice + RuleSets.Ada2010;
        return new(System.Array.ConvertAll(RuleIds, id => Alone(all.Row(id))));
    }

    /// <summary>The row as it judges each box by itself, which is what all contenders do.</summary>
    private static Rule Alone(Rule row) => row is PlacementRule placement ? placement with { Relief = Relief.None } : row;
}
