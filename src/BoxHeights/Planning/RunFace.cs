namespace BoxHeights;

/// <summary>A part of a run that lies on one wall face, or on another straight piece that is called something.</summary>
public sealed record RunFace
{
    /// <summary>Describes a face by what it must have.</summary>
    /// <param name="name">What it is called, such as the wall's address.</param>
    /// <param name="along">From where to where it reaches, in the run's own coordinate.</param>
    /// <exception cref="System.ArgumentException">The name is empty.</exception>
    public RunFace(string name, DistanceRange along)
    {
        Name = name;
        Along = along;
    }

    /// <summary>What it is called, such as the wall's address ("kitchen/north").</summary>
    public string Name { get; init => field = Valid.Text(value, nameof(Name)); }

    /// <summary>From where to where it reaches, in the run's own coordinate.</summary>
    public DistanceRange Along { get; init; }

    /// <summary>The same with another <see cref="Name"/>.</summary>
    /// <param name="name">What it is called.</param>
    public RunFace WithName(string name) => this with { Name = name };

    /// <summary>The same with another <see cref="Along"/>.</summary>
    /// <param name="along">From where to where it reaches.</param>
    public RunFace WithAlong(DistanceRange along) => this with { Along = along };
}
