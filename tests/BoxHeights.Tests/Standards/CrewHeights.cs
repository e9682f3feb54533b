using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Tests.Standards;

/// <summary>A height as a crew says it: inches to an edge above a datum.</summary>
internal readonly record struct Stick(Edge Edge, decimal Inches, Datum Datum)
{
    public BoxHeight Height => BoxHeight.To(Edge, Distance.FromInches(Inches), Datum);

    /// <summary>Whether a seam above the subfloor would run through a box of up to 4 in, on any floor of up to 1-1/4 in.</summary>
    public bool MayMeet(decimal seam)
    {
        decimal low = Edge switch { Edge.Bottom => Inches, Edge.Center => Inches - 2, _ => Inches - 4 };
        decimal high = Edge switch { Edge.Bottom => Inches + 4, Edge.Center => Inches + 2, _ => Inches };
        return low < seam && seam < high + (Datum == Datum.FinishedFloor ? 1.25m : 0);
    }
}

/// <summary>
/// The sticks that good crews use, by purpose, from common practice (no source). Inches above the subfloor unless said otherwise; each crew keeps to one
/// stick for a purpose in a storey. Typed here from what the trade says, not read from the rows under test.
/// </summary>
internal sealed class CrewHeights
{
    private static readonly Dictionary<BoxPurpose, Stick[]> Sticks = new()
    {
        [BoxPurpose.General] = [Top(16), Top(16), Top(16.125m), Top(16.25m), Bottom(12), Bottom(13), Center(14), Center(18), Top(18)],
        [BoxPurpose.Switch] = [Top(48), Top(48), Top(47.875m), Top(46), Center(48), Bottom(42), Bottom(44), Bottom(48), Top(52)],
        [BoxPurpose.Counter] = [Top(48), Top(48), Top(47.875m), Center(44), Bottom(42), Bottom(43)],
        [BoxPurpose.Bath] = [Top(48), Top(44), Center(42)],
        [BoxPurpose.Refrigerator] = [Top(48), Center(48), Center(44)],
        [BoxPurpose.Range] = [Center(5, Datum.FinishedFloor), Center(4, Datum.FinishedFloor), Center(6, Datum.FinishedFloor)],
        [BoxPurpose.SinkBase] = [Center(18), Center(20), Center(16)],
        [BoxPurpose.Dishwasher] = [Center(18), Center(8), Center(15)],
        [BoxPurpose.Hood] = [Center(74), Center(72), Center(78), Center(76)],
        [BoxPurpose.Laundry] = [Center(44), Center(42), Center(38), Center(36)],
        [BoxPurpose.Dryer] = [Center(44), Center(12), Center(36)],
        [BoxPurpose.VanityLight] = [Center(80), Center(78)],
        [BoxPurpose.Bedside] = [Bottom(30), Bottom(28), Center(32)],
        [BoxPurpose.EndTable] = [Center(36), Center(34)],
        [BoxPurpose.Sofa] = [Top(48), Center(32), Center(36)],
        [BoxPurpose.WindowTop] = [Bottom(72), Bottom(74)],
        [BoxPurpose.Closet] = [Top(48), Top(46), Bottom(60)],
        [BoxPurpose.Office] = [Top(48), Top(16), Center(36)],
        [BoxPurpose.Media] = [Top(16), Bottom(12)],
        [BoxPurpose.Television] = [Center(62), Center(60), Center(66), Center(45)],
        [BoxPurpose.Garage] = [Bottom(48), Top(48), Bottom(50), Bottom(44), Bottom(54)],
        [BoxPurpose.Basement] = [Bottom(48), Top(48), Bottom(44)],
        [BoxPurpose.Attic] = [Bottom(60), Bottom(62)],
        [BoxPurpose.Exterior] = [Bottom(24, Datum.Grade), Bottom(18, Datum.Grade), Bottom(20, Datum.Grade)],
        [BoxPurpose.Doorbell] = [Center(44), Center(42), Center(48)],
        [BoxPurpose.Thermostat] = [Center(60), Center(54), Center(48), Center(58)],
    };

    private readonly Dictionary<BoxPurpose, Stick?> chosen = [];
    private readonly Dictionary<BoxPurpose, Stick> elsewhere = [];
    private readonly Draw draw;
    private readonly decimal[] seams;

    public CrewHeights(Draw draw, decimal[] seams)
    {
        this.draw = draw;
        this.seams = seams;
    }

    /// <summary>The crew's stick for a purpose; null where every one of the usual sticks would put the box on a seam.</summary>
    public Stick? For(BoxPurpose purpose)
    {
        if (!chosen.TryGetValue(purpose, out Stick? stick))
        {
            Stick[] clear = Sticks[purpose].Where(one => !seams.Any(one.MayMeet)).ToArray();
            chosen.Add(purpose, stick = clear.Length == 0 ? null : draw.OneOf(clear));
        }

        return stick;
    }

    /// <summary>A stick for a purpose that stands elsewhere than the storey's boards hang: any of the usual, and always the same.</summary>
    public Stick Anywhere(BoxPurpose purpose)
    {
        if (!elsewhere.TryGetValue(purpose, out Stick stick))
        {
            elsewhere.Add(purpose, stick = draw.OneOf(Sticks[purpose]));
        }

        return stick;
    }

    private static Stick Top(decimal inches) => new(Edge.Top, inches, Datum.Subfloor);

    private static Stick Center(decimal inches, Datum datum = Datum.Subfloor) => new(Edge.Center, inches, datum);

    private static Stick Bottom(decimal inches, Datum datum = Datum.Subfloor) => new(Edge.Bottom, inches, datum);
}
