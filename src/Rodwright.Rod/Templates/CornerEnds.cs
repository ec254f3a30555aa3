using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Templates;

/// <summary>Dovetailed corners at full size: the upper string's tails on its face side, and beside them the sockets as one looks at the lower string's end.</summary>
internal static class CornerEnds
{
    private const double Body = 60; // of the upper board shown beyond the corner, mm
    private const double Apart = 70; // of the two drawings, room for figures, mm

    public static IEnumerable<Sheet> Sheets(RodJob rod) => rod.Stair.Kit.Joints.Where(j => j.Kind == JointKind.Corner && rod.Stair.Kit.Find(j.Female).Cuts.Any(c => c.Kind == CutKind.Dovetail)).Select((j, i) => Sheet(rod, j, i));

    private static Sheet Sheet(RodJob rod, Joint joint, int index)
    {
        var (upper, lower) = (rod.Stair.Kit.Strings.First(s => s.Part.Id == joint.Male), rod.Stair.Kit.Find(joint.Female));
        var sign = StringEnds.SignOf(upper);
        var corner = sign * upper.Site.Lower.At;
        var sockets = lower.Cuts.Where(c => c.Kind == CutKind.Dovetail).ToList();
        var lap = sockets[0].Shape.Bounds.Width;
        var (low, high) = (upper.LowerEdge.Vertices[0].At.Y, upper.UpperEdge.Vertices[0].At.Y);
        var (from, to) = sign > 0 ? (corner - lap - 1, corner + Body) : (corner - Body, corner + lap + 1);
        var window = new Box2(from, Math.Min(low, GraphCut.HeightAt(upper.LowerEdge, upper.Site.Lower.At + Body)) - 2, to, Math.Max(high, GraphCut.HeightAt(upper.UpperEdge, upper.Site.Lower.At + Body)) + 2);
        var drawing = new TemplateDrawing(rod.Units);
        drawing.Add([new ClipMark(window, [new StrokeMark(upper.Part.FaceSide.Outline, Pens.Outline, Layer.OutlineToCut)])]);
        drawing.Line(Pens.Hidden, Layer.Hidden, new(corner, low), new(corner, high));
        // The end grain beside it: the face of the lower string is where the mouths are.
        var thick = lower.FaceSide.Thickness;
        var end = lower.Faces[1].Outline.Bounds;
        var shift = window.MaxX + Apart - end.MinX;
        drawing.Path(Path2.Rectangle(end.MinX + shift, low, end.MinX + shift + thick, high), Pens.Outline, Layer.OutlineToCut);
        foreach (var socket in sockets) drawing.Path(socket.Shape.Moved(new Vector2(shift, 0)), Pens.Visible, Layer.Housing);
        // Along the tails' ends, which are the sockets' bottoms; and along the mouths.
        var tips = sockets.SelectMany(s => new[] { s.Shape.Vertices.Min(v => v.At.Y), s.Shape.Vertices.Max(v => v.At.Y) }).Append(low).Append(high).Order().ToList();
        var mouths = sockets.Select(s => s.Shape.Vertices.Select(v => v.At.Y).Order().ToList()).SelectMany(y => new[] { y[1], y[2] }).Append(low).Append(high).Order().ToList();
        drawing.ChainLeft(window.MinX, [.. tips.Select(y => new Point2(window.MinX, y))]);
        drawing.ChainRight(end.MinX + shift + thick, [.. mouths.Select(y => new Point2(end.MinX + shift + thick, y))]);
        var slope = rod.Stair.Job.Practice.CornerSlope;
        drawing.Notes($"{upper.Part.Mark} in {lower.Mark}",
            $"On the left the tails of {upper.Part.Mark}, looking at its face side, {rod.Units.Print(lap)} long, 1 in {Number.Print(slope, 2)}; figures along their ends. On the right the end of {lower.Mark}, looking at its end grain: sockets "
            + $"{rod.Units.Print(sockets[0].Depth)} deep along the board; figures along their mouths, on the face side.", Math.Max(end.MinX + shift + thick - window.MinX, 150));
        return TrueSheet.Of(rod, new($"template-corner-{Number.Print(index + 1, 0)}", $"Template, dovetailed corner {upper.Part.Mark} in {lower.Mark}", "dovetailed corner", upper.Part.Mark, "Full size"), drawing.Marks);
    }
}
