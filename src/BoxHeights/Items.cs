using System;
using System.Collections;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>A read-only list that is equal to another when their items are equal, in order.</summary>
/// <remarks><c>default</c> is the empty list. Records of this library hold their lists so, so that two descriptions of the same house are equal.</remarks>
/// <typeparam name="T">What is listed.</typeparam>
#if NET8_0_OR_GREATER
[System.Runtime.CompilerServices.CollectionBuilder(typeof(Items), nameof(Items.Create))]
#endif
public readonly partial struct Items<T> : IReadOnlyList<T>, IEquatable<Items<T>>
{
    private readonly T[]? items;

    /// <summary>Copies the items given.</summary>
    /// <param name="items">The items, in order.</param>
    /// <exception cref="ArgumentNullException"><paramref name="items"/> is null.</exception>
    /// <exception cref="ArgumentException">One of the items is null.</exception>
    public Items(IEnumerable<T> items)
        : this(items is T[] array ? (T[])array.Clone() : (items as List<T> ?? new List<T>(items ?? throw new ArgumentNullException(nameof(items)))).ToArray(), nameof(items))
    {
    }

    private Items(T[] owned, string name)
    {
        foreach (T item in owned)
        {
            if (item is null)
            {
                throw new ArgumentException("A list here holds no nulls.", name);
            }
        }

        items = owned;
    }

    /// <summary>The empty list.</summary>
    public static Items<T> None => default;

    /// <summary>How many items there are.</summary>
    public int Count => items is null ? 0 : items.Length;

    /// <summary>The item at a place counted from 0.</summary>
    /// <param name="index">0 to <see cref="Count"/> − 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such place.</exception>
    public T this[int index] => (uint)index < (uint)Count ? items![index] : throw new ArgumentOutOfRangeException(nameof(index), index, "The list has " + Count + " items.");

    /// <summary>Whether two lists hold equal items in the same order.</summary>
    public static bool operator ==(Items<T> left, Items<T> right) => left.Equals(right);

    /// <summary>Whether two lists differ.</summary>
    public static bool operator !=(Items<T> left, Items<T> right) => !left.Equals(right);

    /// <summary>Copies an array.</summary>
    /// <param name="items">The items, in order; null is the empty list, as in <c>known ? new[] { one } : null</c>. The constructor takes no null.</param>
    /// <exception cref="ArgumentException">One of the items is null.</exception>
    public static implicit operator Items<T>(T[]? items) => items is null ? default : new((T[])items.Clone(), nameof(items));

    /// <summary>This list with one item more at its end.</summary>
    /// <remarks>Not named Add: a collection initializer would call that, and drop what it gives.</remarks>
    /// <param name="item">The item to add.</param>
    /// <exception cref="ArgumentException"><paramref name="item"/> is null.</exception>
    public Items<T> With(T item)
    {
        T[] grown = new T[Count + 1];
        items?.CopyTo(grown, 0);
        grown[Count] = item;
        return new(grown, nameof(item));
    }

    /// <summary>This list with each item changed.</summary>
    /// <param name="change">Gives the new item for an old one.</param>
    /// <exception cref="ArgumentNullException"><paramref name="change"/> is null.</exception>
    public Items<TOut> Select<TOut>(Func<T, TOut> change)
    {
        Guard.NotNull(change, nameof(change));

        TOut[] changed = new TOut[Count];
        for (int i = 0; i < changed.Length; i++)
        {
            changed[i] = change(items![i]);
        }

        return changed;
    }

    /// <summary>A list of the very array given, which nobody else may keep.</summary>
    internal static Items<T> Own(T[] items) => new(items, nameof(items));

    /// <summary>Whether an equal item is in the list.</summary>
    /// <param name="item">The item looked for.</param>
    public bool Contains(T item) => items is not null && Array.IndexOf(items, item) >= 0;

    /// <summary>Whether some of its items meet a condition.</summary>
    internal bool Exists(Predicate<T> which) => items is not null && Array.Exists(items, which);

    /// <summary>Those of its items that meet a condition.</summary>
    internal Items<T> Where(Predicate<T> which) => items is null ? default : Own(Array.FindAll(items, which));

    /// <summary>Its items without those that an earlier one is equal to.</summary>
    internal Items<T> Distinct()
    {
        List<T> once = [];
        foreach (T item in this)
        {
            if (!once.Contains(item))
            {
                once.Add(item);
            }
        }

        return new(once);
    }

    /// <summary>The first that is so; null where none is.</summary>
    internal T? Find(Predicate<T> which) => items is null ? default : Array.Find(items, which);

    /// <inheritdoc/>
    public bool Equals(Items<T> other)
    {
        if (Count != other.Count)
        {
            return false;
        }

        EqualityComparer<T> same = EqualityComparer<T>.Default;
        for (int i = 0; i < Count; i++)
        {
            if (!same.Equals(items![i], other.items![i]))
            {
                return false;
            }
        }

        return true;
    }

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Items<T> other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        int hash = 17;
        foreach (T item in this)
        {
            hash = unchecked((hash * 31) + item!.GetHashCode());
        }

        return hash;
    }

    /// <summary>The items, separated by commas.</summary>
    public override string ToString() => string.Join(", ", this);

    /// <summary>Walks the list without allocating.</summary>
    public Enumerator GetEnumerator() => new(items);

    IEnumerator<T> IEnumerable<T>.GetEnumerator() => ((IEnumerable<T>)(items ?? [])).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => (items ?? []).GetEnumerator();

    /// <summary>Walks an <see cref="Items{T}"/>.</summary>
    public struct Enumerator
    {
        private readonly T[]? items;
        private int index;

        internal Enumerator(T[]? items)
        {
            this.items = items;
            index = -1;
        }

        /// <summary>The item reached.</summary>
        public readonly T Current => items![index];

        /// <summary>Goes on to the next item; false at the end.</summary>
        public bool MoveNext() => items is not null && ++index < items.Length;
    }
}

#if NET8_0_OR_GREATER
/// <summary>Makes lists, for collection expressions: <c>Devices = [DeviceKind.Switch]</c>.</summary>
public static class Items
{
    /// <summary>Copies the items given.</summary>
    /// <typeparam name="T">What is listed.</typeparam>
    /// <param name="items">The items, in order.</param>
    /// <exception cref="ArgumentException">One of the items is null.</exception>
    public static Items<T> Create<T>(ReadOnlySpan<T> items) => items.ToArray();
}
#endif
