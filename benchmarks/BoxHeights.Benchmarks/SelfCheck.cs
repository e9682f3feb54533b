using System;
using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Benchmarks;

/// <summary>All contenders have to find the same before any is timed.</summary>
internal static class SelfCheck
{
    public static Contender[] Contenders(Workload workload) =>
    [
        new Yardstick(workload, packing: false),
        new Yardstick(workload, packing: true),
        new LibraryInSession(workload),
        new LibraryFromObjects(workload),
        new FluentBoxes(workload),
    ];

    /// <summary>Compares the findings of every house, and prints how many there are.</summary>
    /// <returns>Whether all agree.</returns>
    public static bool Agree(Workload workload, Contender[] contenders)
    {
        Dictionary<string, int> perRule = [];
        bool same = true;
        for (int house = 0; house < workload.Dwellings.Length; house++)
        {
            HashSet<(string Box, string Rule)> expected = [.. contenders[0].Find(house)];
            foreach ((_, string rule) in expected)
            {
                perRule[rule] = perRule.GetValueOrDefault(rule) + 1;
            }

            foreach (Contender other in contenders.Skip(1))
            {
                List<(string Box, string Rule)> found = [.. other.Find(house)];
                if (found.Count != expected.Count || !expected.SetEquals(found) || other.Judge(house) != expected.Count)
                {
                    same = false;
                    Console.WriteLine($"House {house + 1}, {other.Name}: more: {Text(found.Except(expected))}; less: {Text(expected.Except(found))}");
                }
            }
        }

        Console.WriteLine($"{workload.Dwellings.Length} houses, {workload.BoxCount} boxes, {perRule.Values.Sum()} findings by {contenders.Length} contenders: {(same ? "all the same" : "NOT the same")}.");
        Console.WriteLine(string.Join(", ", perRule.OrderBy(one => one.Key, StringComparer.Ordinal).Select(one => one.Key + " " + one.Value)));
        return same;
    }

    private static string Text(IEnumerable<(string Box, string Rule)> some) => string.Join(", ", some.Take(5).Select(one => one.Box + " " + one.Rule));
}
