using System.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>A caller's own rule says about itself what the library's rules do, and is treated like one of them.</summary>
public sealed class OwnRuleTests
{
    private static readonly Citation House = new("House rules");

    /// <summary>Boxes stand in the left half of the wall, or are held by blocking where they are.</summary>
    private sealed record LeftHalf() : PlacementRule("left-half", "in the left half", Severity.Advice, House)
    {
        public override string Numbers => "the left half";

        public override string? Covers { get; init; } = "sink zones";

        public override HeldInstead HeldInstead => HeldInstead.Blocking;

        public override Wording? AskedOf(PlacementSite site) => $"the wall being {new PrintedQuantity(site.Wall!.Length, site.Units, Rounding.None):length}";

        public override Wording? Assumes(PlacementSite site, DistanceRange along) => along.Overlaps(CaseFile.Inches("100")) ? (Wording)$"the cord assumed short" : null;

        public override void State(PlacementSite site, PlacementStatement statement) => statement.Within(CaseFile.Inches("72"), Distance.MaxValue, AllowedHeights.Nothing);
    }

    /// <summary>A room wants a box with a thermostat in the right half of a wall, and offers one place for it.</summary>
    private sealed record Sensor() : SpaceRule("sensor", "with a sensor", Severity.Violation, House)
    {
        public override SpaceKind Subject => SpaceKind.Room;

        public override string Numbers => "one";

        public override bool LooksAtOwnBoxesOnly => true;

        public override void Judge(SpaceView space, SpaceStatement statement)
        {
            if (space.Boxes.Any(box => box.Traits.Devices.Contains(DeviceKind.Thermostat)))
            {
                statement.Meets(space.Id, space.Id);
                return;
            }

            DeviceBox box = new DeviceBox("sensor", BoxPurpose.Thermostat).WithDevices(new[] { DeviceKind.Thermostat }).WithAt(CaseFile.Inches("72")).WithHeight(BoxHeight.ToCenter(CaseFile.Inches("60"), Datum.Subfloor));
            statement.Finds(space.Id, space.Id, Verdict.Fails, Quantity.Of(0), QuantitySet.AtLeast(1), () => $"no sensor", MissingFacts.None, new[] { new PlacedBox("room/wall", box) });
        }

        public override bool ServesFrom(SpaceView space, string lacking, SpaceBox box, Distance offered) => lacking == "room" && box.Along > offered && box.Traits.Devices.Contains(DeviceKind.Thermostat);
    }

    /// <summary>Of a marked box three quarters at most are full, and half at least.</summary>
    private sealed record RoomToSpare() : LimitRule("room-to-spare", "between half and three quarters full", Severity.Advice, House)
    {
        public override string Numbers => "1/2 to 3/4";

        public override void State(PlacementSite site, LimitStatement statement)
        {
            if (site.Box.Source.Volume is { } marked)
            {
                Ratio full = new(BoxFill.Most(site.Box.Source, RuleSets.FillCounting(NecEdition.Nec2023)).Total.Picoliters, marked.Picoliters);
                statement.Judge(Quantity.Of(full), QuantitySet.Between(Quantity.Of(new Ratio(1, 2)), Quantity.Of(new Ratio(3, 4))), () => $"a box of which {new PrintedQuantity(Quantity.Of(full), site.Units, Rounding.None):share} is full");
            }
        }

        public override System.Collections.Generic.IEnumerable<DeviceBox> Mends(BoxTraits box, Quantity measured, PartsCatalog catalog) => [];
    }

