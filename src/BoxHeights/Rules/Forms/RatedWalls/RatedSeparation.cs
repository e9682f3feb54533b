using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Boxes on opposite faces of a rated wall are far enough apart, or kept apart by one of the permitted means.</summary>
/// <remarks>The means: a filled cavity, solid fireblocking between them, putty pads on both, or boxes that are listed for it. Which one there is has to be stated for boxes that are near each other.</remarks>
[Row(nameof(Apart))]
public sealed partial record RatedSeparation : ProvisionRule
{
    /// <summary>How far apart boxes in different stud cavities are at least, itself allowed.</summary>
    public Distance Apart { get; init; }

    /// <summary>Whether that is measured from center to center instead of from side to side.</summary>
    public bool FromCenters { get; init; }

    /// <inheritdoc/>
    protected override IEnumerable<string> Mistakes()
    {
        if (Apart < Distance.Zero)
        {
            yield return "its limit, " + Apart + ", is negative";
        }
    }

    /// <inheritdoc/>
    public override string? Covers { get; init; } = "rated walls";

    /// <inheritdoc/>
    public override string Numbers => Apart + " along the wall " + (FromCenters ? "from center to center" : "from side to side")
        + " in different stud cavities, or the depth of a filled cavity, or solid fireblocking between, or putty pads on both, or boxes listed for it";

    /// <inheritdoc/>
    public override string? GroupOf(BoxTraits box, GroupPlace place) =>
        box.Surface == BoxSurface.Wall && box.IsRecessed ? place.WholeWall : null;

