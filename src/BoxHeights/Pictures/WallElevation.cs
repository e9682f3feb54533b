using System;

namespace BoxHeights;

/// <summary>A wall as it is seen from its room, to scale: what stands in it, on it and before it, its boxes, and what was found there.</summary>
/// <remarks>
/// Drawn from <see cref="Evaluation.Wall"/>: the picture works nothing out of its own, and is no approval. The SVG has no scripts, fonts or outside references. Every thing
/// is a group with a class, an id and its name as data. <c>data-scale</c> of the whole is how many ticks a thousandth of a user unit is, <c>data-left</c> and
/// <c>data-subfloor</c> are where the wall's left end and the storey's subfloor are, so that a place on the picture is a place on the wall.
/// </remarks>
public sealed partial class WallElevation
{
    private readonly Evaluation evaluation;

    private WallElevation(Evaluation evaluation, WallView wall)
    {
        this.evaluation = evaluation;
        Wall = wall;
    }

    /// <summary>The wall.</summary>
    public WallView Wall { get; }

    /// <summary>A picture of a wall.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <param name="address">The wall's address, such as "kitchen/north".</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no such wall.</exception>
    public static WallElevation For(Evaluation evaluation, string address) =>
        new(evaluation ?? throw new ArgumentNullException(nameof(evaluation)), evaluation.Wall(address));

    /// <summary>A picture of the wall that a flight of stairs climbs along, with its treads and its lights.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <param name="flight">The flight's id.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no such flight, or it isn't said along which wall it climbs.</exception>
    public static WallElevation ForStair(Evaluation evaluation, string flight)
    {
        _ = evaluation ?? throw new ArgumentNullException(nameof(evaluation));
        _ = flight ?? throw new ArgumentNullException(nameof(flight));
        foreach (StairFlight one in evaluation.Dwelling.Flights)
        {
            if (one.Id == flight && one.Wall is { } wall)
            {
                return For(evaluation, wall);
            }
        }

        throw new ArgumentException("No flight \"" + flight + "\" climbs along a wall.", nameof(flight));
    }

    /// <summary>The same as <see cref="ToSvg()"/>.</summary>
    public override string ToString() => ToSvg();

    /// <summary>The picture with the usual options.</summary>
    public string ToSvg() => ToSvg(PictureOptions.Default);

    /// <summary>The picture.</summary>
    /// <param name="options">How it is drawn.</param>
    /// <exception cref="ArgumentNullException"><paramref name="options"/> is null.</exception>
    /// <exception cref="ArgumentException"><see cref="PictureOptions.AllowedFor"/> names no box that is listed under this wall.</exception>
    public string ToSvg(PictureOptions options)
    {
        _ = options ?? throw new ArgumentNullException(nameof(options));
        Items<BandView> bands = default;
        if (options.AllowedFor is { } id)
        {
            bands = Wall.Box(id) is null ? throw new ArgumentException("No box \"" + id + "\" is listed under " + Wall.Address + ".", nameof(options)) : evaluation.AllowedFor(id);
        }

        return new ElevationDrawing(Wall, bands, evaluation.Dwelling.Name, options).Draw();
    }

    /// <summary>A picture of a wall of which only the view is at hand: the house's name isn't in it.</summary>
    internal static string Of(WallView wall, PictureOptions options) => new ElevationDrawing(wall, default, "", options).Draw();
}
