namespace BoxHeights;

/// <content>Openings, and what is on the wall or stands before it.</content>
internal sealed partial class ElevationDrawing
{
    private void Openings()
    {
        foreach (OpeningView opening in wall.Openings)
        {
            page.Open("opening", opening.Id, opening.Address);
            if (opening.Trim.IsCased)
            {
                Area(opening.Casing, Look.Casing, "casing");
            }

            Area(opening.Area, Look.Opening, "rough");
            page.Close();
        }

        foreach (DoorCover cover in wall.DoorCovers)
        {
            // As high as its opening is known to be.
            Distance top = wall.Subfloor + Distance.FromInches(1);
            bool isKnown = false;
            foreach (OpeningView opening in wall.Openings)
            {
                if (opening.Id == cover.Opening.Id && opening.Area.Top is { } head)
                {
                    (top, isKnown) = (head.From, true);
                }
            }

            page.Open("door-cover", cover.Opening.Id);
            page.Rectangle(frame.Rect(cover.Left, cover.Right, wall.Subfloor, isKnown ? top : Distance.Min(high, top)), Look.DoorLeaf, "door-cover");
            page.Close();
        }
    }

    private void Finishes()
    {
        foreach (WallPart<Finish> finish in wall.Finishes)
        {
            page.Open("finish", finish.Id, finish.Address);
            Area(finish.Area, Look.Finish, "finish");
            page.Close();
        }
    }

    private void Things()
    {
        foreach (WallPart<Covering> covering in wall.Coverings)
        {
            page.Open("covering", covering.Id, covering.Address);
            Area(covering.Area, Look.Covering, "covering");
            page.Close();
        }

        foreach (WallPart<Fixture> fixture in wall.Fixtures)
        {
            page.Open("fixture", fixture.Id, fixture.Address);
            Area(fixture.Area, fixture.Area.Top is null ? Look.NotSure : Look.Fixture, "fixture");
            page.Close();
        }

        foreach (WallPart<Counter> counter in wall.Counters)
        {
            page.Open("counter", counter.Id, counter.Address);
            Top(counter, counter.IsAssumed ? Look.Assumed : Look.Counter, "counter");
            page.Close();
        }

        foreach (WallPart<Platform> platform in wall.Platforms)
        {
            page.Open("platform", platform.Id, platform.Address);
            Top(platform, Look.Platform, "platform");
            page.Close();
        }
    }

    /// <summary>The line of a thing's top. Where that isn't known there is none, and its stretch is marked at the floor.</summary>
    private void Top(WallPart part, Look look, string name)
    {
        (long left, long right) = (frame.X(part.Area.Left.From), frame.X(part.Area.Right.To));
        if (part.Area.Top is not { } top)
        {
            page.Segment(left, frame.Y(wall.Subfloor), right, frame.Y(wall.Subfloor), Look.Assumed, name + "-stretch");
        }
        else if (top.IsExact)
        {
            page.Segment(left, frame.Y(top.From), right, frame.Y(top.From), look, name);
        }
        else
        {
            page.Rectangle(new(left, frame.Y(top.To), right - left, frame.Y(top.From) - frame.Y(top.To)), Look.Range, name + "-range");
        }
    }

    private void NameThings()
    {
        foreach (WallPart part in wall.Parts)
        {
            string name = SvgText.Thing(part is WallPart<Counter>, part.Kind, part.Id);
            Distance bottom = part.Area.Bottom?.From ?? part.Area.Top?.From ?? wall.Subfloor;
            PageRect at = frame.Rect(part.Area.Left.From, part.Area.Right.To, bottom, Distance.Max(bottom, part.Area.Top?.To ?? high));
            string note = name + ": along " + Text(part.Area.Left) + " to " + Text(part.Area.Right)
                + (part.Area.Bottom is { } low ? ", from " + Above(low) + " up" : "") + (part.Area.Top is { } top ? ", top at " + Above(top) : ", height not known");
            if (part is WallPart<Counter> or WallPart<Platform>)
            {
                notes.Along(name, note, new(at.Left, at.Top, at.Width, 1), "name");
            }
            else
            {
                notes.Inside(name, note, at, "name");
            }
        }
    }
}
