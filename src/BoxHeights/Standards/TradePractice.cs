using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>What a good crew does, whether or not a document asks for it. Common practice, no source.</summary>
internal static class TradePractice
{
    /// <summary>The usual heights in inches, with the spread in which nobody would remark on one.</summary>
    public static PracticeTable Usual { get; } = new PracticeTable(Citation.CommonPractice.Document).WithHeights(new[]
    {
        // purpose, aims at, no lower than, no higher than, above; beside or behind what
        Habit(BoxPurpose.General, (Edge.Top, 16), (Edge.Bottom, 12), (Edge.Center, 18)),
        Habit(BoxPurpose.Switch, (Edge.Top, 48), (Edge.Top, 42), (Edge.Top, 52)),
        Habit(BoxPurpose.Counter, (Edge.Top, 48), (Edge.Center, 42), (Edge.Top, 52)),
        Habit(BoxPurpose.Bath, (Edge.Top, 48), (Edge.Top, 40), (Edge.Top, 52)),
        Habit(BoxPurpose.Refrigerator, (Edge.Top, 48), (Edge.Center, 36), (Edge.Top, 56)).WithAnchor(Near(0, "refrigerator")),
        Habit(BoxPurpose.Range, (Edge.Center, 5), (Edge.Center, 3), (Edge.Center, 8), Datum.FinishedFloor).WithAnchor(Near(0, "range")),
        Habit(BoxPurpose.SinkBase, (Edge.Center, 18), (Edge.Center, 12), (Edge.Center, 24)).WithAnchor(Near(12, "sink")),

        // A built-in machine can't be pulled out to reach a plug behind it: in the space beside it, as far as its cord goes.
        Habit(BoxPurpose.Dishwasher, (Edge.Center, 18), (Edge.Center, 4), (Edge.Center, 24)).WithAnchor(Beside(0, 48, "dishwasher")),
        Habit(BoxPurpose.Hood, (Edge.Center, 74), (Edge.Center, 62), (Edge.Center, 84)).WithAnchor(Near(0, "range", "cooktop", "hood")),
        Habit(BoxPurpose.Laundry, (Edge.Center, 44), (Edge.Center, 36), (Edge.Center, 48)).WithAnchor(Near(24, "washer", "dryer")),

        // A dryer's is set low as often as it is set with the washer's.
        Habit(BoxPurpose.Dryer, (Edge.Center, 44), (Edge.Center, 4), (Edge.Center, 48)).WithAnchor(Near(24, "dryer", "washer")),
        Habit(BoxPurpose.VanityLight, (Edge.Center, 80), (Edge.Center, 60), (Edge.Center, 90)).WithAnchor(Near(12, "basin", "mirror")),
        Habit(BoxPurpose.Bedside, (Edge.Bottom, 30), (Edge.Bottom, 24), (Edge.Top, 48)).WithAnchor(Beside(2, 30, "bed")),
        Habit(BoxPurpose.BedLight, (Edge.Top, 48), (Edge.Center, 42), (Edge.Top, 66)).WithAnchor(Beside(0, 30, "bed")),
        Habit(BoxPurpose.BedSwitch, (Edge.Bottom, 30), (Edge.Bottom, 24), (Edge.Top, 48)).WithAnchor(Beside(0, 30, "bed")),
        Habit(BoxPurpose.EndTable, (Edge.Center, 36), (Edge.Center, 28), (Edge.Center, 40)).WithAnchor(Near(6, "table")),
        Habit(BoxPurpose.Sofa, (Edge.Top, 48), (Edge.Center, 30), (Edge.Top, 50)).WithAnchor(Near(0, "sofa")),
        Habit(BoxPurpose.WindowTop, (Edge.Bottom, 72), (Edge.Bottom, 66), (Edge.Bottom, 90)).WithAnchor(Beside(4, 18, "window")),
        Habit(BoxPurpose.Closet, (Edge.Top, 48), (Edge.Bottom, 12), (Edge.Top, 78)),
        Habit(BoxPurpose.Office, (Edge.Top, 48), (Edge.Bottom, 12), (Edge.Top, 52)).WithAnchor(Near(24, "desk")),
        Habit(BoxPurpose.Media, (Edge.Top, 16), (Edge.Bottom, 12), (Edge.Top, 52)),
        Habit(BoxPurpose.Television, (Edge.Center, 62), (Edge.Center, 42), (Edge.Center, 72)).WithAnchor(Near(0, "television")),
        Habit(BoxPurpose.Projector, (Edge.Center, -8), (Edge.Center, -24), (Edge.Center, -3), Datum.FinishedCeiling),
        Habit(BoxPurpose.Garage, (Edge.Bottom, 48), (Edge.Bottom, 18), (Edge.Bottom, 60)),
        Habit(BoxPurpose.Basement, (Edge.Bottom, 48), (Edge.Bottom, 12), (Edge.Bottom, 52)),
        Habit(BoxPurpose.Attic, (Edge.Bottom, 60), (Edge.Bottom, 42), (Edge.Bottom, 66)),
        Habit(BoxPurpose.Exterior, (Edge.Bottom, 18), (Edge.Bottom, 12), (Edge.Bottom, 48), Datum.Grade),
        Habit(BoxPurpose.Doorbell, (Edge.Center, 44), (Edge.Center, 40), (Edge.Center, 50)),
        Habit(BoxPurpose.Thermostat, (Edge.Center, 60), (Edge.Center, 44), (Edge.Center, 64)),
    });

