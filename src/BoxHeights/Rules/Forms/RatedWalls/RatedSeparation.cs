using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>In a wall that is declared rated, boxes on opposite faces are far enough apart, or kept apart by one of the permitted means.</summary>
/// <remarks>The means: a filled cavity, solid fireblocking between them, putty pads on both, or boxes that are listed for it. Which one there is has to be stated for boxes that are near each other.</remarks>
public sealed record RatedSeparation : ProvisionRule
{
    /// <summary>Describes the rule.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is allowed, in one plain phrase.</param>
    /// <param name="severity">How much a finding weighs.</param>
    /// <param name="citation">Where the rule comes from.</param>
    /// <param name="apart">How far apart boxes in different stud cavities are at least, itself allowed.</param>
    public RatedSeparation(string id, string summary, Severity severity, Citation citation, Distance apart)
        : base(id, summary, severity, citation) => Apart = apart;

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
                if (!group.TryAlong(i, out Distance one, out bool isBack) || !group.TryAlong(j, out Distance other, out bool otherIsBack) || isBack == otherIsBack
                    || !(group.SurfaceOf(i).Wall!.Rated || group.SurfaceOf(j).Wall!.Rated))
                {
                    continue;
                }

                Verdict verdict = Judge(group, i, j, (one - other).Abs());
                if (verdict != Verdict.Passes)
                {
                    int subject = group.IsUntouched(i) || (group.IsFixed(i) && !group.IsFixed(j)) ? j : i;
                    string near = group.IdOf(subject == i ? j : i);
                    group.TryCenter(subject, out DistanceRange center);
                    statement.Finds(subject, verdict, center.From, DistanceSet.Empty, verdict == Verdict.Unknown ? Facts.FireProtection : Facts.None, () => $"near {near} on the other face", new[] { near });
                }
            }
        }
    }

    private Verdict Judge(ProvisionGroup group, int i, int j, Distance centers)
    {
        BoxTraits one = group.BoxOf(i);
        BoxTraits other = group.BoxOf(j);
        Distance between = FromCenters ? centers : centers - EvenSize.Half(one.Size.Width) - EvenSize.Half(other.Size.Width);
        Wall wall = group.SurfaceOf(i).Wall!;
        Wall behind = group.SurfaceOf(j).Wall!;
        bool filled = (wall.CavityFilled || behind.CavityFilled) && (wall.Cavity ?? behind.Cavity) is { } depth && between >= depth;
        if ((between >= Apart && !ShareABay(group, i, j) && !ShareABay(group, j, i)) || filled || IsFireblocked(group, i, j))
        {
            return Verdict.Passes;
        }

        return (one.Source.FireProtection, other.Source.FireProtection) switch
        {
            (FireProtection.PuttyPad or FireProtection.Listed, FireProtection.PuttyPad or FireProtection.Listed) => Verdict.Passes,
            (FireProtection.None, _) or (_, FireProtection.None) => Verdict.Fails,
            _ => Verdict.Unknown,
        };
    }

    /// <summary>Whether no stud that is known on one of the faces stands between two boxes. Boxes this far apart are taken to be in different cavities where no stud is known.</summary>
    private static bool ShareABay(ProvisionGroup group, int face, int other)
    {
        if (group.SurfaceOf(face).Framing is not { Known: not StudKnowledge.Assumed } framing || Own(group, face, face) is not { } from || Own(group, face, other) is not { } to)
        {
            return false;
        }

        foreach (FramingMember member in framing.Members)
        {
            if (Distance.Min(from, to) < member.Left && member.Right < Distance.Max(from, to))
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsFireblocked(ProvisionGroup group, int i, int j) => IsFireblockedOn(group, i, j) || IsFireblockedOn(group, j, i);

    private static bool IsFireblockedOn(ProvisionGroup group, int face, int other)
    {
        if (Own(group, face, face) is not { } from || Own(group, face, other) is not { } to)
        {
            return false;
        }

        foreach (NoCavity part in group.SurfaceOf(face).Wall!.NoCavity)
        {
            if (part.Kind == NoCavityKind.Fireblock && Distance.Min(from, to) <= part.Left && part.Right <= Distance.Max(from, to))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A box's place in the coordinate of a box's own face.</summary>
    private static Distance? Own(ProvisionGroup group, int face, int box)
    {
        if (!group.TryAlong(face, out Distance here, out bool faceIsBack) || !group.TryAlong(box, out Distance there, out _) || group.PlaceOf(face) is not { } own)
        {
            return null;
        }

        return faceIsBack ? own - (there - here) : own + (there - here);
    }
}
