using System;

namespace BoxHeights;

/// <content>What stands in the wall and hangs on it as board, and where a box may be.</content>
internal sealed partial class ElevationDrawing
{
    private void Framing()
    {
        page.Open("framing");
        foreach (StudView stud in wall.Studs)
        {
            if (!stud.IsReplaced)
            {
                Look look = stud.IsAssumed ? Look.Assumed : !stud.IsSure ? Look.NotSure : stud.Part switch
                {
                    FramingPart.King => Look.King,
                    FramingPart.Jack => Look.Jack,
                    FramingPart.Cripple => Look.Cripple,
                    FramingPart.Corner => Look.Corner,
                    _ => Look.Stud,
                };
                page.Rectangle(frame.Rect(stud.Left, stud.Right, stud.Bottom?.From ?? wall.Subfloor, Distance.Max(stud.Bottom?.From ?? wall.Subfloor, stud.Top?.From ?? high)), look, "stud");
            }
        }

        foreach (WallPart<NoCavity> part in wall.WithoutCavity)
        {
            Area(part.Area, Look.NoCavity, "no-cavity");
        }

        page.Close();
    }

    private void Seams()
    {
        foreach (BoardView boards in wall.Boards is { } stated ? new[] { stated } : (System.Collections.Generic.IEnumerable<BoardView>)wall.CommonBoards)
        {
            if (isTopKnown)
            {
                page.OpenWithin("boards", Corners());
            }
            else
            {
                page.Open("boards");
            }

            foreach (DistanceRange seam in boards.Seams)
            {
                if (seam.From >= low && seam.To <= high)
                {
                    Level(seam, boards.IsAssumed ? Look.Assumed : Look.Seam, "seam");
                }
            }

            Joints();
            page.Close();
        }
    }

    /// <summary>Where sheets meet side by side: upright ones, and those whose butt joints are stated.</summary>
    private void Joints()
    {
        foreach (WallArea sheet in wall.Sheets)
        {
            if (sheet.Left.From > Distance.Zero)
            {
                long x = frame.X(sheet.Left.From);
                page.Segment(x, frame.Y(sheet.Bottom!.Value.From), x, frame.Y(sheet.Top!.Value.From), Look.Seam, "joint");
            }
        }
    }

    private void Bands()
    {
        if (bands.Count == 0)
        {
            return;
        }

        page.Open("allowed", options.AllowedFor);
        foreach (BandView band in bands)
        {
            Shade(band, band.Possible, Look.MaybeAllowed, "allowed-maybe");
            Shade(band, band.Sure, Look.Allowed, "allowed-surely");
        }

        page.Close();
    }

    private void Shade(BandView band, DistanceSet heights, Look look, string part)
    {
        for (int i = 0; i < heights.Count; i++)
        {
            Distance from = Distance.Max(low, heights[i].From);
            Distance to = Distance.Min(high, heights[i].To);
            if (from < to)
            {
                page.Rectangle(frame.Rect(band.Left, band.Right, from, to), look, part);
            }
            else if (from == to)
            {
                page.Segment(frame.X(band.Left), frame.Y(from), frame.X(band.Right), frame.Y(from), look == Look.Allowed ? Look.AllowedLine : look, part);
            }
        }
    }

    /// <summary>What keeps the chosen box from being elsewhere, stretch by stretch.</summary>
    private void WriteBands()
    {
        if (!options.Shows(PictureLayers.Allowed) || options.AllowedFor is not { } id)
        {
            return;
        }

        page.Paragraph(
            bands.Count == 0 ? "Where " + SvgText.Isolated(id) + " may be can't be told from its description."
            : "Shaded is where the center of " + SvgText.Isolated(id) + " may be; from elsewhere it is kept, along the wall, by:",
            "allowed-note");
        for (int from = 0, to = 0; from < bands.Count; from = to)
        {
            while (to < bands.Count && bands[to].LimitedBy == bands[from].LimitedBy)
            {
                to++;
            }

            page.Item(
                Text(bands[from].Left) + " to " + Text(bands[to - 1].Right),
                bands[from].LimitedBy.Count == 0 ? "no rule" : string.Join(", ", bands[from].LimitedBy), "allowed-by");
        }

        page.Gap();
    }

    /// <summary>A horizontal line across the wall; a band where it isn't known exactly.</summary>
    private void Level(DistanceRange up, Look look, string part)
    {
        if (up.IsExact)
        {
            page.Segment(frame.X(Distance.Zero), frame.Y(up.From), frame.X(length), frame.Y(up.From), look, part);
            return;
        }

        page.Rectangle(frame.Rect(Distance.Zero, length, Distance.Max(low, up.From), Distance.Min(high, Distance.Max(up.To, low))), Look.Range, part);
    }

    /// <summary>A rectangle: what is sure of it in its own look, and how far its edges may reach as a range. An edge of which nothing is known is left open.</summary>
    private void Area(in WallArea area, Look look, string part, bool isAssumed = false, bool isRound = false)
    {
        (Distance left, Distance right) = (area.Left.To, area.Right.From);
        (Distance bottom, Distance top) = (area.Bottom?.To ?? wall.Subfloor, area.Top?.From ?? high);
        bool isSure = left <= right && bottom <= top;
        if (!area.Left.IsExact || !area.Right.IsExact || area.Bottom is { IsExact: false } || area.Top is { IsExact: false })
        {
            page.Rectangle(
                frame.Rect(area.Left.From, area.Right.To, area.Bottom?.From ?? wall.Subfloor, Distance.Max(area.Bottom?.From ?? wall.Subfloor, area.Top?.To ?? high)),
                area.Top is null ? Look.NotSure : Look.Range,
                part + "-range");
        }

        if (isSure && area.Top is not null)
        {
            page.Rectangle(frame.Rect(left, right, bottom, top), isAssumed ? Look.Assumed : look, part, isRound);
        }
        else if (isSure)
        {
            long head = Math.Max(frame.Area.Top, frame.Y(top));
            page.Path([(frame.X(left), head), (frame.X(left), frame.Y(bottom)), (frame.X(right), frame.Y(bottom)), (frame.X(right), head)], look, part: part + "-open");
        }
    }
}
