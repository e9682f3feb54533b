using System;
using System.Globalization;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Boxes with barriers: the volume is apportioned to the spaces between them (NEC 314.16(A), from memory), and each holds what is in it.</summary>
public sealed class FillCompartmentTests
{
    private static readonly Arbitrary<int> Seeds = Arb.From(Gen.Choose(1, int.MaxValue - 1), _ => []);

    // Two 12-2 and a switch fill 9 + 4.5 + 2.25 = 15.75 in³ on the left, one 14-2 and a switch 4 + 4 + 2 = 10 in³ on the right. Together they share the grounds' allowance: 23.75 and a barrier's 1 in³ aren't too much for 34.
    [Theory]
    [InlineData("18", "16", Verdict.Passes, "")]
    [InlineData("15.75", "10", Verdict.Passes, "")]
    [InlineData("15.5", "18.5", Verdict.Fails, "in compartment 1 from the left, fill 15.75 in3")]
    [InlineData("24.1", "9.9", Verdict.Fails, "in compartment 2 from the left, fill 10 in3")]
    public void State_OneSideTooFull_FailsThoughTheWholeIsNot(string left, string right, Verdict expected, string said)
    {
        OneBox box = Placed(Divided(left, right));
        Assert.Equal(expected, box.Verdict());
        if (expected == Verdict.Fails)
        {
            Finding finding = Assert.Single(box.Evaluate().Findings);
            Assert.Contains(said, finding.Message, StringComparison.Ordinal);
            Assert.IsType<NoneFound>(finding.Remedies.Single());
        }
    }

    // A divided box has two gangs or more, and such plastic boxes often have clamps inside: 15.75 and one more 12 AWG are 18 in³.
    [Theory]
    [InlineData("18", Verdict.Passes)]
    [InlineData("17.9", Verdict.Unknown)]
    [InlineData("15.7", Verdict.Fails)]
    public void State_ClampsNotStated_MayBeInASide(string left, Verdict expected) =>
        Assert.Equal(expected, Placed(Divided(left, "30").WithKind(BoxKind.NailOn).WithVolume(Volume.FromCubicInches(60m)).WithClamps(null)).Verdict());

    [Fact]
    public void State_SideWithoutAVolume_IsNotJudgedByItself() => Assert.Equal(Verdict.Passes, Placed(Divided("18", "")).Verdict());

    [Fact]
    public void State_WholeTooFull_FailsThoughEachSideIsNot() => Assert.Equal(Verdict.Fails, Placed(Divided("18", "18").WithVolume(Volume.FromCubicInches(24.7m))).Verdict());

    // More than there is to take: the second space gets what is left, a third nothing.
    [Fact]
    public void State_CountsBeyondTheLists_TakeWhatThereIs()
    {
        BoxCompartment greedy = new BoxCompartment().WithDevices(int.MaxValue).WithCables(int.MaxValue);
        DeviceBox box = Divided("18", "9.9");
        Assert.Equal(Verdict.Fails, Placed(box.WithCompartments(new[] { box.Compartments[0], greedy.WithVolume(Volume.FromCubicInches(9.9m)), greedy.WithVolume(Volume.FromCubicInches(1m)) })).Verdict());
        Assert.Equal(Verdict.Passes, Placed(box.WithCompartments(new[] { box.Compartments[0], greedy.WithVolume(Volume.FromCubicInches(10m)), greedy.WithVolume(Volume.FromCubicInches(1m)) })).Verdict());
    }

    // Up to three spaces, each filled at random and summed in fractions; one of them a picoliter too small, or none.
    [Fact]
    public void State_AnySpaces_TurnWhereOneOfThemIsFull() => Prop.ForAll(Seeds, seed =>
    {
        Random random = new(seed);
        int[] gauges = [14, 12, 10];
        FillSketch[] parts = Enumerable.Range(0, random.Next(1, 4)).Select(_ =>
        {
            int devices = random.Next(0, 3);
            string[] cables = Enumerable.Range(0, random.Next(1, 4)).Select(_ => gauges[random.Next(3)] + "-" + random.Next(2, 4)).ToArray();
            return new FillSketch
            {
                Cables = cables,
                Devices = Enumerable.Repeat("switch", devices).ToArray(),
                Connected = Enumerable.Range(0, devices).Select(_ => gauges[random.Next(3)] + " AWG").ToArray(),
                Clamps = random.Next(2) == 0,
            };
        }).ToArray();
        bool clamps = parts[0].Clamps;
        parts = parts.Select(part => part with { Clamps = clamps }).ToArray();
        int less = random.Next(-1, parts.Length);
        DeviceBox whole = new DeviceBox(OneBox.Id, BoxPurpose.Switch)
        {
            Kind = BoxKind.MetalDevice,
            Gangs = Math.Max(1, parts.Sum(part => part.Devices.Length)),
            Volume = Volume.FromCubicInches(500m),
            Devices = parts.SelectMany(part => part.ToBox().Devices).DefaultIfEmpty(DeviceKind.Blank).ToArray(),
            Connected = parts.SelectMany(part => part.ToBox().Connected).ToArray(),
            Cables = parts.SelectMany(part => part.ToBox().Cables).ToArray(),
            Clamps = parts[0].ToBox().Clamps,
            Compartments = parts.Select((part, i) => new BoxCompartment()
                .WithDevices(part.Devices.Length == 0 ? null : part.Devices.Length)
                .WithCables(part.Cables.Length)
                .WithVolume(Volume.FromPicoliters(BoxFillCaseTests.InPicoliters(part.Sum(2023)).Picoliters - (i == less ? 1 : 0)))).ToArray(),
        };

        Assert.True((less >= 0 ? Verdict.Fails : Verdict.Passes) == Placed(whole).Verdict(), seed.ToString(CultureInfo.InvariantCulture));
        return true;
    }).Check(Tries.Always(200));

    private static DeviceBox Divided(string left, string right)
    {
        BoxCompartment Side(int cables, string volume) => new BoxCompartment().WithDevices(1).WithCables(cables)
            .WithVolume(volume.Length == 0 ? null : Volume.FromCubicInches(decimal.Parse(volume, CultureInfo.InvariantCulture)));
        return new DeviceBox(OneBox.Id, BoxPurpose.Switch)
            .WithDevices(new[] { DeviceKind.Switch, DeviceKind.Switch })
            .WithConnected(new[] { ConductorSize.Awg12, ConductorSize.Awg14 })
            .WithCables(new[] { CableType.Parse("12-2"), CableType.Parse("12-2"), CableType.Parse("14-2") })
            .WithClamps(CableClamps.None).WithFittings(new[] { BoxFitting.PlasticBarrier }).WithVolume(Volume.FromCubicInches(34m))
            .WithCompartments(new[] { Side(2, left), Side(1, right) });
    }

    private static OneBox Placed(DeviceBox box) => BoxFillCaseTests.Placed(NecEdition.Nec2023, box);
}
