using System;
using System.Threading;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Judges dwellings by a rule set. Make one and keep it: it is immutable and thread-safe.</summary>
public sealed class LayoutEvaluator
{
    private readonly CompiledRules rules;
    private readonly EvaluatorOptions options;

    /// <summary>An evaluator with the usual options: each dwelling is printed, and its remedies rounded, in its own units.</summary>
    /// <param name="rules">The rules to judge by.</param>
    /// <exception cref="ArgumentNullException"><paramref name="rules"/> is null.</exception>
    public LayoutEvaluator(RuleSet rules)
        : this(rules, EvaluatorOptions.Default)
    {
    }

    /// <summary>An evaluator with options of its own.</summary>
    /// <param name="rules">The rules to judge by.</param>
    /// <param name="options">What it takes for granted.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The options don't do; the message says all that is wrong with them.</exception>
    public LayoutEvaluator(RuleSet rules, EvaluatorOptions options)
    {
        this.rules = (rules ?? throw new ArgumentNullException(nameof(rules))).Compiled(static set => new CompiledRules(set));
        this.options = (options ?? throw new ArgumentNullException(nameof(options))).Checked();
    }

    /// <summary>The rules it judges by.</summary>
    public override string ToString() => Rules.ToString();

    /// <summary>The rules it judges by.</summary>
    public RuleSet Rules => rules.Set;

    /// <summary>Judges a dwelling.</summary>
    /// <param name="dwelling">The dwelling. A bad description gives findings, never an exception.</param>
    /// <exception cref="ArgumentNullException"><paramref name="dwelling"/> is null.</exception>
    public Evaluation Evaluate(Dwelling dwelling) => Evaluate(dwelling, CancellationToken.None);

    /// <summary>Judges a dwelling, unless somebody gives up.</summary>
    /// <param name="dwelling">The dwelling. A bad description gives findings, never an exception; one beyond the caps of <see cref="EvaluatorOptions"/> gives one that says so.</param>
    /// <param name="cancellationToken">Ends it early. What the evaluation works out later, remedies and the mended dwelling, takes one of its own.</param>
    /// <exception cref="ArgumentNullException"><paramref name="dwelling"/> is null.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public Evaluation Evaluate(Dwelling dwelling, CancellationToken cancellationToken) => new(this, StateOf(dwelling, cancellationToken));

    /// <summary>Opens a dwelling for live editing: the same engine, with one box at a time changed.</summary>
    /// <param name="dwelling">The dwelling.</param>
    /// <exception cref="ArgumentNullException"><paramref name="dwelling"/> is null.</exception>
    public LayoutSession Open(Dwelling dwelling) => new(this, StateOf(dwelling));

    /// <summary>The same with other rules.</summary>
    internal LayoutEvaluator With(RuleSet rules) => new(rules, options);

    internal LayoutState StateOf(Dwelling dwelling, CancellationToken cancellation = default) =>
        new(dwelling ?? throw new ArgumentNullException(nameof(dwelling)), rules, SettledOptions.Of(options, dwelling), cancellation);
}
