using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <content>Boxes added while a layout is open, as a planner does it: only what they touch is judged again.</content>
internal sealed partial class LayoutState
{
    private Dictionary<string, ResolvedSurface>? surfaceAt;
    private List<int>?[]? boxesOn;

    /// <summary>The surface of an address, the first of several; null where there is none.</summary>
    public ResolvedSurface? SurfaceAt(string address)
    {
        if (surfaceAt is null)
        {
            surfaceAt = new(StringComparer.Ordinal);
            for (int i = surfaces.Count - 1; i >= 0; i--)
            {
                surfaceAt[surfaces[i].Address] = surfaces[i];
            }
        }

        return surfaceAt.TryGetValue(address, out ResolvedSurface? found) ? found : null;
    }

    /// <summary>Every surface.</summary>
    public IReadOnlyList<ResolvedSurface> Surfaces => surfaces;

    /// <summary>The boxes that are listed under a surface.</summary>
    public IReadOnlyList<int> BoxesOn(ResolvedSurface surface)
    {
        if (boxesOn is null)
        {
            boxesOn = new List<int>?[surfaces.Count];
            for (int box = 0; box < Boxes.Count; box++)
            {
                (boxesOn[Boxes[box].Surface.Index] ??= []).Add(box);
            }
        }

        return boxesOn[surface.Index] ?? None;
    }

    /// <summary>What is stated for a box that may be added; null where it can't be there, or has no height that names its edge.</summary>
    public StatedSite? SiteFor(string address, DeviceBox box) =>
        SurfaceAt(address) is { } surface
        && BoxResolver.Again(box, surface, Options.Catalog, Options.Units) is { IsBroken: false, Height: { Edge: { } edge } height } resolved
            ? stated.Of(resolved, edge, height.Datum, resolved.TryAlong(Options.Catalog, out Distance along) ? along : null)
            : null;

    /// <summary>
    /// Where along a surface every placement rule surely allows a box like one at its height, habits yielding; everywhere where nothing can be stated of it. Where no
    /// place does at that height it is the height that will have to give way: then wherever they may allow some height.
    /// </summary>
    public override DistanceSet PlacesFor(string address, DeviceBox box) =>
        SiteFor(address, box) is not { } site ? DistanceSet.All : site.Places.ClearAt(box.Height!.Value.Value) is { IsEmpty: false } places ? places : site.Places.Possible;

    /// <summary>Where along a surface firm placement rules may allow a box like one, at some height; everywhere where nothing can be stated of it.</summary>
    public override DistanceSet PlacesAtAnyHeight(string address, DeviceBox box) => SiteFor(address, box)?.Places.Possible ?? DistanceSet.All;

    /// <summary>The same of those rules alone that don't give way to a violation.</summary>
    public override DistanceSet PlacesInNeed(string address, DeviceBox box) => SiteFor(address, box)?.Places.PossibleInNeed ?? DistanceSet.All;

    /// <summary>How a box that may be added is held at a place: by the stud and side that it is then nailed to.</summary>
    public Mounting? HeldAt(PlacedBox placed, Distance along)
    {
        DeviceBox nailed = placed.Box.WithMounting(placed.Box.Mounting ?? new(MountingMethod.Stud));
        return SurfaceAt(placed.Address) is { } surface ? BoxResolver.Again(nailed, surface, Options.Catalog, Options.Units).HeldAt(along, Options.Catalog) : nailed.Mounting;
    }

    /// <summary>Adds a box behind all others and sets some others at its height, unless that can't be, or brings a finding about a box that wasn't there before.</summary>
    /// <param name="address">The surface it goes on.</param>
    /// <param name="source">The box, under an id that no other has.</param>
    /// <param name="others">The boxes that take its height.</param>
    /// <param name="mayBeMissed">What may be found all the same; null where nothing may.</param>
    /// <param name="missed">Takes what is.</param>
    public bool TryAdd(string address, DeviceBox source, IReadOnlyList<int> others, Predicate<Finding>? mayBeMissed = null, List<Finding>? missed = null)
    {
        if (SurfaceAt(address) is not { } surface || BoxResolver.Again(source, surface, Options.Catalog, Options.Units) is not { IsBroken: false } box)
        {
            return false;
        }

        List<DeviceBox> before = [];
        foreach (int other in others)
        {
            before.Add(Boxes[other].Source);
        }

        int added = Append(box);
        HashSet<int> touched = [.. others, added];
        List<Finding> found = [];
        bool stays = false;
        try
        {
            Put(added, box.Height, box.TryAlong(Options.Catalog, out Distance along) ? along : null);
            JudgeAlone(added, found);
            stays = AreMissed() && TryTogether(added, others, touched, found) && AreMissed();
        }
        catch (OverflowException)
        {
            // Where it can't be added up, it can't be.
        }

        if (!stays)
        {
            Withdraw(added, others, before, touched);
            return false;
        }

        Spaces.Enter(this);
        foreach (int other in others)
        {
            Spaces.SetStale(other);
        }

        return true;

        bool AreMissed()
        {
            if (mayBeMissed is not null)
            {
                missed?.AddRange(found.FindAll(mayBeMissed));
                found.RemoveAll(mayBeMissed);
            }

            return found.Count == 0;
        }
    }

