using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <content>What a room, a storey or the dwelling still lacks after its fixed boxes and its runs are planned.</content>
internal sealed partial class RoughInDraft
{
    // More than this and one for each thing that is judged would mean that adding boxes never ends.
    private const int MostAdded = 400;

    private IEnumerable<SpaceIndex.JudgedSpace> All
    {
        get
        {
            for (int i = 0; i < State.Spaces.Count; i++)
            {
                yield return State.Spaces[i];
            }
        }
    }

    /// <summary>Adds the boxes that findings of what is lacking offer, one finding after another.</summary>
    /// <param name="spaces">What is judged.</param>
    /// <param name="which">Which of its findings.</param>
    private void AddLacking(List<SpaceIndex.JudgedSpace> spaces, Predicate<Finding> which)
    {
        HashSet<string> given = new(StringComparer.Ordinal);
        for (int n = 0; n < MostAdded + spaces.Count; n++)
        {
            // What a thing needs beside it may serve the room as well; the other way round it may not.
            if ((FirstOf(spaces, true, IsNext) ?? FirstOf(spaces, false, IsNext)) is not var (space, finding))
            {
                return;
            }

            given.Add(KeyOf(finding));
            foreach (PlacedBox lacking in finding.Space!.Adds)
            {
                PlacedBox offered = IsSettledLater(lacking.Box) ? new(lacking.Address, lacking.Box.WithControls(default)) : lacking;
                PlacedBox placed = offered.Box.At is null ? CeilingPlaces.Well(State, offered) : new(offered.Address, offered.Box.WithHeight(HeightsOnWall.Wanted(this, offered.Address, offered.Box)));
                if (!TryFor(placed, space, finding, Need.None) && finding.IsViolation && !TryFor(placed, space, finding, Need.OfLooks))
                {
                    TryAdd(placed.Address, placed.Box, "for " + finding.Subject, space.Rule, Need.OfAdvice);
                }
            }
        }

        bool IsNext(SpaceIndex.JudgedSpace space, Finding finding) =>
            IsLacking(space.Rule, finding) && which(finding) && !given.Contains(KeyOf(finding)) && finding is { Space.Adds.Count: > 0 };
    }

    /// <summary>Whether a box's mate is planned too: what those control, and by which devices, is settled for all of them together.</summary>
    private bool IsSettledLater(DeviceBox lacking)
    {
        // Mostly nothing is said of what one controls, and a plan has thousands.
        for (int box = described; lacking.Controls.Count > 0 && box < State.Boxes.Count; box++)
        {
            if (lacking.Controls.Exists(State.Boxes[box].Source.Controls.Contains))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The first finding to be mended, of rules that are planned first or of the others: each thing that is judged is judged again only when it is come to.</summary>
    private (SpaceIndex.JudgedSpace Space, Finding Finding)? FirstOf(List<SpaceIndex.JudgedSpace> spaces, bool isPlannedFirst, Func<SpaceIndex.JudgedSpace, Finding, bool> isNext)
    {
        foreach (SpaceIndex.JudgedSpace space in spaces)
        {
            if (space.Rule.IsPlannedFirst == isPlannedFirst)
            {
                Judge(space);
                foreach (Finding finding in space.Findings)
                {
                    if (isNext(space, finding))
                    {
                        return (space, finding);
                    }
                }
            }
        }

        return null;
    }

    /// <summary>What still lacks as much after a box was added for it isn't tried again; what lacks less, as a garage of several bays, is.</summary>
    private static string KeyOf(Finding finding) => finding.RuleId + "|" + finding.Subject + "|" + finding.Measured;

    /// <summary>Where a stud is near enough it holds the box; else the very place that is offered, then whatever is near that.</summary>
    private bool TryFor(PlacedBox placed, SpaceIndex.JudgedSpace space, Finding finding, Need need) =>
        TryNear(placed, space, finding, true, need) || TryAdd(placed.Address, placed.Box, "for " + finding.Subject, space.Rule, need) || TryNear(placed, space, finding, false, need);

    /// <summary>As near as another height or a few inches make room, and where the thing that it is for is still within reach.</summary>
    private bool TryNear(PlacedBox placed, SpaceIndex.JudgedSpace space, Finding finding, bool isAtStud, Need need)
    {
        if (placed.Box.At is not { } at || State.SurfaceAt(placed.Address) is not { Wall: { } wall } surface || (isAtStud && surface.Studs is null)
            || HeightsOnWall.Of(this, placed.Address, wall.Length, placed.Box, !isAtStud) is not { } heights)
        {
            return false;
        }

        foreach (PlaceOnWall place in heights.NearestTo(at))
        {
            if (isAtStud && (place.At - at).Abs() > State.Rules.RoomForBoxes.NextBay)
            {
                return false;
            }

            DeviceBox box = placed.Box.WithAt(place.At).WithHeight(place.Height);
            if (Serves(new(placed.Address, box), at, space, finding) && TryAdd(placed.Address, box, "for " + finding.Subject, space.Rule, need))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether a box that isn't where a finding offers it still gives what is lacking.</summary>
    private bool Serves(PlacedBox placed, Distance offered, SpaceIndex.JudgedSpace space, Finding finding)
    {
        using LayoutState.Probe? probe = State.ProbeFor(placed.Address, placed.Box);
        return probe is not null && space.Rule.ServesFrom(space.View, finding.Subject, probe.Box, offered);
    }

    private void Judge(SpaceIndex.JudgedSpace space)
    {
        if (space.IsStale)
        {
            State.Spaces.Judge(space.Number, State);
        }
    }

    /// <summary>Where a thing stands in plan may never be stated: then a box goes where it surely serves it.</summary>
    private static bool IsLacking(SpaceRule rule, Finding finding) =>
        finding.Verdict == Verdict.Fails || (finding.Verdict == Verdict.Unknown && finding.Needs != MissingFacts.None && finding.Needs == rule.PlannedDespite);
}
