using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <content>Boxes that join an open layout, leave it for good or are described otherwise, as an editor has it: only what they touch is judged again, and all stays in the dwelling's order.</content>
internal sealed partial class LayoutState
{
    private bool haveJoined;

    /// <summary>The boxes as they come in the dwelling's order; null while that is by their numbers.</summary>
    private int[]? InOrder()
    {
        if (!haveJoined)
        {
            return null;
        }

        int[] all = new int[Boxes.Count];
        for (int i = 0; i < all.Length; i++)
        {
            all[i] = i;
        }

        Array.Sort(all, InOrder);
        return all;
    }

    /// <summary>Whether a box comes before another in the dwelling's order: boxes that join a surface come behind those that were there.</summary>
    public override int InOrder(int one, int other) =>
        Boxes[one].Surface.Index != Boxes[other].Surface.Index ? Boxes[one].Surface.Index.CompareTo(Boxes[other].Surface.Index) : one.CompareTo(other);

    /// <summary>Puts a box more on a surface, and gathers what was found around it before and what is found now.</summary>
    /// <param name="placed">The box, under an id that nothing else has.</param>
    /// <param name="before">Takes what was found around it.</param>
    /// <param name="after">Takes what is found around it now.</param>
    /// <returns>False where more than its surroundings would have to be judged again, or it would be at fault: then nothing is changed.</returns>
    public bool TryJoin(PlacedBox placed, List<Finding> before, List<Finding> after)
    {
        if (!Rules.LooksAtOwnBoxesOnly || SurfaceAt(placed.Address) is not { } surface || AreNamesOpen(placed.Box.Controls) || Sound(placed.Box, surface) is not { } resolved)
        {
            return false;
        }

        int box = Append(resolved);
        try
        {
            Put(box, resolved.Height, resolved.TryAlong(Options.Catalog, out Distance along) ? along : null);
            JudgeLimits(box);
            JudgeRules(box);
        }
        catch (OverflowException)
        {
            TakeOff(box);
            TakeLast();
            return false;
        }

        haveJoined = true;
        Groups.Join(box, this);
        ResizeGroups();
        Spaces.Join(box, this);
        LookAtListsWith(box);
        CollectBeside(box, before);
        JudgeBeside(box);
        CollectOwn(box, after);
        CollectNotJudged(box, after);
        CollectBeside(box, after);
        return true;
    }

    /// <summary>Takes a box away, and gathers what was found around it before and what is found now. Its number stays unused.</summary>
    /// <returns>False where more than its surroundings would have to be judged again: then nothing is changed.</returns>
    public bool TryLeave(int box, List<Finding> before, List<Finding> after)
    {
        ResolvedBox resolved = Boxes[box];
        if (!MayPart(box) || (Spaces.MayControlsBeSaid && Boxes.Exists(one => one.Source.Controls.Contains(resolved.Source.Id))))
        {
            return false;
        }

        LookAtListsWith(box);
        CollectOwn(box, before);
        CollectNotJudged(box, before);
        CollectBeside(box, before);
        _ = BoxesOn(resolved.Surface);
        TakeOff(box);
        int[] groups = GroupsAround(box);
        Groups.Part(box);
        Spaces.Part(box);
        Boxes[box] = new(resolved.Source, resolved.Surface, true);
        now[box].PlacementFindings = null;
        now[box].LimitFindings = null;
        Put(box, null, null);
        now[box].Sites = default;
        JudgeBeside(box, groups);
        CollectBeside(box, groups, after);
        return true;
    }

    /// <summary>Describes a box otherwise, on its surface and under its id, and gathers what was found around it before and what is found now.</summary>
    /// <returns>False where more than its surroundings would have to be judged again, or it would be at fault: then nothing is changed.</returns>
    public bool TryDescribe(int box, DeviceBox source, List<Finding> before, List<Finding> after)
    {
        ResolvedBox was = Boxes[box];
        if (!MayPart(box) || source.Controls != was.Source.Controls || Sound(source, was.Surface) is not { } resolved
            || was.IsExisting != resolved.IsExisting || (was.IsExisting && was.Source.Purpose != source.Purpose))
        {
            return false;
        }

        LookAtListsWith(box);
        SortedSet<int> spaces = [.. readers];
        HashSet<int> groups = [.. GroupsAround(box)];
        CollectOwn(box, before);
        CollectNotJudged(box, before);
        bool stays = TryReplace(box, resolved);
        if (!stays)
        {
            _ = TryReplace(box, was);
            before.Clear();
        }

        // What it belonged to, and what it belongs to now.
        LookAtListsWith(box);
        spaces.UnionWith(readers);
        readers.Clear();
        readers.AddRange(spaces);
        groups.UnionWith(GroupsAround(box));
        int[] beside = [.. groups];
        Array.Sort(beside);
        if (stays)
        {
            CollectBeside(box, beside, before);
        }

        JudgeBeside(box, beside);
        if (stays)
        {
            CollectOwn(box, after);
            CollectNotJudged(box, after);
            CollectBeside(box, beside, after);
        }

        return stays;
    }

