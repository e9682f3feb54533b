using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A group of boxes that a provision rule judges together.</summary>
public sealed partial class ProvisionGroup
{
    private readonly BoxesNow state;
    private int[] members;
    private long[] exact = [];

    internal ProvisionGroup(BoxesNow state, int[] members)
    {
        this.state = state;
        this.members = members;
        Count = members.Length;
    }

    /// <summary>How many boxes it has.</summary>
    public int Count { get; private set; }

    internal int Member(int index) => members[index];

    internal bool Has(int box) => Array.IndexOf(members, box, 0, Count) >= 0;

    internal void Enter(int box)
    {
        MakeRoom();
        members[Count++] = box;
    }

    /// <summary>Takes in a box where it comes in the dwelling's order.</summary>
    internal void Join(int box)
    {
        MakeRoom();
        int place = Count++;
        for (; place > 0 && state.InOrder(members[place - 1], box) > 0; place--)
        {
            members[place] = members[place - 1];
        }

        members[place] = box;
    }

    /// <summary>Takes out a box, whichever it is.</summary>
    internal void Part(int box)
    {
        int place = Array.IndexOf(members, box, 0, Count);
        Count--;
        Array.Copy(members, place + 1, members, place, Count - place);
    }

    /// <summary>Takes out the box that entered last.</summary>
    internal void Leave() => Count--;

    /// <summary>Boxes that are tried come one by one, to a group that may have thousands.</summary>
    private void MakeRoom()
    {
        if (Count == members.Length)
        {
            Array.Resize(ref members, Count + (Count / 8) + 8);
        }
    }

    /// <summary>A box's id.</summary>
    /// <param name="index">0 to <see cref="Count"/> − 1.</param>
    public string IdOf(int index) => state.BoxAt(members[index]).Source.Id;

    /// <summary>A box, without its position.</summary>
    /// <param name="index">0 to <see cref="Count"/> − 1.</param>
    public BoxTraits BoxOf(int index) => state.SiteAt(members[index], 0).Box;

    /// <summary>The address of the surface that a box is on.</summary>
    /// <param name="index">0 to <see cref="Count"/> − 1.</param>
    public string AddressOf(int index) => SurfaceOf(index).Address;

    /// <summary>Where a box's center is along its wall: for boxes on the two faces of one wall, along one of them.</summary>
    /// <param name="index">0 to <see cref="Count"/> − 1.</param>
    /// <param name="along">The place.</param>
    /// <param name="isBack">Whether it is on the other face than that along which places are taken.</param>
    /// <returns>False when that isn't known.</returns>
    public bool TryAlong(int index, out Distance along, out bool isBack)
    {
        WallBody? body = SurfaceOf(index).Body;
        Distance? own = state.AtOf(members[index]);
        isBack = body is { IsBack: true };
        along = own is { } place ? body?.Along(place) ?? place : default;
        return own is not null;
    }

    /// <summary>Where a box is along its own face; null where that isn't known.</summary>
    internal Distance? PlaceOf(int index) => state.AtOf(members[index]);

    /// <summary>How far the center of one box lies above that of another: exact where both are set from one surface, whatever that will be.</summary>
    /// <param name="index">The one, 0 to <see cref="Count"/> − 1.</param>
    /// <param name="other">The other, 0 to <see cref="Count"/> − 1.</param>
    /// <param name="above">How far above; negative below.</param>
    /// <returns>False when the height of one of them isn't known.</returns>
    public bool TryAbove(int index, int other, out DistanceRange above)
    {
        above = default;
        if (!TryCenter(index, out DistanceRange one) || !TryCenter(other, out DistanceRange two))
        {
            return false;
        }

        bool alike = BoxOf(index).Datum == BoxOf(other).Datum && SurfaceOf(index).Space == SurfaceOf(other).Space && one.Width == two.Width && !state.IsMeasured(members[index]);
        above = alike ? one.From - two.From : one - two;
        return true;
    }

    /// <summary>How far the center of a box that isn't where it is described would lie above that of one of the group, more than what its stick reads.</summary>
    internal bool TryAbove(PlacementSite site, int other, out DistanceRange above) => state.TryAbove(site, members[other], out above);

    /// <summary>The tape's error, where the box's height was measured.</summary>
    internal MissingFacts TapeOf(int index) => state.IsMeasured(members[index]) ? MissingFacts.TapeReading : MissingFacts.None;

    /// <summary>How the studs are assumed to stand that alone tell where a box is, in brackets; empty where its place is known.</summary>
    internal Wording? AssumedStudsOf(int index) => state.IsPlacedByAssumedStud(members[index]) ? AssumedStuds.Of(SurfaceOf(index), state.Units) : null;

    internal ResolvedSurface SurfaceOf(int index) => state.BoxAt(members[index]).Surface;

    internal bool IsFixed(int index) => state.BoxAt(members[index]) is { IsExisting: true } or { Source.Pinned: true };

    /// <summary>Whether a box is no part of this work, so that of two the other is at fault.</summary>
    internal bool IsUntouched(int index) => state.BoxAt(members[index]).IsUntouched;

    /// <summary>The height of a box's center above the storey's subfloor.</summary>
    /// <param name="index">0 to <see cref="Count"/> − 1.</param>
    /// <param name="center">The height; a range where something isn't known.</param>
    /// <returns>False when the box has no height, or its datum isn't known.</returns>
    public bool TryCenter(int index, out DistanceRange center) => state.TryCenter(members[index], out center);

