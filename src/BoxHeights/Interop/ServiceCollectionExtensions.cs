using System;
using System.Collections.Generic;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace BoxHeights.Interop;

/// <summary>What an application may set when it registers the library.</summary>
public sealed class BoxHeightsOptions
{
    /// <summary>The rules to judge by; <c>RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice</c> unless set.</summary>
    public RuleSet Rules { get; set; } = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice;

    /// <summary>What the evaluator takes for granted; the usual options unless set, which follow each dwelling's own units.</summary>
    public EvaluatorOptions Evaluator { get; set; } = EvaluatorOptions.Default;

    /// <exception cref="ArgumentException">They don't do; the message says all that is wrong with them.</exception>
    internal LayoutEvaluator Make(string? name)
    {
        List<string> faults = Evaluator is null ? ["Evaluator is null"] : Evaluator.Faults();
        if (Rules is null)
        {
            faults.Insert(0, "Rules is null");
        }

        return faults.Count == 0
            ? new(Rules!, Evaluator!)
            : throw new ArgumentException("The options" + (name is null ? "" : " of \"" + name + "\"") + " don't do: " + string.Join("; ", faults) + ".");
    }
}

/// <summary>Registers the library with a container.</summary>
/// <remarks>
/// It goes by the conventions of options without their package: what is configured adds up in the order in which it is registered, evaluators are named by keys,
/// and an evaluator that is registered already stays. Whatever doesn't do is refused where it is registered, all of it in one message. No scan, no reflection.
/// </remarks>
public static class ServiceCollectionExtensions
{
    /// <summary>Registers one <see cref="LayoutEvaluator"/>, which is immutable and thread-safe. Said again it adds to how that one is configured.</summary>
    /// <param name="services">The container's services.</param>
    /// <param name="configure">Sets the options; null for the usual ones.</param>
    /// <returns>The same services.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="services"/> is null.</exception>
    /// <exception cref="ArgumentException">The options don't do; thrown here, not when the evaluator is first asked for.</exception>
    public static IServiceCollection AddBoxHeights(this IServiceCollection services, Action<BoxHeightsOptions>? configure = null)
    {
        Configure(services, null, configure);
        services.TryAddSingleton(provider => Made(provider.GetServices<Setting>(), null));
        return services;
    }

    /// <summary>Registers an evaluator of its own under a name, as for another jurisdiction: ask for it with <c>[FromKeyedServices("ontario")]</c> or <c>GetRequiredKeyedService</c>.</summary>
    /// <param name="services">The container's services.</param>
    /// <param name="name">The key.</param>
    /// <param name="configure">Sets the options; null for the usual ones.</param>
    /// <returns>The same services.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="services"/> or <paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException">The options don't do; thrown here, not when the evaluator is first asked for.</exception>
    public static IServiceCollection AddBoxHeights(this IServiceCollection services, string name, Action<BoxHeightsOptions>? configure = null)
    {
        Configure(services, name ?? throw new ArgumentNullException(nameof(name)), configure);
        services.TryAddKeyedSingleton(name, (provider, _) => Made(provider.GetServices<Setting>(), name));
        return services;
    }

    /// <summary>Adds to how evaluators are configured, whoever registers them: a library's options beside the application's.</summary>
    /// <param name="services">The container's services.</param>
    /// <param name="configure">Changes the options.</param>
    /// <param name="name">The key of the evaluator; null for the one without.</param>
    /// <returns>The same services.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="services"/> or <paramref name="configure"/> is null.</exception>
    /// <exception cref="ArgumentException">The options don't do.</exception>
    public static IServiceCollection ConfigureBoxHeights(this IServiceCollection services, Action<BoxHeightsOptions> configure, string? name = null)
    {
        Configure(services, name, configure ?? throw new ArgumentNullException(nameof(configure)));
        return services;
    }

    private static void Configure(IServiceCollection services, string? name, Action<BoxHeightsOptions>? configure)
    {
        _ = services ?? throw new ArgumentNullException(nameof(services));
        List<Setting> settings = [];
        foreach (ServiceDescriptor service in services)
        {
            if (service is { IsKeyedService: false, ImplementationInstance: Setting known })
            {
                settings.Add(known);
            }
        }

        Setting setting = new(name, configure ?? (_ => { }));
        settings.Add(setting);
        _ = Made(settings, name);
        services.AddSingleton(setting);
    }

    private static LayoutEvaluator Made(IEnumerable<Setting> settings, string? name)
    {
        BoxHeightsOptions options = new();
        foreach (Setting setting in settings)
        {
            if (setting.Name == name)
            {
                setting.Configure(options);
            }
        }

        return options.Make(name);
    }

    /// <summary>One thing that was said of the options of an evaluator.</summary>
    private sealed class Setting(string? name, Action<BoxHeightsOptions> configure)
    {
        public string? Name { get; } = name;

        public Action<BoxHeightsOptions> Configure { get; } = configure;
    }
}
