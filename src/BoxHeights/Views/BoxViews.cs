using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Boxes as the engine's state holds them, in the coordinates of their surfaces.</summary>
internal static class BoxViews
{
    /// <summary>The boxes of a surface, in the dwelling's order.</summary>
    public static Items<BoxView> On(LayoutState state, ResolvedSurface surface)
    {
        List<BoxView> found = [];
        for (int box = 0; box < state.Boxes.Count; box++)
        {
            if (ReferenceEquals(state.Boxes[box].Surface, surface))
            {
                found.Add(InAHouseOrPlain(state, box));
            }
        }

        return new(found);
    }

    /// <summary>A box that would be somewhere outside of any house is told as one that can't be judged.</summary>
    private static BoxView InAHouseOrPlain(LayoutState state, int box)
    {
        try
        {
            BoxView view = Of(state, box);
            return InAHouse.Holds(view.Along ?? Distance.Zero) && InAHouse.Holds(view.Center ?? Distance.Zero) && InAHouse.Holds(view.Body ?? default) && InAHouse.Holds(view.Plate ?? default)
                ? view
                : Plain(state.Boxes[box], null, isBroken: true);
        }
        catch (OverflowException)
        {
            return Plain(state.Boxes[box], null, isBroken: true);
        }
    }

    /// <summary>A box of which no more is told than what is stated.</summary>
    private static BoxView Plain(ResolvedBox resolved, Distance? along, bool isBroken) => new(resolved.Source, resolved.Surface.Address, resolved.Source.Surface ?? resolved.Surface.Kind)
    {
        IsBroken = isBroken,
        Height = resolved.Height,
        Along = along,
        IsSizeAssumed = resolved.Source.Size is null,
        Gangs = ResolvedBox.GangsOf(resolved.Source),
        Plan = PlanPoints.InAHouse(resolved.Source.Plan),
        Tapes = Tapes(resolved.Surface, resolved.Source),
    };

    private static BoxView Of(LayoutState state, int box)
    {
        ResolvedBox resolved = state.Boxes[box];
        DeviceBox source = resolved.Source;
        ResolvedSurface surface = resolved.Surface;
        SitesOfBox sites = state.SitesOf(box);
        Distance? along = state.AtOf(box);
        BoxView view = Plain(resolved, along, resolved.IsBroken);
        if (sites.Length == 0)
        {
            return view;
        }

        BoxTraits traits = sites[0].Site.Box;
        DistanceRange? Up(TargetLine line) => state.HasHeight(box) ? UpOf(sites, line, state.PlaceOf(box).Heights) : null;
        WallArea? Around(DistanceRange wide, TargetLine bottom, TargetLine top) =>
            along is { } center && Up(bottom) is { } low && Up(top) is { } high ? new WallArea(center - Half(wide), center + Half(wide), low, high) : null;

        WallArea? body = traits.Size.IsStated ? Around(traits.Size.WidthRange, TargetLine.BoxBottom, TargetLine.BoxTop) : null;
        (int Stud, StudSide Side)? held = HeldBy(resolved, traits, along);
        return new(source, surface.Address, view.Surface)
        {
            Height = view.Height,
            Along = along,
            IsAlongAssumed = state.IsPlacedByAssumedStud(box),
            Center = Up(TargetLine.Center),
            Size = traits.Size,
            Body = body,
            UsualBody = body is { IsExact: true } ? body : along is { } at && traits.Size.IsStated ? Usual(at, traits.Size, Up(TargetLine.BoxBottom), Up(TargetLine.Center), Up(TargetLine.BoxTop)) : null,
            IsSizeAssumed = view.IsSizeAssumed,
            Plate = traits.Plate is { } plate ? Around(plate.Width, TargetLine.PlateBottom, TargetLine.PlateTop) : null,
            Operable = traits.Size.IsStated ? Around(traits.Size.WidthRange, TargetLine.LowestOperable, TargetLine.HighestOperable) : null,
            Gangs = view.Gangs,
            IsRound = traits.Build.IsRound,
            Stud = held?.Stud,
            Side = held?.Side,
            Plan = along is { } place && surface is { Kind: BoxSurface.Wall, Space.Plan: { IsTooLarge: false } plan } ? PlanPoints.On(plan, surface.Wall!.Id, place) : PlanPoints.InAHouse(source.Plan),
            Tapes = view.Tapes,
        };
    }

    /// <summary>A box of one size about a place along the wall, from whichever of its lines is known exactly.</summary>
    private static WallArea? Usual(Distance along, BoxSize size, DistanceRange? bottom, DistanceRange? center, DistanceRange? top)
    {
        Distance? low = bottom is { IsExact: true } ? bottom.Value.From
            : top is { IsExact: true } ? top.Value.From - size.Height
            : center is { IsExact: true } ? center.Value.From - size.HalfHeight
            : null;
        return low is { } from ? new WallArea(along - size.HalfWidth, along + size.HalfWidth, from, from + size.Height) : null;
    }

    private static Items<WallTape> Tapes(ResolvedSurface surface, DeviceBox source) =>
        surface.Kind != BoxSurface.Wall && source.Plan is { } point ? WallTape.To(surface.Space, point) : default;

    /// <summary>A line of a box above the storey's subfloor: wherever it may be where the edge that its height is measured to isn't stated.</summary>
    private static DistanceRange? UpOf(SitesOfBox sites, TargetLine line, DistanceRange readings)
    {
        DistanceRange? all = null;
        foreach (StatedSite stated in sites)
        {
            PlacementSite site = stated.Site;
            if (!site.Levels.TryGet(site.Box.Datum, out DistanceRange datum) || !site.TryLineAboveEdge(line, out DistanceRange above, out _))
            {
                return null;
            }

            DistanceRange one = datum + readings + above;
            all = all is { } some ? new(Distance.Min(some.From, one.From), Distance.Max(some.To, one.To)) : one;
        }

        return all;
    }

    private static DistanceRange Half(DistanceRange wide) => new(EvenSize.Half(wide.From), EvenSize.Half(wide.To));

    private static (int Stud, StudSide Side)? HeldBy(ResolvedBox box, BoxTraits traits, Distance? along) =>
        box.Source.Mounting is { How: MountingMethod.Stud, Stud: { } stud, Side: { } side } ? (stud, side)
        : along is { } center && traits.Surface == BoxSurface.Wall && traits.Size.IsStated && traits.Mounting is null or MountingMethod.Stud
            && box.Surface.Studs is { Known: not StudKnowledge.Assumed } studs
            ? studs.Holding(center, traits.Size.Width)
            : null;
}
