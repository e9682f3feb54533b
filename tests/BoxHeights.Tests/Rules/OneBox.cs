using System;
using System.Linq;
using BoxHeights.Tests.Cases;

namespace BoxHeights.Tests.Rules;

/// <summary>A dwelling of one wall, 12 ft long, with one box in its middle: enough for most cases.</summary>
internal sealed record OneBox
{
    public const string Id = "the-box";
    public const string WallAddress = "room/wall";

    public static Distance Middle { get; } = CaseFile.Inches("72");

    public DeviceBox Box { get; init; } = new(Id, BoxPurpose.General) { Devices = new[] { DeviceKind.DuplexReceptacle }, At = Middle };

    public Func<Wall, Wall> Wall { get; init; } = wall => wall;

    public Func<Room, Room> Room { get; init; } = room => room;

    public Storey Storey { get; init; } = new("ground");

    public RuleSet Rules { get; init; } = RuleSet.Empty;

    public EvaluatorOptions Options { get; init; } = EvaluatorOptions.Default;

    /// <summary>The rules that one row makes alone.</summary>
    public static RuleSet Only(RuleSet rules, string id) => new([rules.Row(id)]);

    public static FloorBuildup Floor(DistanceRange thickness) => FloorBuildup.Of(new FloorLayer("floor", thickness));

    public Dwelling Build()
    {
        DwellingBuilder dwelling = new("case");
        dwelling.Add(Storey);
        RoomBuilder room = dwelling.Room("room", RoomKind.Kitchen, Storey.Id).With(Room);
        room.Wall("wall", CaseFile.Inches("144")).With(Wall).Add(Box);
        return dwelling.Build();
    }

    public Evaluation Evaluate() => new LayoutEvaluator(Rules, Options).Evaluate(Build());

    /// <summary>What the rules say of the box; null where none speaks of it.</summary>
    public Check? Check() => Evaluate().Checks.Select(check => (Check?)check).SingleOrDefault();

    public Verdict Verdict() => Check()!.Value.Verdict;

    public OneBox At(BoxHeight height) => this with { Box = Box.WithHeight(height) };
}
