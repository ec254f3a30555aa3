namespace Rodwright.Drawings.Marks;

/// <summary>One method for each kind of mark and no default, so that a new kind does not compile until every writer knows it.</summary>
public interface IMarkVisitor
{
    /// <summary>A line.</summary>
    void Visit(StrokeMark mark);

    /// <summary>A tinted shape.</summary>
    void Visit(FillMark mark);

    /// <summary>A line of lettering.</summary>
    void Visit(TextMark mark);

    /// <summary>Marks seen through a window.</summary>
    void Visit(ClipMark mark);

    /// <summary>Marks that stand for one thing.</summary>
    void Visit(GroupMark mark);
}
