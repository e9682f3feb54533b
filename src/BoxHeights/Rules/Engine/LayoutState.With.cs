using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <content>Boxes that are added for a trial, as a remedy that adds boxes is tried: only what they touch is judged.</content>
internal sealed partial class LayoutState
{
    /// <summary>Adds boxes behind all others until the trial is put away; null where one of them can't be there.</summary>
    /// <remarks>Measured: the example house's remedies took 53 to 90 ms with the dwelling evaluated anew for each, 18 ms so.</remarks>
    /// <param name="some">The boxes.</param>
    /// <param name="nearby">Whether flights and the dwelling are left out, which ask how many boxes there are and what they switch, and not which place one of a room has.</param>
    /// <param name="asked">Findings of spaces that are asked about: found again where what the boxes bear on is something else.</param>
    public Trial? With(Items<PlacedBox> some, bool nearby = false, Items<Finding> asked = default)
    {
        Trial trial = new(this);
        try
        {
            foreach (PlacedBox placed in some)
            {
                if (SurfaceAt(placed.Address) is not { } surface || BoxResolver.Again(placed.Box, surface, Options.Catalog, Options.Units) is not { IsBroken: false } box)
                {
                    trial.Dispose();
                    return null;
                }

                trial.Add(box);
            }

            trial.Judge(nearby, asked);
            return trial;
        }
        catch (OverflowException)
        {
            // Where it can't be added up, it can't be.
            trial.Dispose();
            return null;
        }
    }

    private void EnterGroups()
    {
        Groups.Enter(this);
        ResizeGroups();
    }

    private void LeaveGroups()
    {
        Groups.Leave();
        ResizeGroups();
    }

    private void ResizeGroups()
    {
        if (Groups.Count > keeps.Length)
        {
            // With room for more, as for boxes: a planner adds group after group.
            Array.Resize(ref groupFindings, WithRoom(Groups.Count));
            Array.Resize(ref keeps, WithRoom(Groups.Count));
        }

        // A group that is made anew has said nothing yet.
        Array.Clear(groupFindings, Groups.Count, groupFindings.Length - Groups.Count);
        Array.Clear(keeps, Groups.Count, keeps.Length - Groups.Count);
    }

    /// <summary>Takes the last box off its surface and away from its companions.</summary>
    private void TakeOff(int last)
    {
        boxesOn![Boxes[last].Surface.Index]!.Remove(last);
        if (HasRelief)
        {
            Companions()[Boxes[last].Surface.Space].Remove(last);
        }
    }

    /// <summary>Boxes that are there until they are put away. What their neighbors are found to be is found anew when it is asked for the next time.</summary>
    public sealed class Trial : IDisposable
    {
        private readonly LayoutState state;
        private readonly int before;
        private readonly HashSet<int> added = [];

        public Trial(LayoutState state)
        {
            this.state = state;
            before = state.Boxes.Count;
        }

        /// <summary>What is found of the boxes and of all that they are judged with. To be read before they are put away.</summary>
        public List<Finding> Findings { get; } = [];

        public void Add(ResolvedBox box)
        {
            int index = state.Append(box);
            state.Put(index, box.Height, box.TryAlong(state.Options.Catalog, out Distance along) ? along : null);
            state.EnterGroups();
            state.Spaces.Enter(state);
            added.Add(index);
        }

        public void Judge(bool nearby, Items<Finding> asked)
        {
            foreach (int box in added)
            {
                state.JudgeAlone(box, Findings);
            }

            state.JudgeBeside(added, Findings);
            HashSet<int> spaces = [];
            foreach (int box in added)
            {
                state.Spaces.AddJudgedWith(box, spaces);
            }

            foreach (int space in spaces)
            {
                if (!nearby || state.Spaces[space].View.Kind is not (SpaceKind.Flight or SpaceKind.Dwelling))
                {
                    state.Spaces.Try(space, state, added, asked, Findings);
                }
            }
        }

        /// <summary>Puts them away.</summary>
        public void Dispose()
        {
            while (state.Boxes.Count > before)
            {
                int last = state.Boxes.Count - 1;
                state.TakeOff(last);
                if (added.Contains(last))
                {
                    state.Spaces.Leave();
                    state.LeaveGroups();
                }

                state.TakeLast();
            }
        }
    }
}
