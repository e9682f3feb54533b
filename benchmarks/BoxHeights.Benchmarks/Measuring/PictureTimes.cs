using System;
using System.Diagnostics;
using System.IO;
using BoxHeights.Interop;

namespace BoxHeights.Benchmarks;

/// <summary>What pictures of walls and booklets of houses take once everything is warm: the least of many rounds, from the evaluation to the SVG, from the description to the HTML.</summary>
internal static class PictureTimes
{
    private const int Rounds = 3000;
    private const int Booklets = 25;

    private static readonly RuleSet Rules = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.UnitedStatesOutlets(NecEdition.Nec2023) + RuleSets.RoughInPractice;

    public static void Print()
    {
        Console.WriteLine("| boxes on the wall | resolved wall, ms | elevation as SVG, ms | characters |");
        Console.WriteLine("|---|---|---|---|");
        foreach (int boxes in new[] { 5, 20, 60 })
        {
            Evaluation evaluation = new LayoutEvaluator(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice).Evaluate(Wall(boxes));
            (double view, double picture, int length) = (double.MaxValue, double.MaxValue, 0);
            for (int round = 0; round < Rounds; round++)
            {
                Stopwatch watch = Stopwatch.StartNew();
                WallElevation elevation = WallElevation.For(evaluation, "living/north");
                view = Math.Min(view, watch.Elapsed.TotalMilliseconds);
                length = elevation.ToSvg().Length;
                picture = Math.Min(picture, watch.Elapsed.TotalMilliseconds);
            }

            Console.WriteLine(FormattableString.Invariant($"| {boxes} | {view:F3} | {picture:F2} | {length:N0} |"));
        }
    }

    /// <summary>The example house once and twice over, and a house drawn from a seed.</summary>
    public static void PrintBooklets()
    {
        Console.WriteLine("| house | boxes | evaluated, ms | its booklet, ms | characters |");
        Console.WriteLine("|---|---|---|---|---|");
        Dwelling example = DwellingJson.Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "house.json")));
        foreach ((string name, Dwelling house) in new[] { ("example", example), ("example twice", Copies.Of(example, 2)), ("drawn from a seed", new HouseGenerator(3).Create()) })
        {
            LayoutEvaluator evaluator = new(Rules);
            (double evaluated, double booklet, int length) = (double.MaxValue, double.MaxValue, 0);
            for (int round = 0; round < Booklets; round++)
            {
                Stopwatch watch = Stopwatch.StartNew();
                Evaluation evaluation = evaluator.Evaluate(house);
                evaluated = Math.Min(evaluated, watch.Elapsed.TotalMilliseconds);
                watch.Restart();
                length = Booklet.For(evaluation).ToHtml().Length;
                booklet = Math.Min(booklet, watch.Elapsed.TotalMilliseconds);
            }

            Console.WriteLine(FormattableString.Invariant($"| {name} | {house.PlacedBoxes().Count} | {evaluated:F1} | {booklet:F0} | {length:N0} |"));
        }
    }

    private static Dwelling Wall(int boxes)
    {
        DwellingBuilder house = new("wall");
        house.Add(new Storey("first").WithStuds(new StudLayout().WithSpacing(Distance.FromInches(16)).WithKnown(StudKnowledge.Declared))
            .WithCeiling(new Ceiling().WithFraming(Distance.FromInches(97)).WithBoard(Distance.FromInches(0, 5, 8))));
        WallBuilder wall = house.Room("living", RoomKind.LivingRoom, "first").Wall("north", Distance.FromInches(12 * (boxes + 2)));
        for (int i = 0; i < boxes; i++)
        {
            bool isSwitch = i % 2 == 0;
            wall.Add(new DeviceBox("box" + i, isSwitch ? BoxPurpose.Switch : BoxPurpose.General).WithDevices(new[] { isSwitch ? DeviceKind.Switch : DeviceKind.DuplexReceptacle })
                .WithAt(Distance.FromInches(12 * (i + 1))).WithHeight(BoxHeight.Parse(isSwitch ? "48 in to top above subfloor" : "16 in to top above subfloor")));
        }

        return house.Build();
    }
}
