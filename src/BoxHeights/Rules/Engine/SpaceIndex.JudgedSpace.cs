using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <content>One space rule and one thing that it is judged for.</content>
internal sealed partial class SpaceIndex
{
    /// <summary>One space rule, what it is judged for, and what it said last. While it is judged it speaks into a statement that it shares with the others.</summary>
    internal sealed class JudgedSpace(SpaceRule rule, SpaceView view, BoxLists lists, SpaceStatement statement, int number)
    {
        private static readonly List<Finding> Nothing = [];

        // Most find nothing, and a house has hundreds.
        private List<Finding>? findings;

        /// <summary>Its number among all that is judged.</summary>
        public int Number => number;

        public SpaceRule Rule { get; } = rule;

        public SpaceView View { get; } = view;

        /// <summary>What was found last.</summary>
        public List<Finding> Findings => findings ?? Nothing;

        /// <summary>Whether a box of it was added or set anew since it was judged.</summary>
        public bool IsStale { get; set; }

        /// <summary>Judges it from where its boxes are now.</summary>
        /// <param name="state">Where they are.</param>
        /// <param name="isTrial">Whether only what is found counts, and not which readings dispute it: then those aren't judged.</param>
        /// <param name="tried">The boxes that are tried, where only what they bear on is asked; null where all is.</param>
        /// <returns>How many findings there are.</returns>
        public int Judge(LayoutState state, bool isTrial = false, List<SpaceBox>? tried = null)
        {
            state.Cancellation.ThrowIfCancellationRequested();
            findings?.Clear();
            IsStale = false;
            statement.Tried = tried;
            Say(statement);
            statement.Tried = null;
            foreach (OpenPart open in statement.Open)
            {
                // A fault of the space itself is a finding, and says why.
                if (open.Blocks && Rule.Severity == Severity.Violation && !state.Faults.Exists(fault => fault.Subject == View.Id && fault.Kind is not (LayoutFaultKind.MisspelledKind or LayoutFaultKind.UnknownKind)))
                {
                    (findings ??= []).Add(new(state, Rule, SpaceAnswer.Of(open, View.Id), default));
                }
            }

            bool areRead = false;
            foreach (SpaceAnswer answer in statement.Answers)
            {
                bool mayBeDisputed = !isTrial && answer.Verdict == Verdict.Fails && Rule.Readings.Count > 0;
                if (mayBeDisputed && !areRead)
                {
                    SayAsRead();
                    areRead = true;
                }

                (findings ??= []).Add(new(state, Rule, answer, mayBeDisputed ? DisputedBy(answer.Subject) : default));
            }

            return findings?.Count ?? 0;
        }

        /// <summary>All that it says from where boxes are now, what is met too.</summary>
        public SpaceStatement SayAll()
        {
            SpaceStatement all = new() { TellsAll = true };
            Say(all);
            return all;
        }

        private void Say(SpaceStatement to)
        {
            to.Clear();
            if (View.HasBrokenParts)
            {
                // The fault is a finding itself.
                to.LeavesOpen(AtFault);
                return;
            }

            try
            {
                Rule.Judge(View, to);

                // What is no part of this work is only what others are held against.
                for (int i = to.Answers.Count - 1; i >= 0; i--)
                {
                    if (lists.IsUntouched(to.Answers[i].Subject))
                    {
                        to.Answers.RemoveAt(i);
                    }
                }

                for (int i = to.Open.Count - 1; i >= 0; i--)
                {
                    if (lists.IsUntouched(to.Open[i].Subject))
                    {
                        to.Open.RemoveAt(i);
                    }
                }
            }
            catch (OverflowException)
            {
                // What can't be added up any more is no measure of a house, and the rest goes on.
                to.Clear();
                to.NotJudged($"a measure in it is larger than anything in a house");
            }
        }

        /// <summary>What each other reading of the rule's text says from where boxes are now: once for all that fails.</summary>
        private void SayAsRead()
        {
            for (int i = 0; i < Rule.Readings.Count; i++)
            {
                SpaceStatement other = statement.AsRead(i);
                other.Clear();
                ((SpaceRule)Rule.Readings[i].Rule).Judge(View, other);
            }
        }

        /// <summary>The readings under which something that fails would be met.</summary>
        private Items<string> DisputedBy(string subject)
        {
            List<string>? disputed = null;
            for (int i = 0; i < Rule.Readings.Count; i++)
            {
                if (statement.AsRead(i).IsMet(subject, statement))
                {
                    (disputed ??= []).Add(Rule.Readings[i].Id);
                }
            }

            return disputed is null ? default : new(disputed);
        }
    }
}
