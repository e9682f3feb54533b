using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;
using static BoxHeights.Tests.Measures.MeasureGen;

namespace BoxHeights.Tests.Measures;

/// <summary>Every operation tick by tick against plain membership of listed stretches, which knows nothing of order or canonical form.</summary>
public class DistanceSetLawTests
{
    // Ends lie within 20 ticks of zero; what is looked at goes far enough beyond to see the tails.
    private const int Reach = 20;
    private const int Far = 60;

    private static readonly int[] Window = [.. Enumerable.Range(-Far, (2 * Far) + 1)];

    private static Gen<Model> Models { get; } =
        from count in Gen.Choose(0, 12)
        from pieces in (
            from kind in Gen.Choose(0, 19)
            from low in Gen.Choose(-Reach, Reach - 3)
            from length in Gen.Choose(0, 3)
            select new Piece(kind == 0 ? null : low, kind == 1 ? null : low + length)).ListOf(count)
        select new Model([.. pieces]);

    private static Gen<(int From, int To)> Shifts { get; } =
        from start in Gen.Choose(-8, 8)
        from width in Gen.Choose(0, 6)
        select (start, start + width);

    [Fact]
    public void Contains_AndCanonicalForm() => Holds(Models, Shrink, model =>
    {
        DistanceSet set = model.ToSet();
        bool apart = Enumerable.Range(1, Math.Max(0, set.Count - 1)).All(i => set.LowTicks(i) > set.HighTicks(i - 1) + 1);
        bool ordered = Enumerable.Range(0, set.Count).All(i => set.LowTicks(i) <= set.HighTicks(i));
        return Agree(set, model.Has) && apart && ordered;
    });

    [Fact]
    public void UnionAndIntersect_PointByPoint() => Holds(Both(Models, Models), ShrinkBoth, pair =>
    {
        DistanceSet a = pair.A.ToSet(), b = pair.B.ToSet();
        return Agree(a | b, x => pair.A.Has(x) || pair.B.Has(x)) && Agree(a & b, x => pair.A.Has(x) && pair.B.Has(x));
    });

    [Fact]
    public void ManyAtOnce_AsOneByOne() => Holds(Models, Shrink, model =>
    {
        DistanceRange[] ranges = [.. from piece in model.Pieces where piece is { Low: not null, High: not null } select new DistanceRange(Distance.FromTicks(piece.Low!.Value), Distance.FromTicks(piece.High!.Value))];
        DistanceSet outside = ranges.Aggregate(DistanceSet.All, (all, one) => all & DistanceSet.Outside(one.From, one.To));
        DistanceSet inside = ranges.Aggregate(DistanceSet.Empty, (all, one) => all | DistanceSet.Between(one.From, one.To));
        return DistanceSet.UnionOf([.. ranges]) == inside && DistanceSet.OutsideOf([.. ranges]) == outside;
    });

    [Fact]
    public void Complement_PointByPoint() => Holds(Models, Shrink, model => Agree(model.ToSet().Complement(), x => !model.Has(x)));

    [Fact]
    public void Equality_IsTheSameMembers() => Holds(Both(Models, Models), ShrinkBoth, pair =>
    {
        DistanceSet a = pair.A.ToSet(), b = pair.B.ToSet(), again = new Model([.. Enumerable.Reverse(pair.A.Pieces)]).ToSet();
        bool same = Window.All(x => pair.A.Has(x) == pair.B.Has(x));
        return (a == b) == same && a == again && a.GetHashCode() == again.GetHashCode() && a == (a | (a & b)) && a == (a & (a | b));
    });

    [Fact]
    public void Shift_PointByPoint() => Holds(Both(Models, Shifts), given =>
        Agree(given.A.ToSet().Shift(Ticks(given.B.From)), x => given.A.Has(x - given.B.From)));

    [Fact]
    public void Shrink_PointByPoint() => Holds(Both(Models, Gen.Choose(0, 4)), given =>
        Agree(given.A.ToSet().Shrink(Ticks(given.B)), x => Steps(x - given.B, x + given.B).All(given.A.Has)));

