using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Marks;

/// <summary>Marks that together stand for one thing, which a screen can pick and name.</summary>
public sealed record GroupMark : Mark
{
    /// <summary>A group.</summary>
    /// <param name="id">Id of the thing drawn; also its <see cref="Mark.Of"/>.</param>
    /// <param name="title">Its name for people.</param>
    /// <param name="marks">The marks, in drawing order.</param>
    public GroupMark(string id, string title, IEnumerable<Mark> marks) : base(Layer.Mixed, id)
    {
        Id = id;
        Title = title;
        Marks = [.. marks];
    }

    /// <summary>Id of the thing drawn.</summary>
    public string Id { get; }

    /// <summary>Its name for people.</summary>
    public string Title { get; }

    /// <summary>The marks, in drawing order.</summary>
    public ImmutableArray<Mark> Marks { get; }

    /// <inheritdoc/>
    public override Box2 Bounds => BoundsOf(Marks);

    /// <inheritdoc/>
    public override void Accept(IMarkVisitor visitor) => visitor.Visit(this);
}
