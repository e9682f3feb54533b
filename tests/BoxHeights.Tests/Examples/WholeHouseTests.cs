#if !NETSTANDARD_ASSET
using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Interop;
using WholeHouse;
using BoxHeights.Tests.Output;
using Xunit;

namespace BoxHeights.Tests.Examples;

/// <summary>The example house: each planted mistake is found as one cause with its remedy. <see cref="WholeHouseDecoyTests"/> holds what only looks like one.</summary>
public class WholeHouseTests
{
    internal static readonly RuleSet Rules = Of(NecEdition.Nec2023);
    internal static readonly Dwelling House = DwellingJson.Read(Repository.Read("examples", "WholeHouse", "house.json"));
    internal static readonly Evaluation Judged = new LayoutEvaluator(Rules).Evaluate(House);

    // The mistakes in words; the three-gang box is the second half of the one about fill.
    private static readonly string[] Planted =
    [
        "box-setback Fails K8: set K8 to stand 1 in out from the framing, 1/2 in further, or add an extension ring of 1/2 in",
        "counter-receptacle Fails P1: set P1 47-1/4 in to top above subfloor",
        "box-fill Fails D3: take a box marked at least 20.3 in3 for D3",
        "wall-alarm Fails U2: set U2 14-1/2 in to center below finished ceiling",
        "box-fill Fails S13: take a box marked at least 55 in3 for S13",
        "counter-outlets Fails kitchen/east 63 in to 75 in: add counter box on kitchen/east, 65-7/8 in from its left end, on the right side of stud 4, 42 in to center above subfloor",
        "wall-outlets Fails dining/north 91 in to dining/west 48 in: add general box on dining/west, 14-1/8 in from its left end, on the left side of stud 1, 16 in to top above subfloor",
        "wall-outlets Fails living/south 120 in to living/south 72 in: add general box on living/west, 55-7/8 in from its left end, 16 in to top above subfloor",
        "wall-outlets Fails bed-1/south 62 in to 92 in: add general box on bed-1/south, 77 in from its left end, 16 in to top above subfloor",
        "bedroom-alarm Fails bed-3: add alarm box on bed-3/ceiling",
        "bath-receptacle Fails hall-bath basin of vanity at 54-7/8 in: add bath box on hall-bath/north, 49 in from its left end, 48 in to top above subfloor",
        "stair-switches Fails basement-stair on basement: add switch box on basement-room/stair, 46-1/8 in from its left end, on the left side of stud 3, 48 in to top above subfloor",
        "counter-edge Fails K11, K1, K2, K3, K12: set the stick 48 in to top above subfloor for 7 boxes: K11, K1, K2, K3, K12, K5, K8",
        "specified-height Fails L4: set L4 66-3/4 in to center above subfloor",
        "cavity-depth Fails J2: take a four-square box of 21 in3, 1-1/2 in deep, with a ring for J2",
        "trim-clearance Fails S14: move S14 to 129-5/8 in from the left end of its wall, and pack the stud to the left of S14 out with one 2x block at its height",
        "not-buried Fails V1: set V1 48 in to top above subfloor, 94-1/8 in from the left end of its wall",
        "in-cavity Fails S16: set S16 48 in to top above subfloor, 15 in from the left end of its wall",
        "behind-open-door Fails S20: set S20 48 in to top above subfloor, 81-7/8 in from the left end of its wall",
        "back-to-back Fails L3: set L3 16 in to top above subfloor, 30-1/8 in from the left end of its wall, on the left side of stud 2",
        "uniform-level Fails N1, N2, N3, N4, N5, N6, M1, M2, M3, M4, M5: set the stick 16 in to top above subfloor for 11 boxes: N1, N2, N3, N4, N5, N6, M1, M2, M3, M4, M5",
        "board-seam Fails S1, S2, S3, S4, S5, S6, S7, S10, S11: set the stick 48 in to top above subfloor for 10 boxes: S1, S2, S3, S4, S5, S6, S7, S9, S10, S11",
        "outdoor-receptacle Fails X5: set X5 18 in to bottom above grade",
        "stair-path-lights Fails R3: set R3 4 in to center above nosing, 104 in from the left end of its wall",
    ];

