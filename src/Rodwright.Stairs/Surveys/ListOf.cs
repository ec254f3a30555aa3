using System.Collections;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace Rodwright.Stairs.Surveys;

/// <summary>An unchanging list that equals another when its items do: records that hold one need no equality of their own.</summary>
/// <typeparam name="T">What is listed.</typeparam>
[CollectionBuilder(typeof(ListOf), nameof(ListOf.Create))]
public readonly struct ListOf<T> : IReadOnlyList<T>, IEquatable<ListOf<T>>
{
    private readonly ImmutableArray<T> items;

    internal ListOf(ImmutableArray<T> items) => this.items = items;

    private ImmutableArray<T> Items => items.IsDefault ? [] : items;

    /// <inheritdoc/>
    public int Count => Items.Length;

    /// <inheritdoc/>
    public T this[int index] => Items[index];

    /// <summary>The list with one item put in another's place.</summary>
    public ListOf<T> With(int index, T item) => new(Items.SetItem(index, item));

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)Items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <inheritdoc/>
    public bool Equals(ListOf<T> other) => Items.SequenceEqual(other.Items);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is ListOf<T> other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Items.Aggregate(0, (sum, item) => HashCode.Combine(sum, item));

    /// <summary>Whether the items are equal, one by one.</summary>
    public static bool operator ==(ListOf<T> a, ListOf<T> b) => a.Equals(b);

    /// <summary>Whether any item differs.</summary>
    public static bool operator !=(ListOf<T> a, ListOf<T> b) => !a.Equals(b);
}

/// <summary>Makes lists from items in brackets.</summary>
public static class ListOf
{
    /// <summary>A list of these items.</summary>
    public static ListOf<T> Create<T>(ReadOnlySpan<T> items) => new([.. items]);
}