    /// <inheritdoc/>
    public override void Judge(ProvisionGroup group, ProvisionStatement statement)
    {
        bool rated = false;
        for (int i = 0; i < group.Count; i++)
        {
            rated |= group.SurfaceOf(i).Wall!.Rated;
        }

        if (!rated)
        {
            statement.NotAboutThis();
            return;
        }

        statement.LeavesUnplaced(group);
        for (int i = 1; i < group.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                if (Spot.Of(group, i) is not { } one || Spot.Of(group, j) is not { } other)
                {
                    continue;
                }

                Verdict verdict = Judge(one, other);
                if (verdict != Verdict.Passes)
                {
                    int subject = group.IsUntouched(i) || (group.IsFixed(i) && !group.IsFixed(j)) ? j : i;
                    string near = group.IdOf(subject == i ? j : i);
                    group.TryCenter(subject, out DistanceRange center);
                    statement.Finds(subject, verdict, center.From, DistanceSet.Empty, verdict == Verdict.Unknown ? MissingFacts.FireProtection : MissingFacts.None, () => $"near {near} on the other face", new[] { near });
                }
            }
        }
    }

    /// <inheritdoc/>
    internal override AllowedHeights? Around(ProvisionGroup group, int except, AskedBox box)
    {
        Spot here = new(box.Site.Box, box.Site.Surface, box.Along);
        Verdict worst = Verdict.Passes;
        bool rated = here.Surface.Wall!.Rated;
        for (int j = 0; j < group.Count; j++)
        {
            rated |= group.SurfaceOf(j).Wall!.Rated;
            if (group.Member(j) != except && Spot.Of(group, j) is { } other && Judge(here, other) is var verdict && verdict != Verdict.Passes)
            {
                worst = worst == Verdict.Fails ? worst : verdict;
            }
        }

        return worst switch
        {
            Verdict.Passes => rated ? AllowedHeights.Anything : null,
            Verdict.Unknown => AllowedHeights.DependsOn(MissingFacts.FireProtection),
            _ => new(DistanceSet.Empty, DistanceSet.Empty, MissingFacts.None),
        };
    }

    /// <inheritdoc/>
    internal override void AddEdgesTo(List<long> edges, ProvisionGroup group, int except, PlacementSite site)
    {
        AddParts(site.Surface);
        for (int j = 0; j < group.Count; j++)
        {
            if (group.Member(j) == except || Spot.Of(group, j) is not { } other)
            {
                continue;
            }

            AddParts(other.Surface);
            Distance sides = FromCenters ? Distance.Zero : EvenSize.Half(site.Box.Size.Width) + EvenSize.Half(other.Box.Size.Width);
            foreach (Distance off in new[] { Distance.Zero, Apart + sides, ((site.Surface.Wall!.Cavity ?? other.Surface.Wall!.Cavity) ?? Distance.Zero) + sides, (other.Surface.Wall!.Cavity ?? Distance.Zero) + sides })
            {
                Add(other.Along - off);
                Add(other.Along + off);
            }
        }

        void AddParts(ResolvedSurface surface)
        {
            foreach (FramingMember member in surface.Framing?.Members ?? default)
            {
                Add(OnWall(surface, member.Left));
                Add(OnWall(surface, member.Right));
            }

            foreach (NoCavity part in surface.Wall!.NoCavity)
            {
                Add(OnWall(surface, part.Left));
                Add(OnWall(surface, part.Right));
            }
        }

        void Add(Distance place) => edges.Add((site.Surface.Body?.OnFace(place) ?? place).Ticks);
    }

    private Verdict Judge(in Spot one, in Spot other)
    {
        Wall wall = one.Surface.Wall!;
        Wall behind = other.Surface.Wall!;
        if (one.IsBack == other.IsBack || !(wall.Rated || behind.Rated))
        {
            return Verdict.Passes;
        }

        Distance centers = (one.Along - other.Along).Abs();
        Distance between = FromCenters ? centers : centers - EvenSize.Half(one.Box.Size.Width) - EvenSize.Half(other.Box.Size.Width);
        bool filled = (wall.CavityFilled || behind.CavityFilled) && (wall.Cavity ?? behind.Cavity) is { } depth && between >= depth;
        if ((between >= Apart && !ShareABay(one, other) && !ShareABay(other, one)) || filled || IsFireblocked(one, other) || IsFireblocked(other, one))
        {
            return Verdict.Passes;
        }

        return (one.Box.Source.FireProtection, other.Box.Source.FireProtection) switch
        {
            (FireProtection.PuttyPad or FireProtection.Listed, FireProtection.PuttyPad or FireProtection.Listed) => Verdict.Passes,
            (FireProtection.None, _) or (_, FireProtection.None) => Verdict.Fails,
            _ => Verdict.Unknown,
        };
    }

    /// <summary>Whether no stud that is known on a box's face stands between it and another. Boxes this far apart are taken to be in different cavities where no stud is known.</summary>
    private static bool ShareABay(in Spot box, in Spot other)
    {
        if (box.Surface.Framing is not { Known: not StudKnowledge.Assumed } framing)
        {
            return false;
        }

        (Distance from, Distance to) = box.To(other);
        return !framing.Members.Exists(member => from < member.Left && member.Right < to);
    }

    private static bool IsFireblocked(in Spot box, in Spot other)
    {
        (Distance from, Distance to) = box.To(other);
        return box.Surface.Wall!.NoCavity.Exists(part => part.Kind == NoCavityKind.Fireblock && from <= part.Left && part.Right <= to);
    }

    private static Distance OnWall(ResolvedSurface surface, Distance onFace) => surface.Body?.Along(onFace) ?? onFace;

    /// <summary>A box at a place along its face.</summary>
    private readonly struct Spot(BoxTraits box, ResolvedSurface surface, Distance own)
    {
        public BoxTraits Box { get; } = box;

        public ResolvedSurface Surface { get; } = surface;

        /// <summary>Its place along the wall, the same for both faces.</summary>
        public Distance Along { get; } = OnWall(surface, own);

        public bool IsBack { get; } = surface.Body is { IsBack: true };

        /// <summary>A box of a group; null where its place isn't known.</summary>
        public static Spot? Of(ProvisionGroup group, int index) => group.PlaceOf(index) is { } own ? new Spot(group.BoxOf(index), group.SurfaceOf(index), own) : null;

        /// <summary>From this box to another or the other way round, whichever is further right, along this box's face.</summary>
        public (Distance From, Distance To) To(in Spot other)
        {
            Distance there = Surface.Body?.OnFace(other.Along) ?? other.Along;
            Distance here = Surface.Body?.OnFace(Along) ?? Along;
            return (Distance.Min(here, there), Distance.Max(here, there));
        }
    }
}
