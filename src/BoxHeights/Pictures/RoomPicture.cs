using System;

namespace BoxHeights;

/// <summary>A room from above, to scale: its walls with openings and swings, what stands in it, its boxes with what switches control, and what of its walls isn't served.</summary>
/// <remarks>Drawn from <see cref="Evaluation.Room"/>; it works nothing out of its own, and is no approval. The first wall lies at the top, seen from the room. See <see cref="WallElevation"/> for what the SVG is like; <c>data-left</c> and <c>data-top</c> are where the first wall's left end is.</remarks>
public sealed partial class RoomPicture
{
    private readonly Evaluation evaluation;

    private RoomPicture(Evaluation evaluation, RoomView room)
    {
        this.evaluation = evaluation;
        Room = room;
    }

    /// <summary>The room.</summary>
    public RoomView Room { get; }

    /// <summary>A picture of a room.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <param name="room">The room's id.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no such room.</exception>
    public static RoomPicture For(Evaluation evaluation, string room) =>
        new(evaluation ?? throw new ArgumentNullException(nameof(evaluation)), evaluation.Room(room));

    /// <summary>The same as <see cref="ToSvg()"/>.</summary>
    public override string ToString() => ToSvg();

    /// <summary>The picture with the usual options.</summary>
    public string ToSvg() => ToSvg(PictureOptions.Default);

    /// <summary>The picture.</summary>
    /// <param name="options">How it is drawn.</param>
    /// <exception cref="ArgumentNullException"><paramref name="options"/> is null.</exception>
    public string ToSvg(PictureOptions options) =>
        new PlanDrawing(Room, evaluation.Dwelling.Name, options ?? throw new ArgumentNullException(nameof(options))).Draw();

    /// <summary>A picture of a room of which only the view is at hand: the house's name isn't in it.</summary>
    internal static string Of(RoomView room, PictureOptions options) => new PlanDrawing(room, "", options).Draw();
}
