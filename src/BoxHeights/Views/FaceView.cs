namespace BoxHeights;

/// <summary>A face of the building as the engine has resolved it, seen from outside.</summary>
[Told]
public sealed partial class FaceView
{
    /// <summary>The face as it is described.</summary>
    public OutsideFace Face { get; }

    /// <summary>Its id.</summary>
    public string Id => Face.Id;

    /// <summary>Its walls from left to right.</summary>
    public Items<WallView> Walls { get; }

    /// <summary>Its id.</summary>
    public override string ToString() => Id;
}
