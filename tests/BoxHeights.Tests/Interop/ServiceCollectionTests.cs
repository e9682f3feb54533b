using System;
using System.Linq;
using BoxHeights.Interop;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace BoxHeights.Tests.Interop;

public sealed class ServiceCollectionTests
{
    [Fact]
    public void AddBoxHeights_ConfiguredInSeveralPlaces_AddsUpInOrder()
    {
        ServiceCollection services = [];
        services.AddBoxHeights(options => options.Rules = RuleSets.CanadaDwelling);
        services.ConfigureBoxHeights(options => options.Rules += RuleSets.RoughInPractice);
        services.AddBoxHeights(options => options.Evaluator = options.Evaluator.WithUnits(LengthUnits.Millimeters));
        LayoutEvaluator evaluator = Get(services, null);
        Assert.Equal(RuleSets.CanadaDwelling + RuleSets.RoughInPractice, evaluator.Rules);
        Assert.Equal(LengthUnits.Millimeters, evaluator.Evaluate(new DwellingBuilder("x").Build()).State.Options.Units);
        Assert.Single(services, service => service.ServiceType == typeof(LayoutEvaluator));
    }

    [Fact]
    public void AddBoxHeights_ByName_GivesEachJurisdictionItsOwn()
    {
        ServiceCollection services = [];
        services.AddBoxHeights();
        services.AddBoxHeights("ontario", options => options.Rules = RuleSets.CanadaDwelling + RuleSets.OntarioBarrierFree);
        services.AddBoxHeights("ontario", options => options.Rules = RuleSets.CanadaDwelling);
        services.ConfigureBoxHeights(options => options.Rules += RuleSets.Ada2010);
        Assert.Equal(RuleSets.CanadaDwelling, Get(services, "ontario").Rules);
        Assert.Equal(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice + RuleSets.Ada2010, Get(services, null).Rules);
        Assert.Equal(2, services.Count(service => service.ServiceType == typeof(LayoutEvaluator)));
    }

    [Fact]
    public void AddBoxHeights_OneThatIsThere_Stays()
    {
        ServiceCollection services = [];
        LayoutEvaluator own = new(RuleSets.Ada2010);
        services.AddSingleton(own);
        services.AddBoxHeights();
        Assert.Same(own, Assert.Single(services, service => service.ServiceType == typeof(LayoutEvaluator)).ImplementationInstance);
    }

    [Fact]
    public void AddBoxHeights_SeveralFaults_AreAllInOneMessage()
    {
        ServiceCollection services = [];
        ArgumentException error = Assert.Throws<ArgumentException>(() => services.AddBoxHeights("x", options =>
        {
            options.Rules = null!;
            options.Evaluator = EvaluatorOptions.Default.WithHeightStep(Distance.Zero).WithAlongMargin(-Distance.FromInches(1));
        }));
        Assert.All(new[] { "\"x\"", "Rules is null", "HeightStep", "AlongMargin" }, part => Assert.Contains(part, error.Message, StringComparison.Ordinal));
        Assert.Empty(services);
        Assert.Throws<ArgumentNullException>(() => services.AddBoxHeights(null!, null));
        Assert.Throws<ArgumentNullException>(() => services.ConfigureBoxHeights(null!));
    }

    private static LayoutEvaluator Get(ServiceCollection services, string? name)
    {
        using ServiceProvider provider = services.BuildServiceProvider();
        return name is null ? provider.GetRequiredService<LayoutEvaluator>() : provider.GetRequiredKeyedService<LayoutEvaluator>(name);
    }
}
