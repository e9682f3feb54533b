using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Tests.Standards;

/// <summary>What really stands upright in a wall, whatever of it is written down: full-height pieces, and the short ones under windows.</summary>
internal sealed class Timber(Distance length, Distance thickness)
{
    private readonly List<(Distance Left, Distance Right)> commons = [];
    private readonly List<(Distance Left, Distance Right)> packs = [];
    private readonly List<(Opening Window, Distance Left, Distance Right)> cripples = [];
    private readonly List<(Distance Left, Distance Right)> holes = [];
    private readonly List<(Distance Left, Distance Right)> blocks = [];

    public Distance Length { get; } = length;

    public Distance Thickness { get; } = thickness;

    /// <summary>How deep the stud cavity is.</summary>
    public Distance Cavity { get; init; }

    /// <summary>What is said of the studs on the wall itself; null where that is left to the storey.</summary>
    public StudLayout? Said { get; set; }

    /// <summary>Studs of the layout that stand from plate to plate, from left to right.</summary>
    public IReadOnlyList<(Distance Left, Distance Right)> Commons => commons;

    /// <summary>Corner studs, jacks and kings.</summary>
    public IReadOnlyList<(Distance Left, Distance Right)> Packs => packs;

    /// <summary>The stretches without any wall to nail to: openings, and pockets of doors.</summary>
    public IReadOnlyList<(Distance Left, Distance Right)> Holes => holes;

    public void AddCommon(Distance left) => commons.Add((left, left + Thickness));

    public void AddPack(Distance left, Distance right) => packs.Add((left, right));

    public void AddHole(Distance left, Distance right) => holes.Add((left, right));

    public void AddCripple(Opening window, Distance left) => cripples.Add((window, left, left + Thickness));

    /// <summary>Adds a block that an electrician has nailed up at the height of one box.</summary>
    public void AddBlock(Distance left, Distance right) => blocks.Add((left, right));

    /// <summary>What a box may be nailed to: under a window its short studs, else what stands from plate to plate.</summary>
    public IEnumerable<(Distance Left, Distance Right)> Nailers(Opening? under) =>
        under is null ? commons.Concat(packs) : cripples.Where(one => one.Window == under).Select(one => (one.Left, one.Right));

    /// <summary>What a box is kept from.</summary>
    public List<(Distance Left, Distance Right)> Pieces(Opening? under) => [.. Nailers(under).Concat(blocks)];

    public bool IsTaken(Distance left, Distance right) => packs.Concat(holes).Any(one => left < one.Right && one.Left < right);

    /// <summary>The same wall seen from its other side: what is said of all walls of the storey has to be said of that face the other way round.</summary>
    public Timber Behind(StudLayout? ofStorey)
    {
        StudLayout? said = Said ?? (ofStorey is { Known: not StudKnowledge.Assumed } ? ofStorey : null);
        Timber other = new(Length, Thickness) { Cavity = Cavity };
        other.commons.AddRange(Turned(commons));
        other.packs.AddRange(Turned(packs));
        other.holes.AddRange(Turned(holes));
        other.blocks.AddRange(Turned(blocks));
        other.Said = said?.WithFrom(said.From == WallEnd.Left ? WallEnd.Right : WallEnd.Left).WithFaces(said.Faces.Select(face => Length - face - Thickness));
        return other;

        IEnumerable<(Distance, Distance)> Turned(List<(Distance Left, Distance Right)> pieces) => pieces.AsEnumerable().Reverse().Select(one => (Length - one.Right, Length - one.Left));
    }
}
