namespace BoxHeights.Rules;

/// <summary>What a box belongs to: all that a provision rule may group boxes by, besides their traits.</summary>
public sealed class GroupPlace
{
    private readonly ResolvedSurface surface;

    internal GroupPlace(ResolvedSurface surface) => this.surface = surface;

    /// <summary>The surface.</summary>
    public override string ToString() => surface.Address;

    /// <summary>The id of its room or outside face.</summary>
    public string Room => surface.Space.Id;

    /// <summary>Its storey; rooms whose subfloor lies more than 1 in off the storey's count as another.</summary>
    public string Storey => surface.Space.LevelId;

    /// <summary>The address of its wall face; null on a ceiling or a floor.</summary>
    public string? Wall => surface.Wall is null ? null : surface.Address;

    /// <summary>A name that the faces of one wall share, on both its sides; null where no other face of the wall is known.</summary>
    public string? WholeWall => surface.Body is { } body ? body.Id + " " + surface.Space.StoreyId : null;
}
