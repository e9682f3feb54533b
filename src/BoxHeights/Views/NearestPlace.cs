namespace BoxHeights;

/// <summary>The place nearest to another at which no rule has anything to find of a box, to the steps that places and heights are marked to.</summary>
[Told]
public sealed partial class NearestPlace
{
    /// <summary>Its center from the wall's left end: beside a stud for a box that is nailed to one.</summary>
    public Distance Along { get; }

    /// <summary>Its height, in the terms in which it was asked for.</summary>
    public BoxHeight Height { get; }

    /// <summary>How it is held there: by the stud that it is then against, where studs are known; null where its mounting isn't stated.</summary>
    public Mounting? Mounting { get; }

    /// <summary>Whether it keeps the slack of <see cref="EvaluatorOptions.HeightMargin"/>, and off studs of <see cref="EvaluatorOptions.AlongMargin"/>, from every limit but those of habit.</summary>
    public bool HasSlack { get; }

    /// <summary>A box set there: <c>session.Change(id, place.Set)</c> moves one, <c>session.Add(new PlacedBox(address, place.Set(box)))</c> adds one.</summary>
    /// <param name="box">The box that the place was looked for.</param>
    /// <returns>The box with its place, its height and how it is held there; where it was measured before is gone.</returns>
    /// <exception cref="System.ArgumentNullException"><paramref name="box"/> is null.</exception>
    public DeviceBox Set(DeviceBox box) => Guard.NotNull(box, nameof(box)) with { At = Along, Height = Height, Measured = null, Mounting = Mounting };

    /// <summary>The place and the height.</summary>
    public override string ToString() => Along + " along, " + Height + (HasSlack ? "" : ", without slack");
}
