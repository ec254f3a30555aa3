using Rodwright.Geometry;

namespace Rodwright.Drawings.Marks;

/// <summary>Marks taken out of their groups and windows, in drawing order.</summary>
public static class FlatMarks
{
    /// <summary>The strokes, fills and texts among the marks, each with the window it is seen through (null: none). Marks wholly outside their window are left out.</summary>
    public static IReadOnlyList<(Mark Mark, Box2? Window)> Of(IEnumerable<Mark> marks)
    {
        var flattener = new Flattener();
        foreach (var mark in marks) mark.Accept(flattener);
        return flattener.Found;
    }

    private sealed class Flattener : IMarkVisitor
    {
        private Box2? window;

        public List<(Mark, Box2?)> Found { get; } = [];

        public void Visit(StrokeMark mark) => Take(mark);

        public void Visit(FillMark mark) => Take(mark);

        public void Visit(TextMark mark) => Take(mark);

        public void Visit(GroupMark mark)
        {
            foreach (var inner in mark.Marks) inner.Accept(this);
        }

        public void Visit(ClipMark mark)
        {
            var outer = window;
            var w = mark.Window;
            window = outer is { } o
                ? new(Math.Max(o.MinX, w.MinX), Math.Max(o.MinY, w.MinY), Math.Min(o.MaxX, w.MaxX), Math.Min(o.MaxY, w.MaxY))
                : w;
            foreach (var inner in mark.Marks) inner.Accept(this);
            window = outer;
        }

        private void Take(Mark mark)
        {
            if (window is { } w)
            {
                var b = mark.Bounds;
                if (b.IsEmpty || b.MinX > w.MaxX || b.MaxX < w.MinX || b.MinY > w.MaxY || b.MaxY < w.MinY) return;
            }
            Found.Add((mark, window));
        }
    }
}
