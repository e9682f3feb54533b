using System;
using System.Linq;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Resolving;

/// <content>What is said twice of one box and can't be true together.</content>
public sealed partial class ResolverTests
{
    // The first stud's face is at 15-1/4 in, so the third's at 47-1/4: a box 2-1/4 in wide on its left has its center at 46-1/8. A tape is read to 1/8 in,
    // and half of a box 1/4 in wider is another 1/8.
    [Theory]
    [InlineData("46-1/4", StudKnowledge.Declared, true, false)]
    [InlineData("46-5/16", StudKnowledge.Declared, true, true)]
    [InlineData("46", StudKnowledge.Measured, true, false)]
    [InlineData("45-15/16", StudKnowledge.Measured, true, true)]
    [InlineData("46-3/8", StudKnowledge.Declared, false, false)]
    [InlineData("46-7/16", StudKnowledge.Declared, false, true)]
    [InlineData("60", StudKnowledge.Assumed, true, false)]
    public void Contradiction_StudAndPlace_IsNamedWhereStudsAreKnown(string at, StudKnowledge known, bool sized, bool contradicts)
    {
        DeviceBox box = Box("torn", at).WithSize(sized ? new BoxSize(CaseFile.Inches("2-1/4"), CaseFile.Inches("3-3/4")) : null)
            .WithMounting(new Mounting(MountingMethod.Stud).WithStud(3).WithSide(StudSide.Left));
        Dwelling dwelling = House(wall => wall.Add(box));
        dwelling = dwelling.WithStoreys(dwelling.Storeys.Select(storey => storey.WithStuds(storey.Studs!.WithKnown(known))));
        Finding? fault = Evaluator.Evaluate(dwelling).Findings.SingleOrDefault(finding => finding.Fault is not null);
        Assert.Equal(contradicts ? LayoutFaultKind.Contradiction : null, fault?.Fault!.Kind);
        Assert.True(fault is null || fault.Message.Contains("on stud 3, left, which puts its center at 46-1/8 in", StringComparison.Ordinal));
    }

    // Which side isn't said: 46-1/8 or 47-1/4 + 1-1/2 + 1-1/8 = 49-7/8 in.
    [Theory]
    [InlineData("49-7/8", false)]
    [InlineData("48", true)]
    public void Contradiction_StudWithoutSide_IsNamedIfNeitherSideWillDo(string at, bool contradicts)
    {
        Dwelling dwelling = House(wall => wall.Add(Box("torn", at).WithMounting(new Mounting(MountingMethod.Stud).WithStud(3))));
        dwelling = dwelling.WithStoreys(dwelling.Storeys.Select(storey => storey.WithStuds(storey.Studs!.WithKnown(StudKnowledge.Declared))));
        Assert.Equal(contradicts, Evaluator.Evaluate(dwelling).Findings.Any(finding => finding.Fault?.Kind == LayoutFaultKind.Contradiction));
    }

    // What is fitted has to fit: three switches need three gangs, a dryer's receptacle two (common practice). Jacks share a plate.
    [Theory]
    [InlineData("switch switch switch", 2, 0, "3")]
    [InlineData("switch switch", 2, 0, null)]
    [InlineData("dryer-receptacle", 1, 0, "2")]
    [InlineData("dryer-receptacle", 1, 1, null)]
    [InlineData("dryer-receptacle", 2, 0, null)]
    [InlineData("range-receptacle switch", 2, 0, "3")]
    [InlineData("duplex-receptacle", 1, 2, "2")]
    [InlineData("heater-control heater-control", 1, 0, "2")]
    [InlineData("data-jack tv-jack", 1, 0, null)]
    [InlineData("switch blank", 1, 0, null)]
    [InlineData("dryer-receptacle", null, 0, null)]
    public void Contradiction_DevicesThatDoNotFitTheGangs_IsNamedOnWallsAndCeilings(string devices, int? gangs, int needs, string? needed)
    {
        DeviceBox box = Box("crowded", "60").WithDevices(devices.Split(' ').Select(name => new DeviceKind(name)).ToArray()).WithGangs(gangs).WithDeviceGangs(needs == 0 ? default : new[] { needs });
        Dwelling wall = House(wall => wall.Add(box));
        Dwelling ceiling = House(_ => { });
        ceiling = ceiling.WithRooms(ceiling.Rooms.Select(room => room.WithOverhead(new[] { box.WithAt(null).WithPlan(new PlanPoint(CaseFile.Inches("60"), CaseFile.Inches("60"))).WithHeight(null) })));
        foreach (Dwelling house in new[] { wall, ceiling })
        {
            LayoutFault[] faults = Evaluator.Evaluate(house).Findings.Where(finding => finding.Fault is { Kind: not LayoutFaultKind.UnknownKind }).Select(finding => finding.Fault!).ToArray();
            Assert.Equal(needed is null ? 0 : 1, faults.Length);
            Assert.All(faults, fault => Assert.Equal((LayoutFaultKind.Contradiction, "crowded"), (fault.Kind, fault.Subject)));
            Assert.All(faults, fault => Assert.Contains("need " + needed, fault.Message, StringComparison.Ordinal));
        }
    }

    // Devices stand 1-13/16 in apart (ANSI/NEMA OS 1, from memory), so that the outer two of three are 3-5/8 in apart: no box is narrower than that. On its side it is no lower.
    [Theory]
    [InlineData(3, "3-5/8 in", 0, false, null)]
    [InlineData(3, "3-5/8 in", 2, false, "it is 92.07")]
    [InlineData(3, "2-1/4 in", 0, false, "it is 2-1/4 in wide, but the outer ones of 3 gangs stand 3-5/8 in apart")]
    [InlineData(3, "2-1/4 in", 0, true, "it is 2-1/4 in high, but")]
    [InlineData(1, "2 in", 0, false, null)]
    [InlineData(null, "2-1/4 in", 0, false, "the outer ones of 3 gangs stand")]
    public void Contradiction_BoxNarrowerThanItsGangs_IsNamed(int? gangs, string across, int ticksLess, bool onItsSide, string? expected)
    {
        Distance narrow = Distance.Parse(across) - Distance.FromTicks(ticksLess);
        Distance other = CaseFile.Inches("3-3/4");
        DeviceBox box = Box("narrow", "60").WithDevices(Enumerable.Repeat(DeviceKind.Switch, gangs ?? 3).ToArray()).WithGangs(gangs).WithOnItsSide(onItsSide)
            .WithSize(onItsSide ? new BoxSize(other, narrow) : new BoxSize(narrow, other));
        LayoutFault? fault = Evaluator.Evaluate(House(wall => wall.Add(box))).Findings.SingleOrDefault(finding => finding.Fault is not null)?.Fault;
        Assert.Equal(expected is null, fault is null);
        Assert.Contains(expected ?? "", fault?.Message ?? "", StringComparison.Ordinal);
    }
}
