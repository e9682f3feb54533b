using System;

namespace BoxHeights;

/// <summary>How a picture is colored. Everything in it is told apart without color, too.</summary>
public enum PictureTheme
{
    /// <summary>Black on white, with patterns: for paper.</summary>
    Print = 0,

    /// <summary>Dark on light, with a little color.</summary>
    Light = 1,

    /// <summary>Light on dark.</summary>
    Dark = 2,
}

/// <summary>What a picture shows. What it doesn't show isn't in its legend.</summary>
[Flags]
public enum PictureLayers
{
    /// <summary>Only what is always there: the outline of the wall or room, title, scale bar and caution.</summary>
    None = 0,

    /// <summary>Studs and what else stands upright in the wall, and parts without a cavity.</summary>
    Framing = 1,

    /// <summary>Board and its seams.</summary>
    Boards = 2,

    /// <summary>Openings with their casings, doors' leaves and what they cover.</summary>
    Openings = 4,

    /// <summary>Counters, finishes, coverings, fixtures, platforms and what stands free.</summary>
    Things = 8,

    /// <summary>Boxes with their plates and names.</summary>
    Boxes = 16,

    /// <summary>Heights, and distances from the left end.</summary>
    Dimensions = 32,

    /// <summary>Findings at their places, and what they say.</summary>
    Findings = 64,

    /// <summary>What things are called, other than boxes.</summary>
    Names = 128,

    /// <summary>Lines of the room: finished floor, ceiling, level line, grade, nosings.</summary>
    Lines = 256,

    /// <summary>Where the box of <see cref="PictureOptions.AllowedFor"/> may be.</summary>
    Allowed = 512,

    /// <summary>What marks and patterns mean.</summary>
    Legend = 1024,

    /// <summary>What receptacles serve along the walls of a room, and what isn't served.</summary>
    Coverage = 2048,

    /// <summary>Everything.</summary>
    All = Framing | Boards | Openings | Things | Boxes | Dimensions | Findings | Names | Lines | Allowed | Legend | Coverage,
}

/// <summary>How a picture is drawn. Lengths on the page are in user units of the SVG: of 1/96 in on paper, or pixels on a screen.</summary>
[Described]
public sealed partial record PictureOptions
{
    /// <summary>The usual picture: 960 wide, of all layers, in black and white.</summary>
    public static PictureOptions Default { get; } = new();

    /// <summary>How measures are printed; as the dwelling's are unless stated.</summary>
    public LengthUnits? Units { get; init => field = Guard.Known(value, LengthUnits.Millimeters, nameof(Units)); }

    /// <summary>What is shown.</summary>
    public PictureLayers Layers { get; init => field = Guard.Known(value, PictureLayers.All, nameof(Layers)); } = PictureLayers.All;

    /// <summary>How it is colored.</summary>
    public PictureTheme Theme { get; init => field = Guard.Known(value, PictureTheme.Dark, nameof(Theme)); }

    /// <summary>How wide it is, from 120 to 20,000.</summary>
    public int Width { get; init => field = Within(value, 120, 20_000, nameof(Width)); } = 960;

    /// <summary>How high the drawing in it may be, without title, notes and legend: from 60 to 20,000; six tenths of the width unless stated.</summary>
    public int? DrawingHeight { get; init => field = value is { } high ? Within(high, 60, 20_000, nameof(DrawingHeight)) : null; }

    /// <summary>The size of its letters, from 4 to 100.</summary>
    public int FontSize { get; init => field = Within(value, 4, 100, nameof(FontSize)); } = 12;

    /// <summary>What every id in it begins with, so that several pictures can be on one page: letters, digits, "-" and "_".</summary>
    /// <exception cref="ArgumentException">It isn't such a name.</exception>
    public string IdPrefix
    {
        get;
        init => field = IsName(value) ? value : throw new ArgumentException("An id begins with a letter and has letters, digits, \"-\" and \"_\" only.", nameof(IdPrefix));
    }
    = "bh";

    /// <summary>The id of the box whose allowed places are shaded; none unless stated.</summary>
    public string? AllowedFor { get; init; }

    internal bool Shows(PictureLayers layer) => (Layers & layer) != 0;

    /// <exception cref="ArgumentOutOfRangeException">It is outside of that range.</exception>
    private static int Within(int value, int least, int most, string name) => value >= least && value <= most
        ? value
        : throw new ArgumentOutOfRangeException(name, value, "It is from " + least + " to " + most + ".");

    private static bool IsName(string? value)
    {
        if (string.IsNullOrEmpty(value) || !IsLetter(value![0]))
        {
            return false;
        }

        foreach (char one in value)
        {
            if (!IsLetter(one) && one is not ((>= '0' and <= '9') or '-' or '_'))
            {
                return false;
            }
        }

        return true;

        static bool IsLetter(char one) => one is (>= 'a' and <= 'z') or (>= 'A' and <= 'Z');
    }
}