    private bool TryTogether(int added, IReadOnlyList<int> others, HashSet<int> touched, List<Finding> found)
    {
        EnterGroups();
        HashSet<(string RuleId, string Subject)> known = [];
        List<Finding> before = [];
        foreach (int box in touched)
        {
            foreach (int companion in CompanionsOf(box))
            {
                CollectOwn(companion, before);
            }

            foreach (int group in GroupsAround(box))
            {
                Gather(groupFindings[group], before);
            }

            CollectOwn(box, before);
        }

        before.ForEach(finding => known.Add((finding.RuleId, finding.Subject)));
        foreach (int other in others)
        {
            Describe(other, Boxes[other].Source.WithHeight(Boxes[added].Source.Height));

            // A rule of a caller's own may part boxes by their heights: then there is no saying what moves with what.
            if (Boxes[other].IsBroken || !Groups.Holds(other, this))
            {
                return false;
            }

            JudgeAlone(other, found);
        }

        JudgeBeside(touched, found);
        found.RemoveAll(finding => known.Contains((finding.RuleId, finding.Subject)));
        return true;
    }

    /// <summary>Whether a finding is short of a violation, and of a rule that gives way to one.</summary>
    public bool GivesWay(Finding finding) => finding.Fault is null && finding.Severity < Severity.Violation && Rules.Set.Row(finding.RuleId).GivesWay;

    private void JudgeAlone(int box, List<Finding> found)
    {
        JudgeLimits(box);
        JudgePlacement(box);
        CollectOwn(box, found);
    }

    private int Append(ResolvedBox box)
    {
        // What is listed is listed before there is one more.
        int added = Boxes.Count;
        _ = BoxesOn(box.Surface);
        if (HasRelief)
        {
            Companions().ListOf(box.Surface.Space).Add(added);
        }

        Enter(box);
        (boxesOn![box.Surface.Index] ??= []).Add(added);

        return added;
    }

    private void Withdraw(int added, IReadOnlyList<int> others, List<DeviceBox> before, HashSet<int> touched)
    {
        TakeOff(added);
        touched.Remove(added);

        if (!Groups.Holds(added))
        {
            // It was judged by itself alone.
            TakeLast();
            return;
        }

        touched.UnionWith(CompanionsOf(added));
        foreach (int group in Groups.Of(added))
        {
            if (Groups[group].Boxes.Count > 1)
            {
                touched.Add(Groups[group].Boxes.Member(0));
            }
        }

        LeaveGroups();
        TakeLast();
        for (int i = 0; i < others.Count; i++)
        {
            Describe(others[i], before[i]);
        }

        List<Finding> found = [];
        foreach (int box in touched)
        {
            JudgeAlone(box, found);
        }

        JudgeBeside(touched, found);
    }

    /// <summary>Takes out the box that was entered last.</summary>
    private void TakeLast()
    {
        int last = Boxes.Count - 1;
        now[last].PlacementFindings = null;
        now[last].LimitFindings = null;
        Boxes.RemoveAt(last);
    }

    /// <summary>Enters a box behind all others.</summary>
    private void Enter(ResolvedBox box)
    {
        Boxes.Add(box);
        hasOld = hasOld == true || box.IsExisting ? true : hasOld;
        MakeRoom(Boxes.Count);
        now[Boxes.Count - 1].Sites = default;
    }

    private void MakeRoom(int count)
    {
        if (count > now.Length)
        {
            // With room for more: what an editor adds comes one by one.
            Array.Resize(ref now, WithRoom(count));
        }
    }

    private static int WithRoom(int count) => count + (count / 8) + 8;
}