    /// <summary>Puts a box in another's place and judges it alone; false where what it is can't be added up.</summary>
    private bool TryReplace(int box, ResolvedBox by)
    {
        Groups.Part(box);
        Spaces.Part(box);
        Boxes[box] = by;
        now[box].Sites = default;
        now[box].PlacementFindings = null;
        now[box].LimitFindings = null;
        bool stays = true;
        try
        {
            Put(box, by.Height, by.TryAlong(Options.Catalog, out Distance along) ? along : null);
            JudgeLimits(box);
            JudgeRules(box);
        }
        catch (OverflowException)
        {
            stays = false;
        }

        Groups.Join(box, this);
        ResizeGroups();
        Spaces.Join(box, this);
        return stays;
    }

    /// <summary>A box as it would be on a surface; null where it would be at fault, or the first of its kind.</summary>
    private ResolvedBox? Sound(DeviceBox source, ResolvedSurface surface) =>
        !Spaces.IsFirstOfItsKind(new(surface.Address, source)) ? SoundBut(source, surface) : null;

    /// <summary>The same, be it the first of its kind.</summary>
    public ResolvedBox? SoundBut(DeviceBox source, ResolvedSurface surface) =>
        !surface.Space.HasBrokenParts && BoxResolver.Again(source, surface, Options.Catalog, Options.Units) is { IsBroken: false } resolved
        && Resolver.IsWellPlaced(source, surface, Options.Catalog, Options.Units)
        && !UnknownKinds.Has(resolved, Rules.KindsWith(Options.Catalog, Options.OwnKinds))
            ? resolved
            : null;

    /// <summary>Whether a box can go from where it is without more than its surroundings being judged again.</summary>
    private bool MayPart(int box) =>
        Rules.LooksAtOwnBoxesOnly && !Boxes[box].IsBroken && !Faults.Exists(fault => fault.Subject == Boxes[box].Source.Id) && !Spaces.IsLastOfItsKind(box);

    /// <summary>Whether a box names others that there may not be, or somebody else does: whoever joins may be one of those.</summary>
    public bool AreNamesOpen(Items<string> named) => named.Count > 0 || (Spaces.MayControlsBeSaid && Faults.Exists(fault => fault.Kind == LayoutFaultKind.UnknownReference));

    /// <summary>Looks up what has to be judged again when a box joins the lists that it belongs to, or leaves them.</summary>
    private void LookAtListsWith(int box)
    {
        SortedSet<int> all = [];
        Spaces.AddJudgedWith(box, all);
        readers.Clear();
        readers.AddRange(all);
    }

    private void JudgeBeside(int box) => JudgeBeside(box, GroupsAround(box));

    private void JudgeBeside(int box, int[] groups)
    {
        foreach (int companion in CompanionsOf(box))
        {
            if (companion != box)
            {
                JudgePlacement(companion);
            }
        }

        foreach (int group in groups)
        {
            JudgeGroup(group);
        }

        foreach (int space in readers)
        {
            Spaces.Judge(space, this);
        }
    }

    private void CollectBeside(int box, List<Finding> findings) => CollectBeside(box, GroupsAround(box), findings);

    private void CollectBeside(int box, int[] groups, List<Finding> findings)
    {
        foreach (int companion in CompanionsOf(box))
        {
            if (companion != box)
            {
                CollectOwn(companion, findings);
            }
        }

        foreach (int group in groups)
        {
            Gather(groupFindings[group], findings);
        }

        foreach (int space in readers)
        {
            findings.AddRange(Spaces[space].Findings);
        }
    }
}