    /// <summary>The height that the centers of most boxes share, of those that are known exactly, or where there are none, of those that were measured; the lowest of several that as many share.</summary>
    /// <param name="center">The height above the storey's subfloor.</param>
    /// <returns>False when no center is known or was measured.</returns>
    public bool TryCommonCenter(out Distance center) => TryCommonCenter(null, out center);

    /// <summary>The same without those boxes that are level with one which was there before in their room, unless all of them are: such have a level of their own.</summary>
    /// <param name="offOld">How far off those a box may be; null where they count like others.</param>
    /// <param name="center">The height above the storey's subfloor.</param>
    internal bool TryCommonCenter(Distance? offOld, out Distance center) =>
        TryCommonCenter(false, offOld, out center) || TryCommonCenter(true, offOld, out center) || (offOld is not null && TryCommonCenter(null, out center));

    private bool TryCommonCenter(bool measured, Distance? offOld, out Distance center)
    {
        if (exact.Length < Count)
        {
            exact = new long[members.Length];
        }

        int count = 0;
        for (int i = 0; i < Count; i++)
        {
            if (HasLevelOfItsOwn(i, offOld))
            {
                continue;
            }

            if (measured ? state.TryNominalCenter(members[i], out Distance one) : TryExactCenter(i, out one))
            {
                exact[count++] = one.Ticks;
            }
        }

        // Mostly one height is shared by more than half, and needs no sorting: re-evaluating the benchmark's houses is a third faster so.
        if (TryMajority(count, out long shared))
        {
            center = Distance.FromTicks(shared);
            return true;
        }

        Array.Sort(exact, 0, count);
        long best = 0;
        int most = 0;
        int first = 0;
        for (int i = 1; i <= count; i++)
        {
            if (i == count || exact[i] != exact[first])
            {
                best = i - first > most ? exact[first] : best;
                most = Math.Max(most, i - first);
                first = i;
            }
        }

        center = Distance.FromTicks(best);
        return most > 0;
    }

    /// <summary>Whether more than half of the heights are one: whichever is left when each pair of unlike ones is struck out is the only one that can be.</summary>
    private bool TryMajority(int count, out long shared)
    {
        shared = 0;
        int left = 0;
        for (int i = 0; i < count; i++)
        {
            shared = left == 0 ? exact[i] : shared;
            left += exact[i] == shared ? 1 : -1;
        }

        int alike = 0;
        for (int i = 0; i < count; i++)
        {
            alike += exact[i] == shared ? 1 : 0;
        }

        return alike > count / 2;
    }

    private bool HasLevelOfItsOwn(int index, Distance? offOld) => offOld is { } within && state.LooksAtOld && !IsUntouched(index) && IsLevelWithOld(index, within);

    /// <summary>The heights at which the centers of the boxes lie but for one, of those that are known exactly, or where there are none, of those that were measured; from the lowest up, and without those that are level with one which was there before in their room.</summary>
    internal List<Distance> CentersWithout(int except, Distance? offOld)
    {
        List<Distance> found = [];
        for (int measured = 0; measured < 2 && found.Count == 0; measured++)
        {
            for (int i = 0; i < Count; i++)
            {
                if (members[i] != except && !HasLevelOfItsOwn(i, offOld) && (measured == 1 ? state.TryNominalCenter(members[i], out Distance one) : TryExactCenter(i, out one)))
                {
                    found.Add(one);
                }
            }
        }

        found.Sort();
        return found;
    }

    /// <summary>The heights above the storey's subfloor at which firm rules may let a box have its center, where it is along its wall.</summary>
    internal DistanceSet PossibleCentersOf(int index) => state.PossibleCentersOf(members[index]);

    private bool TryExactCenter(int index, out Distance exactly)
    {
        bool known = TryCenter(index, out DistanceRange center) && center.IsExact;
        exactly = center.From;
        return known;
    }

    /// <summary>Whether the placement rules let a box, where it is along its wall, have its center at some of these heights above the storey's subfloor.</summary>
    /// <param name="index">0 to <see cref="Count"/> − 1.</param>
    /// <param name="centers">The heights.</param>
    /// <param name="habitsToo">Whether habits count, which else yield.</param>
    /// <param name="needs">What would have to be known, where that is unknown.</param>
    public Verdict CanBeWithin(int index, in DistanceSet centers, bool habitsToo, out MissingFacts needs) => state.CanBeWithin(members[index], centers, habitsToo, out needs);

    /// <summary>Whether a box is surely level with one for its purpose that was there before in its room.</summary>
    internal bool IsLevelWithOld(int index, Distance within) =>
        state.EdgesOf(members[index]) == 1 && LevelWithOld(state.SiteAt(members[index], 0), members[index], within).Sure.ContainsRange(state.PlaceOf(members[index]).Heights);

    /// <summary>The readings at which a box is level with one for its purpose that was there before in its room.</summary>
    internal AllowedHeights LevelWithOld(PlacementSite site, int index, Distance within) => state.LevelWithOld(site, index, within);

    /// <summary>What isn't known about the height of a box's center.</summary>
    /// <param name="index">0 to <see cref="Count"/> − 1.</param>
    public MissingFacts NeedsOf(int index) => state.NeedsOfCenter(members[index]);
}