    /// <summary>The usual height of boxes for a purpose; null where there is no usual one.</summary>
    public static BoxHeight? HeightFor(BoxPurpose purpose)
    {
        foreach (PracticeHeight habit in Usual.Heights)
        {
            if (habit.Purpose == purpose)
            {
                return habit.Height;
            }
        }

        return null;
    }

    /// <summary>The trade's habits with a builder's own heights: those take the place of the usual ones for the same purposes.</summary>
    public static RuleSet With(PracticeTable own)
    {
        List<Rule> rows = [.. Rows.Rows];
        HashSet<BoxPurpose> seen = [];
        foreach (PracticeHeight height in own.Heights)
        {
            if (!seen.Add(height.Purpose))
            {
                throw new ArgumentException("The table \"" + own.Name + "\" has two heights for " + height.Purpose + ".", nameof(own));
            }

            // A builder who names no anchor leaves the place along the wall free.
            rows.RemoveAll(row => row.Id == HeightId(height.Purpose) || row.Id == PlaceId(height.Purpose));
            rows.AddRange(RowsOf(height, own.Name));
        }

        return new(rows);
    }

    // After the table: static members are made in the order in which they stand.
    public static RuleSet Rows { get; } = new(AllRows());

    /// <summary>How far off each other boxes are still on one level.</summary>
    private static Distance LevelWithin => Distance.FromInches(0, 1, 4);

