using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Cases;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Framing;

/// <summary>Clear bays by a second road: a wall looked over sixteenth by sixteenth.</summary>
public sealed class FramingBayTests
{
    private const int Length = 2304;

    private static readonly StudLayout Declared = new StudLayout().WithSpacing(CaseFile.Inches("16")).WithKnown(StudKnowledge.Declared);

    // Studs 1-1/2 in thick on centers of 16 in between corners of 1-1/2 in: a bay of 13-3/4 in and bays of 14-1/2 in.
    [Fact]
    public void Of_ABareWall_AreBetweenItsStuds()
    {
        List<FramingBay> bays = Of(Declared);
        Assert.Equal(["1-1/2 to 15-1/4", "16-3/4 to 31-1/4", "32-3/4 to 47-1/4"], bays.Take(3).Select(bay => Text(bay.Left) + " to " + Text(bay.Right)));
        Assert.Equal(9, bays.Count);
        Assert.All(bays, bay => Assert.True(bay.Tops.Count == 0 && !bay.IsAssumed));
    }

    // Pulled from either end the studs of 144 in are the same, so that an assumed layout is sure of them; corners stand whatever is assumed.
    [Fact]
    public void Of_AnAssumedLayout_AreAssumed()
    {
        List<FramingBay> bays = Of(Declared.WithKnown(StudKnowledge.Assumed));
        Assert.Equal(9, bays.Count);
        Assert.All(bays, bay => Assert.True(bay.IsAssumed));
    }

    [Fact]
    public void Of_ABayUnderASill_EndsThere()
    {
        Level sill = Level.Parse("36 in above subfloor");
        Opening window = new Opening("window", OpeningKind.Window, CaseFile.Inches("60"), CaseFile.Inches("92")).WithSill(sill);
        FramingBay under = Assert.Single(Of(Declared, window), bay => bay.Left == CaseFile.Inches("64-3/4"));
        Assert.Equal(CaseFile.Inches("79-1/4"), under.Right);
        Assert.Contains(sill, under.Tops.AsEnumerable());
    }

    [Fact]
    public void Of_AnyWallWithDoors_AreTheClearStretchesBetweenWhatSurelyStands() => Prop.ForAll(
        Arb.From(from doors in Gen.ListOf(from left in Gen.Choose(0, Length) from wide in Gen.Choose(8, 700) select (Left: left, Wide: wide)) from filled in Gen.Choose(0, Length - 60) from any in Gen.Elements(true, false) select (Doors: doors.Take(3).ToArray(), Filled: filled, Any: any)),
        of =>
        {
            Opening[] doors = [.. of.Doors.Where(door => door.Left + door.Wide <= Length).Select((door, i) => new Opening("d" + i, OpeningKind.Door, Sixteenths(door.Left), Sixteenths(door.Left + door.Wide)))];
            Wall wall = new Wall("wall", Sixteenths(Length)).WithOpenings(doors).WithNoCavity(of.Any ? [new NoCavity(NoCavityKind.Duct, Sixteenths(of.Filled), Sixteenths(of.Filled + 60))] : []);
            WallFraming framing = WallFraming.Of(wall, Declared, UsualMeasures.Generic);
            char[] cells = Enumerable.Repeat('.', Length).ToArray();
            doors.ToList().ForEach(door => Fill(cells, door.Left, door.Right, 'x'));
            framing.Members.Where(member => !member.IsSure).ToList().ForEach(member => Fill(cells, member.Left, member.Right, 'x'));
            wall.NoCavity.ToList().ForEach(part => Fill(cells, part.Left, part.Right, 'x'));

            // What stands there surely ends a bay; what is in the way of one, or may be, spoils it.
            bool[] stands = new bool[Length];
            framing.Members.Where(member => member.IsSure).ToList().ForEach(member => Mark(stands, member.Left, member.Right));
            List<(int From, int To)> clear = [];
            for (int at = 1; at < Length; at++)
            {
                if (stands[at - 1] && !stands[at])
                {
                    int end = at;
                    while (end < Length && !stands[end])
                    {
                        end++;
                    }

                    if (end < Length && !cells[at..end].Contains('x'))
                    {
                        clear.Add((at, end));
                    }
                }
            }

            return FramingBay.Of(wall, framing).Select(bay => (bay.Left, bay.Right)).SequenceEqual(clear.Select(one => (Sixteenths(one.From), Sixteenths(one.To))));
        }).Check(Tries.Config(200));

    private static List<FramingBay> Of(StudLayout layout, params Opening[] openings)
    {
        Wall wall = new Wall("wall", CaseFile.Inches("144")).WithOpenings(openings);
        return FramingBay.Of(wall, WallFraming.Of(wall, layout, UsualMeasures.Generic));
    }

    private static void Fill(char[] cells, Distance from, Distance to, char with)
    {
        for (int at = Count(from); at < Count(to); at++)
        {
            cells[at] = with;
        }
    }

    private static void Mark(bool[] cells, Distance from, Distance to)
    {
        for (int at = Count(from); at < Count(to); at++)
        {
            cells[at] = true;
        }
    }

    private static int Count(Distance distance) => System.Math.Clamp((int)(distance.Ticks / Sixteenths(1).Ticks), 0, Length);

    private static Distance Sixteenths(int count) => Distance.FromTicks(count * 127_000L);

    private static string Text(Distance distance) => distance.ToString("in16").Replace(" in", "", System.StringComparison.Ordinal);
}
