using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <content>The same rules and spaces for a dwelling that differs in its boxes alone.</content>
internal sealed partial class SpaceIndex
{
    private bool[]? silent;

    /// <summary>Enters what is judged once more for other boxes. What was found of them before isn't known here, until it is judged or <see cref="TakeOver"/> says what is silent.</summary>
    /// <param name="state">The other boxes.</param>
    /// <param name="like">What was judged.</param>
    /// <param name="dwelling">The other dwelling, with what one face of a wall says of it said of the other too.</param>
    public SpaceIndex(LayoutState state, SpaceIndex like, Dwelling dwelling)
    {
        lists = new(dwelling, state.Boxes.Count);
        if (like.whole is null)
        {
            return;
        }

        EnterBoxes(state);
        whole = new(dwelling, lists);
        (int rooms, int faces, int entered) = (0, 0, 0);
        views.Capacity = like.views.Count;
        judged.Capacity = like.judged.Count;
        foreach (SpaceView one in like.views)
        {
            SpaceView view = new(state, one, whole, one.Kind switch
            {
                SpaceKind.Room or SpaceKind.OutsideFace => lists.OfSpace(one.Id),
                SpaceKind.Storey => lists.OfStorey(one.Id),
                _ => lists.All,
            })
            {
                Room = one.Kind == SpaceKind.Room ? dwelling.Rooms[rooms++] : null,
                Face = one.Kind == SpaceKind.OutsideFace ? dwelling.Outside[faces++] : null,
            };
            views.Add(view);
            for (; entered < like.judged.Count && ReferenceEquals(like.judged[entered].View, one); entered++)
            {
                judged.Add(new(like.judged[entered].Rule, view, lists, statement, entered));
            }
        }

        (ofSpace, ofStorey, ofAll, wide) = (like.ofSpace, like.ofStorey, like.ofAll, like.wide);
    }

    /// <summary>Whether any box may say what it controls.</summary>
    public bool MayControlsBeSaid => whole is null || whole.AreControlsSaid;

    /// <summary>Whether it is known without judging it that nothing is found of one.</summary>
    public bool IsSilent(int one) => silent is not null && silent[one];

    /// <summary>The description, with what one face of a wall says of it said of the other too; null where nothing is judged.</summary>
    public Dwelling? Described => whole?.Dwelling;

    /// <summary>Takes over what was read, and that nothing was found, wherever that holds of the other boxes too.</summary>
    /// <param name="like">What was judged, with notes of what was read.</param>
    /// <param name="numbers">The numbers here of the boxes there; null where all are the same.</param>
    /// <param name="read">What reads a box that is another here: it is judged again.</param>
    public void TakeOver(SpaceIndex like, int[]? numbers, HashSet<int> read)
    {
        if (whole is null || like.Readers is null)
        {
            return;
        }

        Readers = like.Readers.Renumbered(numbers);
        whole.Readers = like.whole!.Readers!.Renumbered(null);
        whole.TakeOver(like.whole);
        silent = new bool[judged.Count];
        for (int one = 0; one < silent.Length; one++)
        {
            silent[one] = like.judged[one].Findings.Count == 0 && !read.Contains(one);
        }
    }

    /// <summary>Goes by notes of the same boxes, which stay as they are.</summary>
    public void ShareNotes(SpaceIndex like)
    {
        if (whole is not null && like.Readers is not null)
        {
            Readers = like.Readers;
            whole.Readers = like.whole!.Readers;
        }
    }

    /// <summary>What may say something else with a box or without it: what asked for a list that it is in, and looks at such boxes or was told that there is one at all.</summary>
    public void AddJudgedWith(int box, ISet<int> judgedAgain)
    {
        if (whole?.Readers is null)
        {
            judgedAgain.UnionWith(Of(box));
        }
        else if (box < boxOf.Count && boxOf[box] is { } one)
        {
            AddJudgedWith(one, 1, judgedAgain);
        }
    }

    /// <summary>The same for a box of a layout that differs in its boxes alone.</summary>
    public void AddJudgedWith(SpaceIndex like, int box, ISet<int> judgedAgain)
    {
        if (box < like.boxOf.Count && like.boxOf[box] is { } one)
        {
            AddJudgedWith(one, 0, judgedAgain);
        }
    }

    private void AddJudgedWith(SpaceBox box, int few, ISet<int> judgedAgain)
    {
        foreach (SpaceBoxes list in lists.Of(box))
        {
            foreach (int space in whole!.Readers!.Of(list.Number))
            {
                if (list.Count <= few || judged[space].Rule.LooksAt(box.Traits, whole))
                {
                    judgedAgain.Add(space);
                }
            }
        }
    }

    /// <summary>What reads where a box is.</summary>
    public IEnumerable<int> ReadersOf(int box) => Readers is { } readers ? readers.Of(box) : Of(box);
}
