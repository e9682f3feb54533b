using System;
using System.Diagnostics;
using System.Globalization;

namespace BoxHeights.Benchmarks;

/// <summary>What a pointer costs that carries a box over a kitchen wall: at each of 100 places its bands, what is allowed there, and the nearest good place.</summary>
/// <remarks>For mono it is compiled by itself against the netstandard2.0 build.</remarks>
internal static class PointerTimes
{
    private const int Moves = 100;
    private const int Rounds = 30;

    public static void Print()
    {
        LayoutSession session = new LayoutEvaluator(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice + RuleSets.Ada2010).Open(Kitchen());
        Console.WriteLine("| a box that is carried | bands, us | what is allowed at the place, us | nearest good place, us | all three, us a move | the slowest move, us |");
        Console.WriteLine("|---|---|---|---|---|---|");
        foreach (MountingMethod how in new[] { MountingMethod.Stud, MountingMethod.Bracket })
        {
            PlacedBox box = new PlacedBox("kitchen/north", Receptacle("carried").WithMounting(new Mounting(how)));
            double[] best = { double.MaxValue, double.MaxValue, double.MaxValue, double.MaxValue };
            double slowest = double.MaxValue;
            for (int round = 0; round < Rounds; round++)
            {
                double[] spent = { 0, 0, 0, 0 };
                double worst = 0;
                for (int move = 0; move < Moves; move++)
                {
                    Distance along = Distance.FromInches(4 + (move * 2));
                    BoxHeight height = BoxHeight.ToCenter(Distance.FromInches(10 + (move % 60)), Datum.FinishedFloor);
                    Stopwatch watch = Stopwatch.StartNew();
                    _ = session.AllowedFor(box);
                    double bands = watch.Elapsed.TotalMilliseconds;
                    _ = session.AllowedAt(box, along);
                    double point = watch.Elapsed.TotalMilliseconds;
                    session.TryNearest(box, along, height, out _);
                    double all = watch.Elapsed.TotalMilliseconds;
                    spent[0] += bands;
                    spent[1] += point - bands;
                    spent[2] += all - point;
                    spent[3] += all;
                    worst = Math.Max(worst, all);
                }

                for (int i = 0; i < best.Length; i++)
                {
                    best[i] = Math.Min(best[i], spent[i] * 1000 / Moves);
                }

                slowest = Math.Min(slowest, worst * 1000);
            }

            Console.WriteLine(string.Format(CultureInfo.InvariantCulture, "| {0} | {1:F0} | {2:F0} | {3:F0} | {4:F0} | {5:F0} |", how, best[0], best[1], best[2], best[3], slowest));
        }
    }

    private static DeviceBox Receptacle(string id) => new DeviceBox(id, BoxPurpose.Counter).WithDevices(new[] { DeviceKind.DuplexReceptacle })
        .WithHeight(BoxHeight.ToCenter(Distance.FromInches(44), Datum.FinishedFloor)).WithVolume(Volume.FromCubicInches(20.3m)).WithCables(new[] { CableType.Parse("12-2"), CableType.Parse("12-2") });

    private static Dwelling Kitchen()
    {
        DwellingBuilder house = new DwellingBuilder("wall");
        house.Add(new Storey("first").WithStuds(new StudLayout().WithSpacing(Distance.FromInches(16)).WithKnown(StudKnowledge.Declared))
            .WithBoards(new BoardLayout().WithWidths(new[] { Distance.FromInches(48), Distance.FromInches(48) }).WithThickness(Distance.FromInches(0, 1, 2)))
            .WithCeiling(new Ceiling().WithFraming(Distance.FromInches(97, 1, 8)).WithBoard(Distance.FromInches(0, 5, 8))));
        WallBuilder wall = house.Room("kitchen", RoomKind.Kitchen, "first").With(room => room.WithFloor(FloorBuildup.Of(new FloorLayer("tile", Distance.FromInches(0, 3, 4)))))
            .Wall("north", Distance.FromInches(216));
        Level top = new Level(Distance.FromInches(36), Datum.FinishedFloor);
        wall.Add(new Counter("left", CounterKind.Kitchen, Distance.FromInches(0), Distance.FromInches(80)).WithTop(top).WithDepth(Distance.FromInches(25)))
            .Add(new Counter("right", CounterKind.Kitchen, Distance.FromInches(110), Distance.FromInches(170)).WithTop(top).WithDepth(Distance.FromInches(25)))
            .Add(new Finish("splash", FinishKind.Tile, Distance.FromInches(0), Distance.FromInches(170)).WithBottom(top).WithTop(new Level(Distance.FromInches(54), Datum.FinishedFloor)))
            .Add(new Opening("window", OpeningKind.Window, Distance.FromInches(20), Distance.FromInches(60)).WithSill(new Level(Distance.FromInches(42), Datum.Subfloor)).WithHead(new Level(Distance.FromInches(82), Datum.Subfloor)).WithCasing(Distance.FromInches(2, 1, 4)))
            .Add(new Opening("door", OpeningKind.Door, Distance.FromInches(176), Distance.FromInches(208)).WithHead(new Level(Distance.FromInches(82), Datum.Subfloor)).WithCasing(Distance.FromInches(2, 1, 4)));
        for (int i = 0; i < 6; i++)
        {
            wall.Add(Receptacle("box" + i).WithAt(Distance.FromInches(8 + (i * 28))));
        }

        return house.Build();
    }
}
