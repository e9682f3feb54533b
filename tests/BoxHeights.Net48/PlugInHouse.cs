using System.Collections.Generic;

namespace BoxHeights.PlugIn
{
    /// <summary>A small invented house, as a plug-in written in C# 7.3 builds it, and what its rules say of it.</summary>
    internal static class PlugInHouse
    {
        /// <summary>Rows picked by id, so that a row added to a set changes nothing here.</summary>
        public static RuleSet Rules
        {
            get
            {
                RuleSet code = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023);
                RuleSet practice = RuleSets.RoughInPractice;
                return new RuleSet(new[]
                {
                    code.Row("box-fill"), code.Row("switch-reach"),
                    practice.Row("board-seam"), practice.Row("uniform-level"), practice.Row("general-height"), practice.Row("specified-height"),
                }) + RuleSets.Ada2010;
            }
        }

        public static Dwelling Build()
        {
            DwellingBuilder builder = new DwellingBuilder("Plug-in house").With(d => d.WithUnits(LengthUnits.Inches));

            // Seam at 97-1/8 - 5/8 - 48 = 48-1/2 above the subfloor.
            builder.Add(new Storey("main")
                .WithCeiling(new Ceiling().WithFraming(Inches(97, 1, 8)).WithBoard(Inches(0, 5, 8)))
                .WithBoards(new BoardLayout().WithWidths(new[] { Inches(48), Inches(48) })));

            RoomBuilder hall = builder.Room("hall", RoomKind.Hall, "main")
                .With(r => r.WithFloor(FloorBuildup.Of(new FloorLayer("oak", Inches(0, 3, 4)))));
            hall.Wall("east", Inches(144))
                .Add(Switch("hall-switch", 12, BoxHeight.ToTop(Inches(48), Datum.FinishedFloor)))
                .Add(Receptacle("hall-low", 60, Inches(16)))
                .Add(Receptacle("hall-plate", 108, Inches(18, 3, 4)));
            hall.Wall("south", Inches(48)).Add(Receptacle("hall-outside", 50, Inches(16)));

            RoomBuilder den = builder.Room("den", RoomKind.Office, "main");
            den.Wall("north", Inches(120))
                .Add(Switch("den-switch", 6, BoxHeight.ToTop(Inches(48), Datum.Subfloor)))
                .Add(Receptacle("den-full", 40, Inches(16)).WithCables(new[] { CableType.Parse("12-2"), CableType.Parse("12-2"), CableType.Parse("12-2") }).WithVolume(Volume.FromCubicInches(18m)))
                .Add(Receptacle("den-floor", 66, Inches(18, 1, 2)))
                .Add(Receptacle("den-drawing", 90, Inches(16)).WithSpecified(BoxHeight.Parse("18 in to center above subfloor")));
            den.Wall("west", Inches(120))
                .With(w => w.WithCounters(new[] { new Counter("desk", CounterKind.Desk, Inches(0), Inches(60)).WithDepth(Inches(26)).WithKneeSpace(Inches(0)).WithTop(new Level(Inches(30), Datum.FinishedFloor)) }))
                .Add(Receptacle("den-desk", 30, Inches(44)).WithPurpose(BoxPurpose.Counter));
            return builder.Build();
        }

        /// <summary>Each finding in one line: subject, rule, verdict, severity, margin.</summary>
        public static List<string> Findings()
        {
            List<string> lines = new List<string>();
            foreach (Finding finding in new LayoutEvaluator(Rules).Evaluate(Build()).Findings)
            {
                lines.Add(finding.Subject + "; " + finding.RuleId + "; " + finding.Verdict + "; " + finding.Severity + "; " + finding.Margin);
            }

            return lines;
        }

        /// <summary>What was resolved, where a box may go, and findings as data: the rest that a plug-in draws from.</summary>
        public static List<string> Answers()
        {
            List<string> lines = new List<string>();
            Evaluation evaluation = new LayoutEvaluator(Rules).Evaluate(Build());
            WallView wall = evaluation.Wall("den/north");
            lines.Add(wall.Address + ", " + wall.Length);
            foreach (BoxView box in wall.Boxes)
            {
                lines.Add(box.Id + " at " + box.Along + ", center " + box.Center);
            }

            BoxHeight height = BoxHeight.ToTop(Inches(20), Datum.Subfloor);
            PlacedBox ghost = new PlacedBox("den/north", Receptacle("ghost", 60, Inches(20)).WithMounting(new Mounting(MountingMethod.Bracket)));
            LayoutSession session = new LayoutEvaluator(Rules).Open(Build());
            lines.Add("allowed: " + session.AllowedAt(ghost, Inches(60)));
            foreach (RuleAllows rule in session.AllowedAt(ghost, Inches(60)).Rules)
            {
                lines.Add(rule + " [" + rule.Severity + "]");
            }

            lines.Add("along: " + evaluation.AllowedAlong("den-drawing", height));
            lines.Add("nearest: " + (session.TryNearest(ghost, Inches(61), height, out var nearest) ? nearest.ToString() : "none"));
            lines.Add("reach: " + Rules.Allowed("ada-reach", DeviceKind.Switch).Sure.RoundInward(Inches(0, 1, 8)));
            foreach (Finding finding in evaluation.For("den/north"))
            {
                lines.Add(finding.Key + "; allowed " + finding.Allowed + "; needs " + finding.Needs + "; involves " + finding.Involves);
            }

            SessionState before = session.State;
            lines.Add("moved: " + session.Move("den-floor", height));
            lines.Add("undone: " + session.Restore(before));
            lines.Add("differs: " + session.Evaluate().DiffFrom(evaluation));
            lines.Add("as data: " + EvaluationReport.Of(evaluation));
            return lines;
        }

        /// <summary>All that the console prints.</summary>
        public static List<string> Lines()
        {
            List<string> lines = Findings();
            lines.AddRange(Answers());
            return lines;
        }

        private static DeviceBox Switch(string id, int at, BoxHeight height)
        {
            return new DeviceBox(id, BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }).WithAt(Inches(at)).WithHeight(height);
        }

        private static DeviceBox Receptacle(string id, int at, Distance top)
        {
            return new DeviceBox(id, BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(Inches(at)).WithHeight(BoxHeight.ToTop(top, Datum.Subfloor));
        }

        private static Distance Inches(int whole, int numerator = 0, int denominator = 1)
        {
            return Distance.FromInches(whole, numerator, denominator);
        }
    }
}
