using System;
using System.Collections.Generic;
using System.Globalization;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Counts what a mended dwelling needs, box by box, and notes what its description doesn't tell.</summary>
internal sealed class OrderCount
{
    private readonly LayoutState state;
    private readonly PartsCatalog catalog;
    private readonly Distance? keepsOff;
    private readonly Dictionary<(OrderedPart Part, string Family, string What), Dictionary<string, int>> counts = [];
    private readonly List<(string What, List<string> Where)> notCounted = [];

    public OrderCount(LayoutState state)
    {
        this.state = state;
        catalog = state.Options.Catalog;
        foreach (InspectionItem item in state.Rules.HabitsOf<InspectionItem>())
        {
            keepsOff = item.ElsePlate && item.Limit is { } limit && !(keepsOff >= limit) ? limit : keepsOff;
        }

        for (int box = 0; box < state.Boxes.Count; box++)
        {
            if (!state.Boxes[box].IsExisting)
            {
                Count(box);
            }
        }
    }

    public Dwelling Dwelling => state.Dwelling;

    private LengthUnits Units => state.Options.Units;

    /// <summary>The items: boxes, then devices, plates, what holds boxes and nail plates; of each those families first that are needed most, and their items side by side.</summary>
    public List<OrderRow> Rows()
    {
        List<(OrderRow Row, string Family, int OfFamily)> rows = [];
        foreach (KeyValuePair<(OrderedPart Part, string Family, string What), Dictionary<string, int>> one in counts)
        {
            List<RoomCount> rooms = [];
            foreach (KeyValuePair<string, int> room in one.Value)
            {
                rooms.Add(new(room.Key, room.Value));
            }

            rows.Add((new(one.Key.Part, one.Key.Family + one.Key.What, new(rooms)), one.Key.Family, OfFamily(one.Key.Part, one.Key.Family)));
        }

        rows.Sort((a, b) => a.Row.Part != b.Row.Part ? a.Row.Part.CompareTo(b.Row.Part) : a.OfFamily != b.OfFamily ? b.OfFamily.CompareTo(a.OfFamily)
            : a.Family != b.Family ? string.CompareOrdinal(a.Family, b.Family) : a.Row.Count != b.Row.Count ? b.Row.Count.CompareTo(a.Row.Count) : string.CompareOrdinal(a.Row.What, b.Row.What));
        return rows.ConvertAll(one => one.Row);
    }

    private int OfFamily(OrderedPart part, string family)
    {
        int all = 0;
        foreach (KeyValuePair<(OrderedPart Part, string Family, string What), Dictionary<string, int>> one in counts)
        {
            if (one.Key.Part == part && one.Key.Family == family)
            {
                foreach (int room in one.Value.Values)
                {
                    all += room;
                }
            }
        }

        return all;
    }

    /// <summary>What the description doesn't tell, and where.</summary>
    public Items<string> NotCounted()
    {
        List<string> lines = notCounted.ConvertAll(one => one.What + ": " + string.Join(", ", one.Where));
        if (keepsOff is { } off && counts.Count > 0)
        {
            lines.Add("nail plates where holes are bored, or cables run, nearer than " + off.Exactly(Units) + " to a face of framing that is deep enough to keep them off");
        }

        return new(lines);
    }

    private void Count(int box)
    {
        DeviceBox source = state.Boxes[box].Source;
        ResolvedSpace space = state.Boxes[box].Surface.Space;
        KindPart build = catalog.BuildOf(ResolvedBox.KindOf(source, catalog));
        Add(OrderedPart.Box, space, FamilyOf(source, build), DetailsOf(source, build, space));
        foreach (DeviceKind device in source.Devices)
        {
            Add(OrderedPart.Device, space, device.Name);
        }

        if (source.Devices.Exists(device => device.TakesPlate))
        {
            // Whatever is outdoors is covered against the weather.
            string kind = space.IsOutside ? "weatherproof" : ResolvedBox.PlateKindOf(source, catalog).Name;
            Add(OrderedPart.Plate, space, kind + ", " + Gangs(source), ", for " + string.Join(" + ", source.Devices.Select(device => device.Name)));
        }

        if (!build.IsLowVoltage)
        {
            NailPlates(box, build);
        }

        if (HolderOf(box, build, out string? unknown) is { } holder)
        {
            Add(OrderedPart.Holder, space, holder);
        }
        else if (unknown is not null)
        {
            Ask(unknown, space.Id);
        }
    }

    /// <summary>What stands on one shelf: boxes of a kind and of as many gangs.</summary>
    private string FamilyOf(DeviceBox box, KindPart build) =>
        ResolvedBox.KindOf(box, catalog).Name + (build.TakesRing ? ", with a ring for " + Gangs(box) : build.HoldsDevices ? ", " + Gangs(box) : "");

