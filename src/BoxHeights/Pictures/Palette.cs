namespace BoxHeights;

/// <summary>The inks of a theme. Lines and patterns are the same in all of them, so that nothing depends on color.</summary>
internal sealed class Palette
{
    private const string Dashes = "5 3";
    private const string Dotted = "1.5 2.5";
    private const string DashDot = "8 3 1.5 3";

    private readonly string wood;
    private readonly string thing;
    private readonly string glass;
    private readonly string good;
    private readonly string bad;

    private Palette(string paper, string text, string faint, string wood, string thing, string glass, string good, string bad)
    {
        Paper = paper;
        Text = text;
        Faint = faint;
        this.wood = wood;
        this.thing = thing;
        this.glass = glass;
        this.good = good;
        this.bad = bad;
    }

    /// <summary>The ground.</summary>
    public string Paper { get; }

    /// <summary>Letters and strong lines.</summary>
    public string Text { get; }

    /// <summary>Thin lines that lead from a label to what it names.</summary>
    public string Faint { get; }

    public static Palette Of(PictureTheme theme) => theme switch
    {
        PictureTheme.Light => new("#ffffff", "#1b1b1b", "#6f6f6f", "#7a5230", "#44606b", "#2c5f9e", "#2f6d33", "#9c2a1c"),
        PictureTheme.Dark => new("#17191c", "#f0f0ee", "#a5a5a5", "#d3a679", "#a9c3cf", "#9cc3f5", "#9fd8a0", "#ff9d8c"),
        _ => new("#ffffff", "#000000", "#606060", "#303030", "#303030", "#303030", "#303030", "#000000"),
    };

    public Ink Of(Look look) => look switch
    {
        Look.Outline => new(Text, 1600, "", null, FillPattern.None),
        Look.Stud => new(wood, 700, "", Paper, FillPattern.None),
        Look.King => new(wood, 900, "", Paper, FillPattern.Hatch),
        Look.Jack => new(wood, 900, "", Paper, FillPattern.BackHatch),
        Look.Cripple => new(wood, 700, "", Paper, FillPattern.Rows),
        Look.Corner => new(wood, 700, "", Paper, FillPattern.Cross),
        Look.NotSure => new(wood, 700, Dotted, null, FillPattern.None),
        Look.Assumed => new(wood, 700, Dashes, null, FillPattern.None),
        Look.Range => new(Text, 500, Dotted, null, FillPattern.Rows),
        Look.NoCavity => new(wood, 900, "", Paper, FillPattern.Cross),
        Look.Opening => new(glass, 1300, "", Paper, FillPattern.Diagonals),
        Look.Casing => new(glass, 600, "", null, FillPattern.None),
        Look.DoorLeaf => new(glass, 600, DashDot, null, FillPattern.WideHatch),
        Look.Seam => new(thing, 900, DashDot, null, FillPattern.None),
        Look.Counter => new(thing, 2600, "", null, FillPattern.None),
        Look.Finish => new(thing, 600, "", null, FillPattern.Tiles),
        Look.Covering => new(thing, 1000, "", null, FillPattern.Columns),
        Look.Fixture => new(thing, 1000, "", null, FillPattern.WideBackHatch),
        Look.Platform => new(thing, 2000, Dashes, null, FillPattern.None),
        Look.Freestanding => new(thing, 1300, "", null, FillPattern.BackHatch),
        Look.Box => new(Text, 1400, "", Paper, FillPattern.None),
        Look.Plate => new(Text, 600, "", null, FillPattern.None),
        Look.Operable => new(Text, 500, Dotted, null, FillPattern.None),
        Look.Overhead => new(Text, 1400, "", Paper, FillPattern.Cross),
        Look.InFloor => new(Text, 1400, Dashes, Paper, FillPattern.Dots),
        Look.Allowed => new(null, 0, "", null, FillPattern.Dots),
        Look.AllowedLine => new(good, 2200, Dotted, null, FillPattern.None),
        Look.MaybeAllowed => new(null, 0, "", null, FillPattern.FewDots),
        Look.RoomLine => new(Text, 800, "", null, FillPattern.None),
        Look.Grade => new(wood, 1600, DashDot, null, FillPattern.None),
        Look.Nosing => new(wood, 1100, "", null, FillPattern.None),
        Look.Dimension => new(Faint, 500, "", null, FillPattern.None),
        Look.Uncovered => new(bad, 3000, Dotted, null, FillPattern.None),
        Look.Served => new(good, 1500, "", null, FillPattern.None),
        Look.SwitchLeg => new(Text, 800, Dashes, null, FillPattern.None),
        Look.WallLine => new(Text, 3000, "", null, FillPattern.None),
        Look.Gap => new(Paper, 3400, "", null, FillPattern.None),
        Look.Window => new(glass, 1000, "", null, FillPattern.None),
        Look.Doorway => new(wood, 700, Dotted, null, FillPattern.None),
        Look.Swing => new(glass, 800, "", null, FillPattern.None),
        Look.Board => new(Text, 1200, "", Paper, FillPattern.None),
        _ => new(Text, 1200, "", null, FillPattern.Hatch),
    };

    /// <summary>The color of a look's pattern.</summary>
    public string PatternOf(Look look) => look is Look.Allowed or Look.MaybeAllowed ? good : Of(look).Stroke ?? Text;
}
