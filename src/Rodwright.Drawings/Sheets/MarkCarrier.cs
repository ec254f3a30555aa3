using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets;

/// <summary>Carries marks of every kind through a placement.</summary>
internal sealed class MarkCarrier(Placement placement) : IMarkVisitor
{
    /// <summary>The last mark visited, carried.</summary>
    public Mark Carried { get; private set; } = null!;

    public void Visit(StrokeMark mark) => Carried = mark with { Path = placement.Map(mark.Path) };

    public void Visit(FillMark mark) => Carried = new FillMark(mark.Outlines.Select(placement.Map), mark.Tint, mark.Layer, mark.Of);

    public void Visit(TextMark mark) =>
        Carried = mark with { At = placement.Map(mark.At), Turn = Angle.FromRadians(mark.Turn.Radians + placement.Turn.Radians) };

    public void Visit(ClipMark mark)
    {
        var quarters = placement.Turn.Radians / (Math.PI / 2);
        if (Math.Abs(quarters - Math.Round(quarters)) > 1e-9) throw new ArgumentException("a window can only be turned by quarter turns");
        Carried = new ClipMark(placement.Map(mark.Window), Carry(mark.Marks), mark.Of);
    }

    public void Visit(GroupMark mark) => Carried = new GroupMark(mark.Id, mark.Title, Carry(mark.Marks));

    private IEnumerable<Mark> Carry(IEnumerable<Mark> marks) => marks.Select(placement.Map);
}
