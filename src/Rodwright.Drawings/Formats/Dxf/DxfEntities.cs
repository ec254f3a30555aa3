using System.Diagnostics;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Formats.Dxf;

/// <summary>Writes entities into the model space.</summary>
internal sealed class DxfEntities(DxfTags tags, string modelSpace)
{
    // Widths the format knows, in hundredths of a millimetre.
    private static readonly int[] Widths =
        [0, 5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100, 106, 120, 140, 158, 200, 211];

    public static int Width(double millimetres) => Widths.MinBy(w => Math.Abs(w - 100 * millimetres));

    public void Write(DxfEntity entity)
    {
        switch (entity)
        {
            case DxfPath path: WritePath(path); break;
            case DxfText text: WriteText(text); break;
            case DxfFill fill: WriteFill(fill); break;
            default: throw new UnreachableException();
        }
    }

    private void WritePath(DxfPath entity)
    {
        var path = entity.Path;
        var v = path.Vertices;
        if (v.Length == 2 && !path.Closed && v[0].Bulge == 0)
        {
            Start("LINE", entity.Layer, entity.Pen);
            tags.Add(100, "AcDbLine").Point3(10, v[0].At).Point3(11, v[1].At);
        }
        else if (v.Length == 2 && path.Closed && Math.Abs(v[0].Bulge) == 1 && v[0].Bulge == v[1].Bulge)
        {
            Start("CIRCLE", entity.Layer, entity.Pen);
            tags.Add(100, "AcDbCircle").Point3(10, v[0].At.Towards(v[1].At, 0.5)).Real(40, v[0].At.DistanceTo(v[1].At) / 2);
        }
        else
        {
            Start("LWPOLYLINE", entity.Layer, entity.Pen);
            tags.Add(100, "AcDbPolyline").Add(90, v.Length).Add(70, path.Closed ? 1 : 0).Real(43, 0);
            foreach (var vertex in v)
            {
                tags.Point(10, vertex.At);
                if (vertex.Bulge != 0) tags.Real(42, vertex.Bulge);
            }
        }
    }

    private void WriteText(DxfText entity)
    {
        var text = entity.Text;
        Start("TEXT", entity.Layer, null);
        tags.Add(100, "AcDbText").Point3(10, text.BaselineStart).Real(40, text.Height).Add(1, DxfText1252.Escaped(text.Text));
        if (text.Turn.Radians != 0) tags.Real(50, text.Turn.Degrees);
        tags.Add(7, "STANDARD");
        // Anchors go into the file, so that lettering stays centred in whatever face the reader has.
        var anchored = text.Horizontal != HorizontalAnchor.Start || text.Vertical != VerticalAnchor.Baseline;
        if (anchored) tags.Add(72, (int)text.Horizontal).Point3(11, text.At);
        tags.Add(100, "AcDbText");
        if (anchored) tags.Add(73, text.Vertical == VerticalAnchor.Middle ? 2 : 0);
    }

    private void WriteFill(DxfFill entity)
    {
        Start("HATCH", entity.Layer, null, Grey(entity.Tint));
        tags.Add(100, "AcDbHatch").Point3(10, Point2.Origin).Real(210, 0).Real(220, 0).Real(230, 1);
        tags.Add(2, "SOLID").Add(70, 1).Add(71, 0).Add(91, entity.Outlines.Length);
        foreach (var outline in entity.Outlines)
        {
            var bulged = outline.Vertices.Any(v => v.Bulge != 0);
            tags.Add(92, 3).Add(72, bulged ? 1 : 0).Add(73, 1).Add(93, outline.Vertices.Length); // 3: external, polyline
            foreach (var vertex in outline.Vertices)
            {
                tags.Point(10, vertex.At);
                if (bulged) tags.Real(42, vertex.Bulge);
            }
            tags.Add(97, 0);
        }
        tags.Add(75, 0).Add(76, 1).Add(98, 0); // 0: by the even-odd rule
    }

    private void Start(string kind, DxfLayer layer, Pen? pen, int? colour = null)
    {
        tags.Add(0, kind).Add(5, tags.Handle()).Add(330, modelSpace).Add(100, "AcDbEntity").Add(8, DxfText1252.LayerName(layer.Name));
        if (pen is not null && pen.Dash != layer.Dash) tags.Add(6, DxfWriter.LineType(pen.Dash));
        if (colour is { } index) tags.Add(62, index);
        if (pen is not null && Width(pen.Width) != Width(layer.LineWidth)) tags.Add(370, Width(pen.Width));
    }

    // 250 to 255 of the colour index run from dark grey to near white; 7 is black on paper.
    private static int Grey(double tint) => tint > 0.9 ? 7 : 250 + (int)Math.Round(Math.Clamp((0.8 - tint) / 0.2, 0, 4));
}
