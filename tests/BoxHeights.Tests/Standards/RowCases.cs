using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Framing;
using BoxHeights.Tests.Output;
using BoxHeights.Tests.Planning;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Standards;

/// <summary>What tries the lines of the case files that speak of a row: one line, or a file's tests where they go over it themselves.</summary>
internal sealed record RowCase(string Rule, string What, Action Try)
{
    private bool isTried;

    /// <summary>The cases of each row, by its id.</summary>
    public static ILookup<string, RowCase> ByRule { get; } = All().ToLookup(one => one.Rule);

    /// <summary>Whether it still holds where rows are changed. Unchanged it has to, or what is kept of it then would be a changed row's.</summary>
    public bool Holds(Func<Rule, Rule> change)
    {
        if (!isTried)
        {
            Try();
            isTried = true;
        }

        try
        {
            ChangedRow.While(change, Try);
            return true;
        }
        catch (Exception failure) when (failure is not OutOfMemoryException)
        {
            return false;
        }
    }

    private static IEnumerable<RowCase> All() =>
    [
        .. Lines("row-limits.csv", line => line["rule"], RowLimitTests.TryLimit),
        .. Lines("practice-heights.csv", line => line["purpose"] + "-height", RowLimitTests.TryHeight),
        .. Lines("reach-by-document.csv", line => line["set"] + "-reach", RowLimitTests.TryReach),
        .. Lines("practice-places.csv", line => line["purpose"] + "-place", PracticePlaceTests.TryPlace),
        .. Lines("added-boxes.csv", line => line["rule"], line => new AddedBoxCaseTests().Remedy_OfWhatIsLacking_IsAtTheUsualHeight(line["rule"] + " " + line["edition"])),
        .. Lines("habits.csv", line => line["row"], line => new HabitCaseTests().Number_OneStepUnderAtAndOver_DoesWhatTheCaseSays(line["row"] + " " + line["number"])),
        .. Lines("zones.csv", line => line["rule"], ZoneCaseTests.Try),
        .. Lines("required-counts.csv", line => line["rule"], RequiredCountTests.Try),
        .. Lines("required-outlets.csv", line => line["rule"], RequiredOutletTests.Try),
        .. DocumentCaseTests.Files.SelectMany(file => Lines(file, line => line["rule"], DocumentCaseTests.Try)),
        .. Lines("outlets-that-count.csv", line => line["rule"], SpacingCaseTests.TryOutlet),
        .. CaseFile.Lines("spacing-cases.jsonl").Select(line => new RowCase(line.GetProperty("rule").GetString()!, "spacing-cases.jsonl " + line.GetProperty("id"), () => new SpacingCaseTests().Case_OfTheFile_LacksWhatItSays(line.GetProperty("id").GetString()!))),
        .. Lines("board-gaps.csv", line => line["rule"], GapLimitTests.Try),
        .. File("reach-308.csv", "ada-reach", new ReachCaseTests(), nameof(ReachCaseTests.AdaReach_EachStepOfTheTable_OneTickUnderAtAndOver), nameof(ReachCaseTests.AdaReach_TopOfTheObstructionFromTheSide_OneTickUnderAtAndOver)),
        .. File("reach-cases.csv", "ada-reach", new ReachCaseTests(), nameof(ReachCaseTests.AdaReach_OfTheWorkedCases_SaysWhatTheySay)),
        .. File("switch-reach.csv", "switch-reach", new SwitchReachCaseTests(), nameof(SwitchReachCaseTests.SwitchReach_AtTheHighestGrip_OneTickUnderAtAndOver)),
        .. File("box-depth.csv", "box-depth", new DepthLimitTests(), nameof(DepthLimitTests.State_OneTickBelowAtAndAbove_TurnsAtTheLeastDepth)),
        .. File("device-depths.csv", "box-depth", new DepthLimitTests(), nameof(DepthLimitTests.State_DeviceOfAKnownDepth_TurnsAtTheLeastDepth)),
        .. File("box-fill.json", "box-fill", new BoxFillCaseTests(), nameof(BoxFillCaseTests.FillLimit_OnePicoliterBelowAtAndAbove_TurnsAtTheFill), nameof(BoxFillCaseTests.BoxFill_OfTheWorkedExamples_IsThePublishedSum)),
        .. File("", "box-fill", new BoxFillCaseTests(), nameof(BoxFillCaseTests.Least_OfASingleReceptacleInTwoGangs_CountsBothAbove20Amperes)),
        .. File("run-limits.csv", "room-for-boxes", new RunPlannerTests(), nameof(RunPlannerTests.Slack_OfThePublishedCustom_LeavesTheReachOfTheCases)),
        .. File("metal-boxes.csv", "box-fill", new BoxFillCaseTests(), nameof(BoxFillCaseTests.MetalBoxes_ByTheirDepth_HaveThePublishedVolumesAndCounts)),
        .. File("reach-centers.csv", "ada-reach", new ReachCaseTests(), nameof(ReachCaseTests.AdaReach_HighestAndLowestCenters_AreThePublishedOnes)),
        .. File("setback.csv", "box-setback", new SetbackCaseTests(), nameof(SetbackCaseTests.State_OneTickBelowAtAndAbove_TurnsAtTheLimit)),
        .. File("framing-fit.csv", "framing-fit", new FramingFitCaseTests(), nameof(FramingFitCaseTests.Box_OfEachCase_HasItsVerdict)),
        .. File("framing-limits.csv", "framing-fit", new FramingFitCaseTests(), nameof(FramingFitCaseTests.Box_OneTickUnderAtAndOverALimit_TurnsJustPastIt)),
        .. File("bar-spans.csv", "bar-span", new MetalStudTests(), nameof(MetalStudTests.Bar_OneTickUnderAtAndOverItsBay_FailsJustPastIt)),
        .. File("closet-lights.csv", "closet-light", new ClosetLightTests(), nameof(ClosetLightTests.Judge_OneTickInsideAtAndOutsideTheLimit_TurnsThere)),
        .. File("conductor-ratings.csv", "garage-circuit-20a", new CircuitRatingTests(), nameof(CircuitRatingTests.Row_OfEachConductor_TurnsJustPastItsRating)),
        .. File("conductor-ratings.csv", "circuit-20a", new CircuitRatingTests(), nameof(CircuitRatingTests.Row_OfEachConductor_TurnsJustPastItsRating)),
        .. File("stair-limits.csv", "riser-variation", new StairRuleTests(), nameof(StairRuleTests.Risers_OneTickAroundTheLimit_ChangeThere)),
        .. File("stair-limits.csv", "stair-switches", new StairRuleTests(), nameof(StairRuleTests.Switches_AtTheNumberOfRisers_AreAskedForAtEachLevel)),
        .. File("stair-limits.csv", "clear-of-handrail", new StairRuleTests(), nameof(StairRuleTests.Handrail_PlateWithinItsBand_IsANote)),
        .. File("stair-limits.csv", "stair-lamp", new StairRuleTests(), nameof(StairRuleTests.Lamp_BetweenLowAndHigh_IsANote)),
        .. File("stair-limits.csv", "stair-path-lights", new StairRuleTests(), nameof(StairRuleTests.PathLights_OffPhaseOrHeight_AreFoundBeyondTheTolerance)),
        .. File("stair-limits.csv", "casing-gap", new TrimmedOpeningTests(), nameof(TrimmedOpeningTests.Rows_OneTickAroundEachLimit_ChangeThere)),
        .. CaseFile.Table("inspection-limits.csv").SelectMany(line => File("inspection-limits.csv", line["item"], new PreInspectionTests(), nameof(PreInspectionTests.Limits_OfEveryItem_AreThoseOfTheCaseFile))),
        .. File("switch-sides.csv", "entrance-switches", new SwitchSideTests(), nameof(SwitchSideTests.For_EachKindOfEntrance_GivesThePlacesInOrder)),
        .. File("switch-studs.csv", "entrance-switches", new SwitchSideTests(), nameof(SwitchSideTests.For_StudsThatAreStated_NailsToWhatStandsThere)),
        .. File("", "out-of-opening", new PreInspectionTests(), nameof(PreInspectionTests.For_AnOpeningJustUnderEightInches_AsksForThreeOutside)),
        .. File("", "rated-separation", new RatedWallTests(), nameof(RatedWallTests.Apart_OneTickUnderAtAndOverTheLimit), nameof(RatedWallTests.Apart_ReadFromCenters_IsEnoughAt24Inches)),
        .. File("", "rated-opening", new RatedWallTests(), nameof(RatedWallTests.MetalBox_OfMoreThan16SquareInches_IsTooLarge)),
        .. File("", "rated-total", new RatedTotalTests(), nameof(RatedTotalTests.Openings_OneTickUnderAtAndOver100SquareInches_TurnThere), nameof(RatedTotalTests.Strip_OfALongWall_EndsAt100SquareFeet), nameof(RatedTotalTests.InProportion_OfASmallWall_AllowsLess)),
        .. File("", "room-light-center", new LightCenterTests(), nameof(LightCenterTests.Light_NearlyInTheMiddle_IsNotedAndSetThere)),
        .. File("", "vanity-light-center", new LightCenterTests(), nameof(LightCenterTests.Light_OverABasin_IsOverItsMiddleOrBetweenTwo)),
        .. File("", "in-cavity", new HeaderTests(), nameof(HeaderTests.Header_OverADoorOfABearingWall_IsJudgedUnstated)),
        .. File("", "entrance-light", new FaceSubjectTests(), nameof(FaceSubjectTests.EntranceLight_BeyondTenFeet_IsToldAsNotJudged)),
        .. File("", "garage-bay", new VehicleBaysTests(), nameof(VehicleBaysTests.Garage_OneReceptacleForEachBay)),
        .. File("", "web-side", new MetalStudTests(), nameof(MetalStudTests.Box_OffTheOpenSide_IsNoMoreOnItThanOnAnyFace)),
        .. File("", "counter-circuits", new HabitCaseTests(), nameof(HabitCaseTests.Circuits_OfAKitchensCounters_AreTwo)),
        .. File("", "counter-edge", new CounterEdgeTests(), nameof(CounterEdgeTests.CounterEdge_UnderATopOfUnstatedThickness_IsUnknownUntilItIsClearOfAny)),
        .. new[] { "circuit-20a", "garage-circuit-20a" }.SelectMany(rule => File("", rule, new CircuitRatingTests(), nameof(CircuitRatingTests.State_CablesOfAReceptacle_TurnAt12Awg), nameof(CircuitRatingTests.Message_OfThinCables_SaysWhatTheyAreGoodFor))),
        .. new[] { "secured", "secured-near", "held-at-box" }.SelectMany(rule => File("", rule, new PreInspectionTests(), nameof(PreInspectionTests.For_BoxesThatNeedAClamp_AskForTwelveInches), nameof(PreInspectionTests.For_BoxesThatMayGoWithoutAClamp_AskForEight))),
    ];

    private static IEnumerable<RowCase> Lines(string file, Func<Dictionary<string, string>, string> rule, Action<Dictionary<string, string>> act) =>
        CaseFile.Table(file).Select(line => new RowCase(rule(line), file + " " + string.Join(",", line.Values), () => act(line)));

    /// <summary>The tests of a class that go over a file, each with all of its arguments.</summary>
    private static IEnumerable<RowCase> File(string file, string rule, object tests, params string[] methods) => methods.Select(method => tests.GetType().GetMethod(method)!).SelectMany(method =>
        Arguments(method).Select(arguments => new RowCase(rule, file + " " + method.Name + " " + string.Join(",", arguments), () => method.Invoke(tests, BindingFlags.DoNotWrapExceptions, null, arguments, null))));

    private static IEnumerable<object?[]> Arguments(MethodInfo method) => method.GetParameters().Length == 0
        ? [[]]
        : method.GetCustomAttributes<MemberDataAttribute>().SelectMany(member => (IEnumerable<object?[]>)method.DeclaringType!.GetProperty(member.MemberName)!.GetValue(null)!)
            .Concat(method.GetCustomAttributes<InlineDataAttribute>().SelectMany(data => data.GetData(method)));
}