    [Fact]
    public void House_HasThreeStoreysEighteenRoomsAndAHundredAndFortyOneBoxes() =>
        Assert.Equal((3, 18, 141), (House.Storeys.Count, House.Rooms.Count, House.PlacedBoxes().Count));

    [Theory]
    [InlineData(NecEdition.Nec2020)]
    [InlineData(NecEdition.Nec2023)]
    [InlineData(NecEdition.Nec2026)]
    public void Causes_AreThePlantedMistakesAndNothingElse(NecEdition edition) => Assert.Equal(Planted, Lines(edition));

    // 16 conductors, 3 devices and the grounds of 7 cables, 14 AWG: 32 + 12 + 2 = 46 in³ until 2017, with 3 more quarters 47.5 in³ from 2020.
    [Fact]
    public void ThreeGangBox_OfFortySeven_IsLargeEnoughUntil2017() =>
        Assert.Equal(Planted.Where(line => !line.StartsWith("box-fill Fails S13", StringComparison.Ordinal)), Lines(NecEdition.Nec2017));

    [Theory]
    [InlineData("P1", "counter-receptacle", "1/2 in")] // box 4 in at most: top at 25 + 3/4 + 20 + 1-3/4 in, so 1/2 in too high for the shortest box
    [InlineData("D3", "box-fill", "2.25 in3")] // 20.25 in 18
    [InlineData("S13", "box-fill", "0.5 in3")]
    [InlineData("U2", "wall-alarm", "2 in")] // 16-3/4 less half a cover of 2-3/4 is 14 in below the ceiling
    [InlineData("X5", "outdoor-receptacle", "2 in")]
    [InlineData("K8", "box-setback", "1/4 in")] // 1/2 of board, 1/8 of bed, 3/8 of tile: 1/2 behind, 1/4 allowed
    [InlineData("K1", "counter-edge", "1 in")] // plate bottom at 42 - 2-1/4, splash top at 36 + 3/4 + 4
    [InlineData("L4", "specified-height", "1/2 in")] // 3/4 in low, 1/4 in allowed
    [InlineData("S1", "board-seam", "1/4 in")] // 48-3/4 across 48-1/2
    [InlineData("J2", "cavity-depth", "3/4 in")] // 2-3/4 at the least, less 1/2 of board, in furring of 1-1/2
    public void Mistake_IsMissedBy(string box, string rule, string by)
    {
        Check check = Assert.Single(Judged.Checks, one => one.Subject == box && one.RuleId == rule);
        Assert.Equal(Verdict.Fails, check.Verdict);
        Assert.Equal("-" + by, check.Margin.ToString());
    }

    // Casing 3-1/2 and reveal 3/16 from a jamb 1 in inside the opening, against a jumbo plate on the king: 5/16 in over one another.
    [Fact]
    public void WideCasing_IsClearedByOneMoreTwoByAndByNothingThinner()
    {
        string[] Shifted(Distance by) => new LayoutEvaluator(Rules).Evaluate(House.WithBoxes(box => box.Id == "S14" ? box.WithAt(box.At!.Value + by) : box))
            .For("S14").Select(finding => finding.RuleId).ToArray();
        Distance overlap = Distance.Parse("5/16 in");
        Assert.Equal(["trim-clearance"], Shifted(overlap - Distance.FromTicks(1)));
        Assert.Equal(["casing-gap"], Shifted(overlap));
        Assert.Empty(Shifted(Distance.Parse("1-1/2 in")));
    }

    // As a crew would: mend the heaviest, or the lightest, walk through the house again, mend the next.
    [Theory]
    [InlineData(NecEdition.Nec2017, true)]
    [InlineData(NecEdition.Nec2020, false)]
    [InlineData(NecEdition.Nec2023, true)]
    [InlineData(NecEdition.Nec2023, false)]
    [InlineData(NecEdition.Nec2026, true)]
    public void Remedies_CarriedOutOneAfterAnother_LeaveNothing(NecEdition edition, bool heaviestFirst)
    {
        LayoutEvaluator evaluator = new(Of(edition));
        Dwelling mended = House;
        Evaluation judged = evaluator.Evaluate(mended);
        for (int causes = judged.Causes.Count; causes > 0; causes = judged.Causes.Count)
        {
            Cause next = heaviestFirst ? judged.Causes[0] : judged.Causes[causes - 1];
            judged = evaluator.Evaluate(mended = Assert.Single(next.Remedies).ApplyTo(mended));
            Assert.True(judged.Causes.Count < causes, next.RuleId + " " + next.Subjects);
        }

        Assert.Empty(judged.Findings);
    }

