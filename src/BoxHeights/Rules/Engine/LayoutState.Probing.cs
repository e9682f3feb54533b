using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <content>A box that is held to one place after another, as a planner does that looks for a good one.</content>
internal sealed partial class LayoutState
{
    /// <summary>A box to be held to places on a surface; null where a box like it can't be there. Nothing may be added before it is put away.</summary>
    public Probe? ProbeFor(string address, DeviceBox source)
    {
        if (SurfaceAt(address) is not { } surface || BoxResolver.Again(source, surface, Options.Catalog, Options.Units) is not { IsBroken: false } box)
        {
            return null;
        }

        // It is none of the boxes of its surface, and no companion of the others, but asks for its own.
        _ = BoxesOn(surface);
        if (HasRelief)
        {
            _ = Companions().ListOf(surface.Space);
        }

        int index = Boxes.Count;
        Enter(box);
        Put(index, box.Height, box.TryAlong(Options.Catalog, out Distance along) ? along : null);
        return new(this, index);
    }

    /// <summary>A box that is described nowhere and leaves no trace.</summary>
    public sealed class Probe : IDisposable
    {
        private readonly LayoutState state;
        private readonly List<Finding> found = [];

        public Probe(LayoutState state, int index)
        {
            this.state = state;
            Box = new(state, index);
        }

        /// <summary>The box where it is held.</summary>
        public SpaceBox Box { get; }

        /// <summary>Whether nothing is found of it by itself where it is held.</summary>
        public bool IsSilent => IsSilentBut(_ => false);

        /// <summary>Whether nothing is found of it by itself where it is held, but what may be missed.</summary>
        public bool IsSilentBut(Predicate<Finding> mayBeMissed)
        {
            found.Clear();
            state.JudgeAlone(Box.Index, found);
            return found.TrueForAll(mayBeMissed);
        }

        /// <summary>Whether no quantity of it is found wanting, or unknown.</summary>
        public bool IsWithinLimits
        {
            get
            {
                state.JudgeLimits(Box.Index);
                return state.now[Box.Index].LimitFindings is not { Count: > 0 };
            }
        }

        /// <summary>Holds it to a place.</summary>
        public Probe At(Distance along, BoxHeight height)
        {
            state.Put(Box.Index, height, along);
            return this;
        }

        /// <summary>Puts it away.</summary>
        public void Dispose() => state.TakeLast();
    }
}