    private static IEnumerable<Rule> AllRows()
    {
        Distance quarter = Distance.FromInches(0, 1, 4);
        yield return new BoardSeam("board-seam", "cut into one sheet of wall board, not across a seam", Severity.Advice, Citation.CommonPractice)
        {
            NoteUnder = Distance.FromInches(0, 1, 2),
            OnlyIfStatedIn = new[] { RoomKind.Garage, RoomKind.Basement, RoomKind.Attic, RoomKind.Utility },
            Scope = RuleScope.Walls,
        };
        yield return new SpecifiedHeight("specified-height", "set where the drawing asks for it", Severity.Advice, Citation.CommonPractice, quarter);
        yield return new UniformLevel("uniform-level", "level with the other boxes of its purpose in the storey", Severity.Advice, Citation.CommonPractice, LevelWithin)
        {
            Scope = RuleScope.Walls with { Purposes = new[] { BoxPurpose.General, BoxPurpose.Switch, BoxPurpose.Counter }, ExceptExisting = true },
        };

        // Baths differ by their vanities, garages and faces by their floors and grade: each is level in itself.
        yield return new UniformLevel("room-level", "level with the other boxes of its purpose in the room or on the face", Severity.Note, Citation.CommonPractice, LevelWithin)
        {
            InOneRoom = true,
            YieldsWhenForced = true,
            Scope = RuleScope.Walls with { Purposes = new[] { BoxPurpose.Bath, BoxPurpose.Garage, BoxPurpose.Exterior }, ExceptExisting = true },
        };
        yield return new ThreeWayMates("three-way-mates", "two three-way switches, or more pairs, for what is controlled from several places", Severity.Note, Citation.CommonPractice, DeviceLists.Ways);
        yield return new ProudLimit("box-proud", "with its front edge at most 1/16 in past the finished surface, so that its plate lies flat", Severity.Note, Citation.CommonPractice, Distance.FromInches(0, 1, 16))
        {
            Scope = new RuleScope { ExceptExisting = true },
        };
        yield return Control("light-has-switch", "controlled by a switch", ControlAsked.OfEachLight);
        yield return Control("switch-serves", "said to control a light or a receptacle", ControlAsked.OfEachSwitch);
        yield return Control("control-ways", "controlled by one single-pole switch, or from several places by two three-way switches with four-way ones between", ControlAsked.OfWays);
        yield return Edges("finish-edge", "with its plate wholly on or wholly off a finish, not across its edge", WallPieces.Finishes);
        yield return Edges("not-buried", "clear of what covers the wall", WallPieces.Coverings);

        // A receptacle for what stands there is meant to be behind it, a switch never is.
        yield return new KeepClear("switch-hidden", "where one sees and reaches it, not behind what stands before the wall", Severity.Advice, Citation.CommonPractice, WallPieces.StandingThings)
        {
            Things = DeviceLists.StandingThings,
            Scope = RuleScope.Walls with { Devices = DeviceLists.Switches },
        };
        yield return Edges("trim-clearance", "with its plate clear of openings and their casing", WallPieces.Openings);
        yield return new KeepClear("under-wall-top", "with its plate under the top of a low or sloped wall", Severity.Advice, Citation.CommonPractice, WallPieces.AboveTheWall) { Scope = RuleScope.Walls };
        foreach (PracticeHeight habit in Usual.Heights)
        {
            foreach (Rule row in RowsOf(habit, Usual.Name))
            {
                yield return row;
            }
        }
    }

    private static ControlledLights Control(string id, string summary, ControlAsked asked) =>
        new(id, summary, Severity.Advice, Citation.CommonPractice, DeviceLists.Lights, asked) { Ways = asked == ControlAsked.OfWays ? DeviceLists.Ways : null, LeavesOut = "control by sensors and from afar" };

    private static KeepClear Edges(string id, string summary, WallPieces against) =>
        new(id, summary, Severity.Advice, Citation.CommonPractice, against) { Scope = RuleScope.Walls };

    private static PracticeHeight Habit(BoxPurpose purpose, (Edge, int) aim, (Edge, int) low, (Edge, int) high, Datum datum = Datum.Subfloor)
    {
        BoxHeight Height((Edge Edge, int Inches) one) => BoxHeight.To(one.Edge, Distance.FromInches(one.Inches, 0, 1), datum);
        return new PracticeHeight(purpose, Height(aim)).WithNoLower(Height(low)).WithNoHigher(Height(high));
    }

    private static Rule[] RowsOf(PracticeHeight habit, string table) => habit.Anchor is { } anchor ? [Row(habit, table), Place(habit.Purpose, anchor, table)] : [Row(habit, table)];

    private static string HeightId(BoxPurpose purpose) => purpose + "-height";

    private static string PlaceId(BoxPurpose purpose) => purpose + "-place";

    private static AnchoredPlace Place(BoxPurpose purpose, PlaceAnchor anchor, string table) =>
        new(PlaceId(purpose), anchor.ToString(), Severity.Note, new(table, "", Confidence.CommonPractice), anchor)
        {
            OnItsWall = DeviceLists.AtAppliances.Contains(purpose),
            Scope = HabitScope(purpose),
            Planned = PlannedFor(purpose),
            PlannedFor = ApplianceOf(purpose) is { } appliance ? new[] { appliance } : UsualAt(purpose),
            PlannedIn = purpose == BoxPurpose.VanityLight ? new[] { RoomKind.Bathroom } : purpose == BoxPurpose.SinkBase || purpose == BoxPurpose.Hood ? new[] { RoomKind.Kitchen } : default(Items<RoomKind>),
            IsPlannedByCustom = ApplianceOf(purpose) is null,
        };