    // All at once they leave one thing: the box that K5 and K8 lend their height to stays behind when the stick moves them.
    [Fact]
    public void Remedies_AllAtOnce_LeaveWhatOneOfThemTookFromAnother()
    {
        Dwelling mended = Judged.Causes.SelectMany(cause => cause.Remedies).Aggregate(House, (house, remedy) => remedy.ApplyTo(house));
        Assert.Equal(["uniform-level kitchen-counter"], new LayoutEvaluator(Rules).Evaluate(mended).Findings.Select(finding => finding.RuleId + " " + finding.Subject));
    }

    // The study's switch, 46 in to the top, were it new: off the line to which the storey's others are set, it goes along with them.
    [Fact]
    public void Mend_WithANewSwitchBelowTheStoreysLine_SetsItWithTheOthers()
    {
        Evaluation judged = new LayoutEvaluator(Rules).Evaluate(House.WithBoxes(box => box.Id == "E5" ? box.WithExisting(false) : box));
        MoveBoxes stick = Assert.IsType<MoveBoxes>(Assert.Single(Assert.Single(judged.Causes, cause => cause.RuleId == "board-seam").Remedies));
        string[] ids = ["E5", "S1", "S10", "S11", "S2", "S3", "S4", "S5", "S6", "S7", "S9"];
        Assert.Equal(ids, stick.Ids.Order(StringComparer.Ordinal));
        MendedDwelling mended = judged.Mend();
        Assert.Empty(mended.Left);
        Assert.All(ids, id => Assert.Equal("48 in to top above subfloor", mended.Find(id)!.After.Box.Height.ToString()));
    }

    [Theory]
    [InlineData(NecEdition.Nec2017)]
    [InlineData(NecEdition.Nec2020)]
    [InlineData(NecEdition.Nec2023)]
    [InlineData(NecEdition.Nec2026)]
    public void Plan_OfTheHouseWithoutItsBoxes_LeavesNothing(NecEdition edition)
    {
        RoomPlan plan = new RoughInPlanner(Of(edition)).Plan(BareHouse.Of(House));
        Assert.Empty(plan.Obstacles);
        Assert.Empty(new LayoutEvaluator(Of(edition)).Evaluate(plan.Dwelling).Findings.Select(finding => finding.Message));
    }

    [Fact]
    public void Marks_OfBoxesOnStuds_AreWhereTheStudIs()
    {
        // The second full stud's right side is at 15-1/4 + 16 + 1-1/2 in; half a 2-1/4 in box further is its center.
        MarkRow row = Assert.Single(Sheets.For(House, Rules).Rows, one => one.BoxId == "K1");
        Assert.Equal("stud 2, right side", row.Stud);
        Assert.Equal(Distance.Parse("33-7/8 in"), row.FromLeftCorner);
    }

    [Fact]
    public void Marks_OfBoxesOffTheStuds_NameNoSide()
    {
        Dwelling house = House.WithBoxes(box => box.Id == "K6" ? box.WithMounting(new Mounting(MountingMethod.Surface)).WithAt(Distance.FromInches(48)) : box);
        Dictionary<string, string> studs = Sheets.For(house, Rules).Rows.ToDictionary(row => row.BoxId, row => row.Stud, StringComparer.Ordinal);

        // On the face of the wall a box may be over a stud. 48 in is over the third stud, 47-1/4 to 48-3/4 in. Beside the opening from 60 to 98 in jack and king take the wall up to 101 in, where a box of three gangs, 5-3/4 in wide, on that king has its center at 103-7/8 in.
        Assert.Equal("over stud 3", studs["K6"]);
        Assert.Equal("king, right of dining-opening", studs["S1"]);
        Assert.Equal("near stud 3 (assumed layout)", studs["A1"]);

        // Far from any stud of a layout that nobody has seen.
        Assert.Equal("", studs["S14"]);
    }

