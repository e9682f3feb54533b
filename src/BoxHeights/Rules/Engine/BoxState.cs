using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>What is known of one box where it is now: side by side, so that judging it again reads one stretch of memory.</summary>
internal struct BoxState
{
    public const short NotCounted = -1;

    /// <summary>What is stated for it: see <see cref="LayoutState.SitesOf"/>.</summary>
    public SitesOfBox Sites;

    /// <summary>Where it is along its wall, in ticks.</summary>
    public long At;

    /// <summary>What the stick reads at it, in ticks.</summary>
    public long Reading;

    /// <summary>Places around it at which every placement rule surely allows it.</summary>
    public SureArea Safe;

    /// <summary>How high its center is above the storey's subfloor, where that can be told.</summary>
    public DistanceRange Center;

    /// <summary>Whether that can be told.</summary>
    public bool HasCenter;

    /// <summary>Whether there is a place at which it doesn't pass a limit rule.</summary>
    public bool MayMissLimits;

    /// <summary>Whether it didn't surely pass every placement rule when they were asked one by one.</summary>
    public bool MayMiss;

    /// <summary>Whether it is no part of this work.</summary>
    public bool IsUntouched;

    /// <summary>Whether its height was read from a tape, with the tape's error.</summary>
    public bool IsMeasured;

    /// <summary>How many rules that weigh as a violation couldn't be held to it; <see cref="NotCounted"/> until somebody asks.</summary>
    public short NotJudged;

    /// <summary>What placement rules found of it; null or empty where nothing.</summary>
    public List<Finding>? PlacementFindings;

    /// <summary>What limit rules found of it; null or empty where nothing.</summary>
    public List<Finding>? LimitFindings;
}