    // Two 14-2 and a receptacle, no clamps: 4 + 1 + 2 of 2 in³ are 14 in³ by NEC 314.16(B): 7/9 of 18 in³, 7/10 of 20 in³ and 7/15 of 30 in³.
    [Theory]
    [InlineData("18", "a box of which 7/9 is full, must be between half and three quarters full: allowed 1/2 to 3/4, off by 1/36")]
    [InlineData("20", null)]
    [InlineData("30", "a box of which 7/15 is full, must be between half and three quarters full: allowed 1/2 to 3/4, off by 1/30")]
    public void Ratio_OfALimitOfOnesOwn_IsJudgedAndTold(string volume, string? expected)
    {
        OneBox box = new OneBox { Rules = new(new RoomToSpare()) }.At(BoxHeight.ToTop(CaseFile.Inches("16"), Datum.Subfloor));
        box = box with { Box = box.Box.WithVolume(Volume.Parse(volume + " in3")).WithClamps(CableClamps.None).WithCables(CableType.Parse("14-2"), CableType.Parse("14-2")) };
        Finding? finding = box.Evaluate().Findings.SingleOrDefault();
        Assert.Equal(expected is null, finding is null);
        Assert.Contains(expected ?? "", finding?.Message ?? "", System.StringComparison.Ordinal);
        Assert.Equal(expected is null ? null : new Ratio(14, int.Parse(volume, System.Globalization.CultureInfo.InvariantCulture)), finding?.Measured.AsRatio());
    }

    [Fact]
    public void Quantity_OfARatio_IsExactOrRefused()
    {
        Assert.Equal(new Ratio(-5, 16), Quantity.Of(new Ratio(-5, 16)).AsRatio());
        Assert.Equal("0.875 as 7/8", "0.875 as " + Quantity.Of(new Ratio(875, 1000)));
        Assert.Throws<System.ArgumentException>(() => Quantity.Of(new Ratio(1, 17)));
        Assert.Throws<System.OverflowException>(() => Quantity.Of(new Ratio(long.MaxValue)));
        Assert.Throws<System.InvalidOperationException>(() => Quantity.Of(2).AsRatio());
        Assert.Throws<System.ArgumentException>(() => QuantitySet.Between(Quantity.Of(2), Quantity.Of(new Ratio(3))));
        Assert.True(QuantitySet.AtLeast(Quantity.Of(new Ratio(1, 3))).Contains(Quantity.Of(new Ratio(1, 3))));
        Assert.False(QuantitySet.AtLeast(Quantity.Of(new Ratio(1, 3))).Contains(Quantity.Of(new Ratio(333, 1000))));
    }

    [Fact]
    public void Covers_LeavesTheListOfWhatIsntLookedAt()
    {
        Assert.Contains("sink zones", (new OneBox { Rules = RuleSets.RoughInPractice }).Evaluate().NotChecked);
        Assert.DoesNotContain("sink zones", (new OneBox { Rules = RuleSets.RoughInPractice + new RuleSet([new LeftHalf()]) }).Evaluate().NotChecked);
    }

    [Fact]
    public void HeldInstead_OffersBlockingWhereTheRuleAllowsIt()
    {
        OneBox box = new() { Rules = new([new LeftHalf()]), Wall = wall => wall.WithStuds(new StudLayout().WithSpacing(CaseFile.Inches("16")).WithKnown(StudKnowledge.Declared)) };
        box = box with { Box = box.Box.WithAt(CaseFile.Inches("100")).WithMounting(new Mounting(MountingMethod.Stud)).WithHeight(BoxHeight.ToCenter(CaseFile.Inches("16"), Datum.Subfloor)) };
        Cause cause = Assert.Single(box.Evaluate().Causes);
        Assert.IsType<MoveBoxes>(cause.Remedies[0]);
        Assert.Contains("must be in the left half, the wall being 144 in", cause.Title);
        Assert.Contains("(the cord assumed short)", cause.Title);
    }

    // The place that is offered is taken: the planner goes on to the next one that the rule says serves as well.
    [Fact]
    public void ServesFrom_GivesThePlannerOtherPlaces()
    {
        OneBox box = new OneBox { Rules = new RuleSet([new Sensor()]) + RuleSets.RoughInPractice }.At(BoxHeight.ToCenter(CaseFile.Inches("60"), Datum.Subfloor));
        RoomPlan plan = new RoughInPlanner(box.Rules).Plan(box.Build());
        PlacedBox placed = Assert.Single(plan.Dwelling.PlacedBoxes(), one => one.Box.Devices.Contains(DeviceKind.Thermostat));
        Assert.True(placed.Box.At > OneBox.Middle, placed.Box.At.ToString());
    }
}
