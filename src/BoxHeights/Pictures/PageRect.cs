namespace BoxHeights;

/// <summary>A rectangle on the page, in thousandths of a user unit: whole numbers, so that a picture is the same on every machine.</summary>
internal readonly struct PageRect(long left, long top, long width, long height)
{
    public long Left { get; } = left;

    public long Top { get; } = top;

    public long Width { get; } = width;

    public long Height { get; } = height;

    public long Right => Left + Width;

    public long Bottom => Top + Height;

    public bool Overlaps(in PageRect other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public bool Holds(in PageRect other) => Left <= other.Left && other.Right <= Right && Top <= other.Top && other.Bottom <= Bottom;
}