    /// <summary>The washer's receptacle is the laundry's too; those of other appliances serve one alone.</summary>
    private static DeviceBox PlannedFor(BoxPurpose purpose) => new DeviceBox("planned", purpose)
        .WithDevices(new[]
        {
            purpose == BoxPurpose.Range ? DeviceKind.RangeReceptacle
                : purpose == BoxPurpose.Dryer ? DeviceKind.DryerReceptacle
                : purpose == BoxPurpose.Laundry ? DeviceKind.GfciReceptacle
                : IsLight(purpose) ? DeviceKind.Luminaire
                : purpose == BoxPurpose.BedSwitch ? DeviceKind.ThreeWaySwitch
                : DeviceKind.DuplexReceptacle,
        })
        .WithDedicated(purpose == BoxPurpose.Laundry ? null : ApplianceOf(purpose)?.Name)

        // What feeds a range is too thick for any plastic box; into a large metal one it comes by a connector. A light's canopy covers a round box.
        .WithKind(purpose == BoxPurpose.Range ? BoxKind.FourElevenSquare : IsLight(purpose) ? BoxKind.Octagon : null)
        .WithClamps(purpose == BoxPurpose.Range ? CableClamps.None : null);

    private static bool IsLight(BoxPurpose purpose) => purpose == BoxPurpose.VanityLight || purpose == BoxPurpose.BedLight;

    private static FixtureKind? ApplianceOf(BoxPurpose purpose) =>
        purpose == BoxPurpose.Refrigerator ? FixtureKind.Refrigerator
        : purpose == BoxPurpose.Range ? FixtureKind.Range
        : purpose == BoxPurpose.Laundry ? FixtureKind.Washer
        : purpose == BoxPurpose.Dryer ? FixtureKind.Dryer
        : null;

    /// <summary>Where one is put although no document asks for it: under a sink for its disposal and the dishwasher beside it, over a range for a hood or a microwave oven, over a basin, behind a television.</summary>
    private static Items<FixtureKind> UsualAt(BoxPurpose purpose) =>
        purpose == BoxPurpose.SinkBase ? new[] { FixtureKind.Sink }
        : purpose == BoxPurpose.Hood ? new[] { FixtureKind.Range, FixtureKind.Cooktop }
        : purpose == BoxPurpose.VanityLight ? new[] { FixtureKind.Basin }
        : purpose == BoxPurpose.Television ? new[] { FixtureKind.Television }
        : default(Items<FixtureKind>);

    private static RuleScope HabitScope(BoxPurpose purpose) => RuleScope.Walls with { Purposes = new[] { purpose }, ExceptExisting = true };

    private static PlaceAnchor Near(int upTo, params string[] things) => new(things, Distance.FromInches(upTo, 0, 1));

    private static PlaceAnchor Beside(int beyond, int upTo, params string[] things) => Near(upTo, things).WithBeyond(Distance.FromInches(beyond, 0, 1));

    private static HeightBand Row(PracticeHeight habit, string table)
    {
        BoxHeight low = habit.NoLower ?? habit.Height;
        BoxHeight high = habit.NoHigher ?? habit.Height;
        if (low.Datum != habit.Height.Datum || high.Datum != habit.Height.Datum)
        {
            throw new ArgumentException("The heights for " + habit.Purpose + " are taken from different surfaces.", nameof(habit));
        }

        if (low.Edge == high.Edge && low.Value > high.Value)
        {
            throw new ArgumentException("The heights for " + habit.Purpose + " leave none: no lower than " + low + ", no higher than " + high + ".", nameof(habit));
        }

        return new(HeightId(habit.Purpose), "where " + habit.Purpose + " boxes are usually set", Severity.Note, new(table, "", Confidence.CommonPractice), habit.Height.Datum)
        {
            LowLine = Line(low.Edge!.Value),
            Low = habit.NoLower?.Value,
            HighLine = Line(high.Edge!.Value),
            High = habit.NoHigher?.Value,
            Preferred = habit.Height,
            OrLevelWithOld = LevelWithin,
            YieldsWhenForced = true,
            Scope = HabitScope(habit.Purpose),
        };
    }

    private static TargetLine Line(Edge edge) => edge switch { Edge.Bottom => TargetLine.BoxBottom, Edge.Top => TargetLine.BoxTop, _ => TargetLine.Center };
}
