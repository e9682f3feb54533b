using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>A wall seen in a mirror, with its openings, studs one by one, open sides, boxes and the sides they are on, has the same said of it.</summary>
public sealed class MirroredWallTests
{
    private static readonly LayoutEvaluator Evaluator = new(RuleSets.RoughInPractice);

    [Fact]
    public void Findings_OfAWallInAMirror_AreTheSame() => Check(seed =>
    {
        Dwelling house = House(seed);
        Dwelling mirrored = Mirror.Of(house);
        Assert.Equal(house, Mirror.Of(mirrored));
        Assert.Equal(DwellingGen.Lines(Evaluator.Evaluate(house).Findings.Where(IsOfABox)), DwellingGen.Lines(Evaluator.Evaluate(mirrored).Findings.Where(IsOfABox)));
    });

    // Or nothing above would show anything.
    [Fact]
    public void RandomWalls_HaveEnoughToFind()
    {
        string[] all = Enumerable.Range(1, 300).SelectMany(seed => Evaluator.Evaluate(House(seed)).Findings).Select(finding => finding.RuleId).ToArray();
        foreach (string rule in new[] { "framing-fit", "web-side", "bar-span", "in-cavity", "cavity-depth", "casing-gap", "trim-clearance", "next-box", "behind-open-door" })
        {
            Assert.True(all.Count(one => one == rule) >= 5, rule);
        }
    }

    // Each remedy does in the house what it says: its own finding is gone, and none is there that wasn't.
    [Fact]
    public void Remedies_OfRandomWalls_MendAndAddNone() => Check(seed =>
    {
        Dwelling house = House(seed);
        Evaluation before = Evaluator.Evaluate(house);
        HashSet<string> known = before.Findings.Select(DwellingGen.Subject).ToHashSet(StringComparer.Ordinal);
        foreach (Cause cause in before.Causes)
        {
            foreach (Remedy remedy in cause.Remedies.Where(remedy => remedy is not NoneFound))
            {
                Evaluation after = Evaluator.Evaluate(remedy.ApplyTo(house));
                string[] left = after.Findings.Select(DwellingGen.Subject).ToArray();
                Assert.True(left.All(known.Contains), seed + ": " + remedy.Text + " adds " + string.Join("; ", left.Except(known)));
                Assert.True(cause.Findings.Any(finding => !left.Contains(DwellingGen.Subject(finding))), seed + ": " + remedy.Text + " mends nothing");
            }
        }
    }, 60);

    // A fault's message names places from the left end.
    private static bool IsOfABox(Finding finding) => finding.Fault is null;

    private static void Check(Action<int> holds, int times = 300) => Prop.ForAll(DwellingGen.Seeds, holds).Check(Tries.Always(times));

    /// <summary>One wall, in eighths of an inch, with up to two openings, studs by a rule or one by one, something that fills a part of it, and boxes held in every way.</summary>
    private static Dwelling House(int seed)
    {
        Random random = new(seed);
        bool isMetal = random.Next(2) == 0;
        int thick = isMetal ? 10 : 12;
        int length = 8 * random.Next(120, 200);
        StudLayout studs = new StudLayout().WithSpacing(In(random.Next(2) == 0 ? 128 : 192)).WithThickness(In(thick)).WithFrom(DwellingGen.Pick(random, WallEnd.Left, WallEnd.Right))
            .WithKnown(DwellingGen.Pick(random, StudKnowledge.Assumed, StudKnowledge.Declared, StudKnowledge.Measured)).WithOpenSide(isMetal ? DwellingGen.Pick(random, StudSide.Left, StudSide.Right) : null);
        if (random.Next(2) == 0)
        {
            List<Distance> faces = [];
            for (int at = random.Next(0, 130); at < length - thick; at += random.Next(thick, 190))
            {
                faces.Add(In(at));
            }

            studs = studs.WithFaces(new Items<Distance>(faces));
        }

        List<Opening> openings = [];
        int here = random.Next(30, 300);
        for (int i = 0; i < 2 && here + 300 < length; i++)
        {
            WallEnd side = DwellingGen.Pick(random, WallEnd.Left, WallEnd.Right);
            Opening opening = new Opening("o" + i, DwellingGen.Pick(random, OpeningKind.Door, OpeningKind.Window, OpeningKind.PocketDoor), In(here), In(here + 256)).WithCasing(In(random.Next(8, 40))).WithReveal(In(2));
            opening = opening.Kind == OpeningKind.Window
                ? opening.WithSill(new Level(In(random.Next(100, 400)), Datum.Subfloor)).WithHead(new Level(In(660), Datum.Subfloor)).WithStool(In(6))
                : opening.WithLeaf(In(240)).WithHinge(side).WithPocketOn(side).WithSwing(DwellingGen.Pick(random, DoorSwing.Into, DoorSwing.Away)).WithHead(random.Next(2) == 0 ? new Level(In(660), Datum.Subfloor) : null);
            openings.Add(opening);
            here += 256 + random.Next(40, 400);
        }

        int filled = random.Next(0, length - 80);
        int count = StudPositions.Along(studs, In(length)).Count;
        DeviceBox[] boxes = Enumerable.Range(0, 5).Select(i => Box(random, "b" + i, length, count)).ToArray();
        Wall wall = new Wall("wall", In(length)).WithStuds(studs).WithCavity(In(random.Next(2) == 0 ? 28 : 20)).WithBoards(new BoardLayout().WithThickness(In(4))).WithOpenings(new Items<Opening>(openings)).WithBoxes(boxes)
            .WithNoCavity(new[] { new NoCavity(DwellingGen.Pick(random, NoCavityKind.Post, NoCavityKind.Duct), In(filled), In(filled + random.Next(8, 60))) });
        return new Dwelling("mirrored").WithStoreys(new[] { new Storey("first") }).WithRooms(new[] { new Room("room", RoomKind.Bedroom, "first").WithWalls(new[] { wall }) });
    }

    private static DeviceBox Box(Random random, string id, int length, int studs)
    {
        bool isSwitch = random.Next(2) == 0;
        DeviceBox box = new DeviceBox(id, isSwitch ? BoxPurpose.Switch : BoxPurpose.General).WithDevices(new[] { isSwitch ? DeviceKind.Switch : DeviceKind.DuplexReceptacle })
            .WithSize(random.Next(3) == 0 ? null : new BoxSize(In(DwellingGen.Pick(random, 18, 32)), In(30), In(DwellingGen.Pick(random, 20, 24, 28)))).WithPlate(DwellingGen.Pick(random, PlateKind.Standard, PlateKind.Jumbo))
            .WithHeight(BoxHeight.ToTop(In(isSwitch ? 384 : 128), Datum.Subfloor));
        MountingMethod how = DwellingGen.Pick(random, MountingMethod.Stud, MountingMethod.Stud, MountingMethod.Bar, MountingMethod.Bracket, MountingMethod.CutIn, MountingMethod.Blocking);
        int least = random.Next(90, 130);
        Mounting mounting = new Mounting(how).WithSpan(how == MountingMethod.Bar && random.Next(2) == 0 ? new DistanceRange(In(least), In(least + random.Next(0, 80))) : null);
        return how == MountingMethod.Stud && studs > 0 && random.Next(2) == 0
            ? box.WithMounting(mounting.WithStud(random.Next(1, studs + 1)).WithSide(DwellingGen.Pick(random, StudSide.Left, StudSide.Right)))
            : box.WithAt(In(random.Next(20, length - 20))).WithMounting(mounting);
    }

    private static Distance In(int eighths) => Distance.FromInches(eighths / 8m);
}
