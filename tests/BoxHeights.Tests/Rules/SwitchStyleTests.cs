using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>A switch whose style isn't stated may be a lever, a paddle or a button: what is said of it is what all of them agree on.</summary>
public sealed class SwitchStyleTests
{
    private static readonly Distance Tick = Distance.FromTicks(1);

    // ADA, 48 in to the highest operable part: a paddle reaches 1.31 in above its center, a lever 0.47, a button 0.4. From memory.
    [Theory]
    [InlineData("rocker-switch", "46.69", "46.69")]
    [InlineData("toggle-switch", "47.53", "47.53")]
    [InlineData("push-switch", "47.6", "47.6")]
    [InlineData("three-way-rocker-switch", "46.69", "46.69")]
    [InlineData("four-way-toggle-switch", "47.53", "47.53")]
    [InlineData("slide-dimmer", "46.69", "46.69")]
    [InlineData("rotary-dimmer", "47.4", "47.4")]
    [InlineData("switch", "46.69", "47.6")]
    [InlineData("three-way-switch", "46.69", "47.53")]
    [InlineData("four-way-switch", "46.69", "47.53")]
    [InlineData("dimmer", "46.69", "47.53")]
    [InlineData("fan-control", "46.69", "47.53")]
    public void AdaReach_AtTheHighestCenter_IsMetByEveryStyleOrUnknown(string kind, string metUpTo, string missedBeyond)
    {
        Distance met = In(metUpTo);
        Distance missed = In(missedBeyond);
        Assert.Equal(Verdict.Passes, At(met).Verdict);
        Assert.Equal(met == missed ? Verdict.Fails : Verdict.Unknown, At(met + Tick).Verdict);
        Assert.Equal(met == missed ? Verdict.Passes : Verdict.Unknown, At(missed).Verdict);
        Assert.Equal(Verdict.Fails, At(missed + Tick).Verdict);
        Assert.Equal(met == missed ? MissingFacts.None : MissingFacts.OperableParts, At(met + (met == missed ? Distance.Zero : Tick)).Needs);

        Check At(Distance center) => Reach(center, new DeviceKind(kind));
    }

    [Fact]
    public void AdaReach_OfAnUnstatedStyle_IsWhatAllStylesAgreeOn()
    {
        Prop.ForAll(Arb.From(Gen.Choose(1200, 5000)), hundredths =>
        {
            Distance center = Distance.FromInches(hundredths / 100m);
            Verdict[] styles = new[] { DeviceKind.ToggleSwitch, DeviceKind.RockerSwitch, DeviceKind.PushSwitch }.Select(style => Reach(center, style).Verdict).Distinct().ToArray();
            return Reach(center, DeviceKind.Switch).Verdict == (styles.Length == 1 ? styles[0] : Verdict.Unknown);
        }).Check(Tries.Always(100));
    }

    [Fact]
    public void AdaReach_BesideAPaddle_AnUnstatedStyleChangesNothing()
    {
        Assert.Equal(Verdict.Fails, Reach(In("46.69") + Tick, DeviceKind.Switch, DeviceKind.RockerSwitch).Verdict);
        Assert.Equal(Verdict.Unknown, Reach(In("46.69") + Tick, DeviceKind.Switch, DeviceKind.ToggleSwitch).Verdict);
    }

    [Fact]
    public void Catalog_WithASwitchOfOnesOwn_IsExact()
    {
        DevicePart own = new(DeviceKind.Switch, new OperableParts(In("1"), In("1")), new Citation("measured on the site"), isMeasured: true);
        OneBox box = Box(In("47"), DeviceKind.Switch) with { Options = EvaluatorOptions.Default.WithCatalog(PartsCatalog.Generic.With(own)) };
        Assert.Equal(Verdict.Passes, box.Verdict());
        Assert.Equal(Verdict.Fails, box.At(BoxHeight.ToCenter(In("47") + Tick, Datum.FinishedFloor)).Verdict());
    }

    [Fact]
    public void Generic_EverySwitch_HasPartsThatAreAssumed()
    {
        Assert.All(DeviceKind.Known.Where(kind => kind.IsSwitch), kind =>
        {
            Assert.True(PartsCatalog.Generic.TryFindDevice(kind, out DevicePart? part), kind.Name);
            Assert.False(part.IsMeasured, kind.Name);
            Assert.All(part.Styles, style => Assert.True(PartsCatalog.Generic.TryFindDevice(style, out DevicePart? of) && of.Styles.Count == 0, kind + " " + style));
        });
        Assert.Equal(14, DeviceKind.Known.Count(kind => kind.IsSwitch));
    }

    private static Check Reach(Distance center, params DeviceKind[] devices) => Box(center, devices).Check()!.Value;

    private static OneBox Box(Distance center, params DeviceKind[] devices)
    {
        OneBox box = new() { Rules = OneBox.Only(RuleSets.Ada2010, "ada-reach") };
        return (box with { Box = box.Box.WithPurpose(BoxPurpose.Switch).WithDevices(devices) }).At(BoxHeight.ToCenter(center, Datum.FinishedFloor));
    }
}