    /// <summary>What tells boxes on one shelf apart. An open bracket has no volume.</summary>
    private string DetailsOf(DeviceBox box, KindPart build, ResolvedSpace space)
    {
        string what = "";
        if (ResolvedBox.VolumeOf(box, catalog) is { } volume)
        {
            what += ", " + Printed.Of(volume, Units);
        }
        else if (!build.IsLowVoltage)
        {
            what += ", volume not stated";
            Ask("how large boxes have to be whose volume isn't stated", space.Id);
        }

        what += box.Extension is { } ring ? ", with a ring of " + Printed.Of(ring, Units) : "";
        return what + (ResolvedBox.SizeOf(box, catalog).Depth is { } depth ? ", " + depth.Exactly(Units) + " deep" : "");
    }

    private static string Gangs(DeviceBox box) => ResolvedBox.GangsOf(box).ToString(CultureInfo.InvariantCulture) + "-gang";

    /// <summary>What is ordered to hold a box; null where nothing is, or that isn't known.</summary>
    private string? HolderOf(int box, KindPart build, out string? unknown)
    {
        unknown = null;
        ResolvedBox resolved = state.Boxes[box];
        Mounting? mounting = resolved.Source.Mounting;
        switch (mounting?.How ?? build.Mounting)
        {
            case MountingMethod.Bracket:
                return "bracket" + Spanning(mounting);
            case MountingMethod.Bar:
                return "bar" + Spanning(mounting);
            case MountingMethod.Blocking:
                return Block(box);
            case null when resolved.Surface.Kind == BoxSurface.Ceiling:
                return InCeiling(resolved, out unknown);
            case null when resolved is { IsOnWall: true, Surface.Space.IsOutside: false, IsBroken: false }:
                unknown = state.SitesOf(box).Length > 0 && state.AtOf(box) is { } at && MarkPlace.NailedAt(state, box, at) is not null ? null : "what holds boxes that aren't known to stand against a stud";
                return null;
            default:
                return null;
        }
    }

    private string Spanning(Mounting? mounting) => mounting?.Span is { } span ? ", to span " + span.Exactly(Units) : "";

    private string Block(int box)
    {
        ResolvedSurface surface = state.Boxes[box].Surface;
        if (state.AtOf(box) is not { } at || surface.Framing is not { Known: not StudKnowledge.Assumed } framing || state.SizeOf(box) is not { IsStated: true } size)
        {
            return "block, as long as its bay is wide";
        }

        BlockingNeeded needed = BlockingNeeded.For(framing, at, size);
        return needed.Packed switch
        {
            0 => "block across the bay, " + Printed.Of(needed.Length, Units) + " long",
            1 => surface.Usual.LumberName + " block against the stud",
            _ => surface.Usual.LumberName + " blocks against the stud, " + needed.Packed.ToString(CultureInfo.InvariantCulture) + " deep",
        };
    }

    /// <summary>A box whose middle is so near to a joist's as it has to be to stand against it is nailed to that; any other hangs from a bar, or from a block.</summary>
    private string? InCeiling(ResolvedBox box, out string? unknown)
    {
        unknown = null;
        if (box.Surface.Space.Room?.Joists is not { First: not null } joists || box.Source.Plan is not { } plan || ResolvedBox.SizeOf(box.Source, catalog) is not { IsStated: true } size)
        {
            unknown = "what holds boxes in ceilings, for where joists are isn't known there";
            return null;
        }

        Distance across = joists.Across(plan);
        Distance off = (across - joists.Nearest(across)!.Value).Abs();
        return off <= size.HalfWidth + catalog.UsualMeasures.Lumber ? null : "bar between joists, " + joists.Spacing.Exactly(Units) + " apart";
    }

    /// <summary>Cables that run along framing too shallow to keep them off both faces are plated wherever they run: one for each that enters a box at the least.</summary>
    private void NailPlates(int box, KindPart build)
    {
        ResolvedBox resolved = state.Boxes[box];
        if (keepsOff is not { } off || !resolved.IsOnWall || resolved.Surface.Wall is not { } wall || resolved.Surface.Space.IsOutside
            || (resolved.Source.Mounting?.How ?? build.Mounting) is MountingMethod.CutIn or MountingMethod.Masonry or MountingMethod.Surface or MountingMethod.Cabinet)
        {
            return;
        }

        if (wall.Cavity is not { } cavity)
        {
            Ask("nail plates at boxes in walls whose framing may be too shallow, for its depth isn't stated", resolved.Surface.Space.Id);
        }
        else if (cavity <= off * 2)
        {
            for (int cable = 0; cable < Math.Max(1, resolved.Source.Cables.Count); cable++)
            {
                Add(OrderedPart.NailPlate, resolved.Surface.Space, "plate beside a box, framing " + cavity.Exactly(Units) + " deep");
            }
        }
    }

    private void Ask(string what, string where)
    {
        int known = notCounted.FindIndex(one => one.What == what);
        if (known < 0)
        {
            notCounted.Add((what, [where]));
        }
        else if (!notCounted[known].Where.Contains(where))
        {
            notCounted[known].Where.Add(where);
        }
    }

    private void Add(OrderedPart part, ResolvedSpace space, string family, string what = "")
    {
        if (!counts.TryGetValue((part, family, what), out Dictionary<string, int>? rooms))
        {
            counts.Add((part, family, what), rooms = new(StringComparer.Ordinal));
        }

        rooms.TryGetValue(space.Id, out int before);
        rooms[space.Id] = before + 1;
    }
}