    [Fact]
    public void PunchList_SaysWhatTheSecondCrewIsOffBy()
    {
        PunchList list = Sheets.PunchesFor(House);
        Assert.Equal(["L1", "L2"], list.ClearlyIn);
        Assert.Equal(11, list.Rows.Count);
        Assert.All(list.Rows, row => Assert.Equal(row.BoxId + ": 2-3/4 high", row.Line));
    }

    [Fact]
    public void Counter_OutOfReach_IsNeverMovedOffItsCounter()
    {
        Evaluation reach = new LayoutEvaluator(Rules + RuleSets.Ada2010).Evaluate(House);
        Cause cause = Assert.Single(reach.Causes, one => one.Subjects.Contains("K1") && one.RuleId == "ada-reach");
        Assert.All(cause.Remedies, remedy => Assert.IsType<NoneFound>(remedy));
    }

    internal static RuleSet Of(NecEdition edition) => RuleSets.UnitedStatesDwelling(edition) + RuleSets.UnitedStatesOutlets(edition) + RuleSets.RoughInPractice;

    // From 17-7/8 in, where W1 is, to the second basin's edge at 54-7/8 in; 3 ft is allowed, if the basin reaches to the wall: how deep it is isn't stated.
    [Fact]
    public void SecondBasin_IsOneInchTooFar()
    {
        Assert.Equal(Distance.Parse("37 in"), Quantity("hall-bath basin of vanity at 54-7/8 in"));
        Verdict Nearer(Distance by) => new LayoutEvaluator(Rules).Evaluate(House.WithBoxes(box => box.Id == "W1" ? box.WithAt(box.At!.Value + by) : box))
            .Findings.Single(finding => finding.RuleId == "bath-receptacle").Verdict;
        Assert.Equal(Verdict.Fails, Nearer(Distance.Parse("1 in") - Distance.FromTicks(1)));
        Assert.Equal(Verdict.Unknown, Nearer(Distance.Parse("1 in")));
    }

    // The light on tread 8 belongs at 29 + 70 + 5 = 104 in.
    [Fact]
    public void PathLight_IsTwoAndAHalfInchesOffItsPlace() => Assert.Equal(Distance.Parse("2-1/2 in"), Quantity("R3"));

    private static Distance Quantity(string subject) => Assert.Single(Judged.Findings, finding => finding.Subject == subject).Measured.AsDistance();

    private static Items<string> Lines(NecEdition edition) => new LayoutEvaluator(Of(edition)).Evaluate(House).Causes
        .Select(cause => cause.RuleId + " " + cause.Verdict + " " + cause.Subjects + ": " + Assert.Single(cause.Remedies).Text);

    // A light over the upper treads hangs above the lower storey's ceiling framing: its mark above the subfloor can't be read back, and is no reason to leave every other box unrounded.
    [Fact]
    public void Marks_LightsHighOverTheStair_StayExactAndOthersAreRounded()
    {
        MarkSheet sheet = MarkSheet.For(Judged);
        Assert.Equal(BoxHeight.ToCenter(Distance.FromInches(109, 7, 8), Datum.Subfloor), sheet.Rows.Single(row => row.BoxId == "R5").Mark);
        MarkRow rounded = sheet.Rows.Single(row => row.BoxId == "U1");
        Assert.Equal(Distance.FromInches(62), rounded.FromLeftCorner);
        Assert.Equal("along rounded from 62-1/8 in", rounded.Note);
    }

    // Of boxes that fail, findings are made anew, and compared with those before; a box that passes leaves nothing (LayoutSessionTests). The first rounds state what is asked for from then on.
    [Fact]
    public void Drag_OfEveryBox_AllocatesAtMostFourKilobytesAMove()
    {
        LayoutSession session = new LayoutEvaluator(Rules).Open(House);
        (string Id, BoxHeight Height)[] boxes = [.. House.PlacedBoxes().Where(placed => placed.Box is { Height: not null, Measured: null, At: not null, Pinned: false }).Select(placed => (placed.Box.Id, placed.Box.Height!.Value))];
        long bytes = 0;
        for (int round = 0; round < 12; round++)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            foreach ((string id, BoxHeight height) in boxes)
            {
                session.Move(id, height.WithValue(height.Value + Distance.FromInches(0, round % 2, 16)));
            }

            bytes = GC.GetAllocatedBytesForCurrentThread() - before;
        }

        Assert.InRange(bytes / boxes.Length, 1, 4096);
    }
}
#endif