    [Fact]
    public void ErodeAndDilateShift_PointByPoint() => Holds(Both(Models, Shifts), given =>
    {
        (Model model, (int from, int to)) = given;
        DistanceRange range = new(Ticks(from), Ticks(to));
        return Agree(model.ToSet().ErodeShift(range), x => Steps(from, to).All(shift => model.Has(x - shift)))
            && Agree(model.ToSet().DilateShift(range), x => Steps(from, to).Any(shift => model.Has(x - shift)));
    });

    [Fact]
    public void ErodeShift_IsWhatTheComplementNeverReaches() => Holds(Both(Models, Shifts), given =>
    {
        DistanceSet set = given.A.ToSet();
        DistanceRange range = new(Ticks(given.B.From), Ticks(given.B.To));
        return set.ErodeShift(range) == set.Complement().DilateShift(range).Complement();
    });

    [Fact]
    public void ContainsRangeAndOverlaps_PointByPoint() => Holds(Both(Models, Shifts), given =>
    {
        (Model model, (int from, int to)) = given;
        DistanceRange range = new(Ticks(from), Ticks(to));
        return model.ToSet().ContainsRange(range) == Steps(from, to).All(model.Has)
            && model.ToSet().Overlaps(range) == Steps(from, to).Any(model.Has);
    });

    [Fact]
    public void Margin_ByCounting() => Holds(Models, Shrink, model =>
    {
        DistanceSet set = model.ToSet();
        return Steps(-30, 30).All(x =>
        {
            bool inside = model.Has(x);
            long steps = Window.Where(y => model.Has(y) != inside).Select(y => (long)Math.Abs(x - y)).DefaultIfEmpty(-1).Min();
            long expected = steps < 0 ? (inside ? long.MaxValue : long.MinValue) : inside ? steps - 1 : -steps;
            return set.Margin(Ticks(x)).Ticks == expected;
        });
    });

    [Fact]
    public void TryNearestSnapped_ByTryingAll() => Holds(Both(Models, Gen.Choose(1, 7)), given =>
    {
        DistanceSet set = given.A.ToSet();
        int[] members = [.. Window.Where(y => given.A.Has(y) && y % given.B == 0)];
        int[] all = [.. Window.Where(given.A.Has)];
        return Steps(-30, 30).All(x =>
            set.TryNearestSnapped(Ticks(x), Ticks(given.B), out Distance snapped) == (members.Length > 0)
            && (members.Length == 0 || snapped.Ticks == Nearest(members, x))
            && set.TryNearest(Ticks(x), out Distance nearest) == (all.Length > 0)
            && (all.Length == 0 || nearest.Ticks == Nearest(all, x)));
    });

    private static int Nearest(int[] ascending, int x) => ascending.OrderBy(y => Math.Abs(x - y)).First();

    private static bool Agree(DistanceSet set, Func<int, bool> has) => Window.All(x => set.Contains(Ticks(x)) == has(x));

    private static Distance Ticks(int ticks) => Distance.FromTicks(ticks);

    private static IEnumerable<int> Steps(int from, int to) => Enumerable.Range(from, to - from + 1);

    private static IEnumerable<Model> Shrink(Model model) =>
        model.Pieces.Select((_, i) => new Model([.. model.Pieces.Where((_, j) => j != i)]));

    private static IEnumerable<(Model A, Model B)> ShrinkBoth((Model A, Model B) pair) =>
        Shrink(pair.A).Select(a => (a, pair.B)).Concat(Shrink(pair.B).Select(b => (pair.A, b)));

    // Null is no bound.
    private sealed record Piece(int? Low, int? High)
    {
        public bool Has(int x) => (Low is null || x >= Low) && (High is null || x <= High);

        public DistanceSet ToSet() => (Low, High) switch
        {
            (null, null) => DistanceSet.All,
            (null, int high) => DistanceSet.AtMost(Ticks(high)),
            (int low, null) => DistanceSet.AtLeast(Ticks(low)),
            (int low, int high) => DistanceSet.Between(Ticks(low), Ticks(high)),
        };
    }

    private sealed record Model(Piece[] Pieces)
    {
        public bool Has(int x) => Pieces.Any(piece => piece.Has(x));

        public DistanceSet ToSet() => Pieces.Aggregate(DistanceSet.Empty, (set, piece) => set | piece.ToSet());

        public override string ToString() => string.Join(" ", Pieces.Select(piece => $"[{piece.Low}..{piece.High}]"));
    }
}
