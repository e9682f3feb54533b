using System;
using Microsoft.Extensions.DependencyInjection;

namespace BoxHeights.Interop;

/// <summary>What an application may set when it registers the library.</summary>
public sealed class BoxHeightsOptions
{
    /// <summary>The rules to judge by; <c>RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice</c> unless set.</summary>
    public RuleSet Rules { get; set; } = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice;

    /// <summary>What the evaluator takes for granted; the usual options unless set, which follow each dwelling's own units.</summary>
    public EvaluatorOptions Evaluator { get; set; } = EvaluatorOptions.Default;
}

/// <summary>Registers the library with a container.</summary>
public static class ServiceCollectionExtensions
{
    /// <summary>Registers one <see cref="LayoutEvaluator"/>, which is immutable and thread-safe. No scan, no reflection.</summary>
    /// <param name="services">The container's services.</param>
    /// <param name="configure">Sets the options; null for the usual ones.</param>
    /// <returns>The same services.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="services"/> is null.</exception>
    /// <exception cref="ArgumentException">The options don't do; thrown here, not when the evaluator is first asked for.</exception>
    public static IServiceCollection AddBoxHeights(this IServiceCollection services, Action<BoxHeightsOptions>? configure = null)
    {
        if (services is null)
        {
            throw new ArgumentNullException(nameof(services));
        }

        BoxHeightsOptions options = new();
        configure?.Invoke(options);
        return services.AddSingleton(new LayoutEvaluator(options.Rules, options.Evaluator));
    }
}
