using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Standards;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>The heights that are worth trying on a wall, against every mark of the tape asked one by one in every part of the wall.</summary>
public sealed class TriedHeightsTests
{
    private const int Most = 8;

    private static readonly CompiledRules Rules = new(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice);

    private int habitsYield, full;

    // A wall with many windows and cabinets has more heights than are tried; a height that a habit is against, or that isn't on the tape's marks, is tried all the same.
    [Fact]
    public void Readings_OfAnyWall_AreTheNearestMarksOfEachPart()
    {
        Prop.ForAll(RandomRooms.Seeds, seed =>
        {
            Draw draw = new(seed);
            DwellingBuilder house = new("case");
            house.Add(new Storey("main"));
            house.Room("room", RoomKind.Bedroom, "main").Wall("wall", In(400)).With(wall => Dressed(wall, draw));
            Dwelling dwelling = house.Build();
            SettledOptions options = SettledOptions.Usual(dwelling);
            Distance wanted = draw.Between(40, 480) * Distance.FromInches(0, 1, draw.Chance(80) ? 8 : 16);
            DeviceBox box = new DeviceBox("probe", BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(In(200)).WithHeight(BoxHeight.ToTop(wanted, Datum.Subfloor));
            StatedSite site = new LayoutState(dwelling, Rules, options).SiteFor("room/wall", box)!;
            Distance[] expected = Expected(site, wanted, options);
            Assert.Equal(expected.Take(Most), new TriedHeights(site, new(site, false, options.AlongMargin, options.AlongStep), wanted, options).Readings);
            full += expected.Length > Most ? 1 : 0;
        }).Check(Tries.Always(24));
        Assert.True(habitsYield > 0 && full > 0, habitsYield + " parts where a habit is against the height, " + full + " walls with more heights than are tried");
    }

    /// <summary>What each part of the wall gives first, nearest first, then what else they give.</summary>
    private Distance[] Expected(StatedSite site, Distance wanted, SettledOptions options)
    {
        List<Distance> first = [], inNeed = [];
        foreach ((long left, long right) in site.Places.Edges.Zip(site.Places.Edges.Skip(1)))
        {
            long from = Math.Max(left, 0), to = Math.Min(right, site.Site.Surface.Length.Ticks);
            if (to - from < 2)
            {
                continue;
            }

            DistanceSet firm = site.Places.SureOfFirmRulesAt(from + 1), all = site.Places.SureAt(from + 1);
            bool IsFirm(Distance up) => firm.Contains(up);
            bool HasSlack(Distance up) => firm.ContainsRange(new(up - options.HeightMargin, up + options.HeightMargin));
            bool IsAllowed(Distance up) => all.Contains(up);
            habitsYield += HasSlack(wanted) && !IsAllowed(wanted) ? 1 : 0;
            Distance[] found = [.. new Func<Distance, bool>[] { up => IsAllowed(up) && HasSlack(up), IsAllowed, HasSlack, IsFirm }
                .SelectMany(isGood => Marks(options.HeightStep).Where(isGood).OrderBy(up => (up - wanted).Abs()).ThenBy(up => up).Take(1))];
            first.AddRange(found.Take(1));
            inNeed.AddRange(found.Skip(1));
        }

        IEnumerable<Distance> Sorted(List<Distance> some) => some.OrderBy(up => (up - wanted).Abs()).ThenBy(up => up);
        return [.. new[] { wanted }.Concat(Sorted(first)).Concat(Sorted(inNeed)).Distinct()];
    }

    private static IEnumerable<Distance> Marks(Distance step) => Enumerable.Range(-200, 1200).Select(mark => step * mark);

    private static Wall Dressed(Wall wall, Draw draw)
    {
        int many = draw.Below(12);
        Opening[] windows = [.. Enumerable.Range(0, many).Where(_ => draw.Chance(60)).Select(i => new Opening("window-" + i, OpeningKind.Window, In((30 * i) + 10), In((30 * i) + 24))
            .WithSill(Up(draw.Between(8, 50))).WithHead(Up(draw.Between(52, 84))).WithCasing(In(2.25m)))];
        Covering[] cabinets = [.. Enumerable.Range(0, many).Where(_ => draw.Chance(40)).Select(i => new Covering("cabinet-" + i, CoveringKind.WallCabinet, In((30 * i) + draw.Between(15, 25)), In((30 * i) + draw.Between(30, 36)))
            .WithBottom(Up(draw.Between(0, 40))).WithTop(Up(draw.Between(41, 90))))];

        // One that begins a tick further along than another: a part of the wall within which no place is.
        Covering[] beside = [.. cabinets.Where(_ => draw.Chance(30)).Select(one => new Covering(one.Id + "-too", CoveringKind.WallCabinet, one.Left + Distance.FromTicks(1), one.Right)
            .WithBottom(Up(draw.Between(0, 40))).WithTop(Up(draw.Between(41, 90))))];
        return wall.WithOpenings(windows).WithCoverings([.. cabinets, .. beside]);
    }

    private static Level Up(decimal inches) => new(In(inches), Datum.Subfloor);
}
