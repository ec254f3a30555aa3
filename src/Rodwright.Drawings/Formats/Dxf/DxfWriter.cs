using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Formats.Dxf;

/// <summary>
/// Writes the DXF of release 2000 (AC1015), the plainest with light polylines and layer line widths. Same drawing, same bytes.
/// Structure after the published DXF reference: header, classes, tables, blocks, entities, objects.
/// </summary>
public static class DxfWriter
{
    /// <summary>The bytes of a file.</summary>
    public static byte[] Write(DxfDrawing drawing)
    {
        var body = new DxfTags();
        var structure = new DxfStructure(body);
        structure.WriteTables(drawing);
        structure.WriteBlocks();
        body.Add(0, "SECTION").Add(2, "ENTITIES");
        var entities = new DxfEntities(body, structure.ModelSpace);
        foreach (var entity in drawing.Entities) entities.Write(entity);
        body.Add(0, "ENDSEC");
        structure.WriteObjects();
        body.Add(0, "EOF");
        // The header names the first free handle, so it is written last.
        return DxfText1252.Bytes(Header(drawing.Bounds, body.NextUnused) + body.Text);
    }

    /// <summary>Name of a line pattern in the file.</summary>
    internal static string LineType(Dash dash) => dash == Dash.None ? "CONTINUOUS" : dash.Id.ToUpperInvariant();

    private static string Header(Box2 bounds, string nextHandle)
    {
        var tags = new DxfTags();
        tags.Add(999, "Rodwright").Add(0, "SECTION").Add(2, "HEADER");
        tags.Add(9, "$ACADVER").Add(1, "AC1015");
        tags.Add(9, "$DWGCODEPAGE").Add(3, "ANSI_1252");
        tags.Add(9, "$INSBASE").Point3(10, Point2.Origin);
        tags.Add(9, "$EXTMIN").Point3(10, new(bounds.MinX, bounds.MinY));
        tags.Add(9, "$EXTMAX").Point3(10, new(bounds.MaxX, bounds.MaxY));
        tags.Add(9, "$LIMMIN").Point(10, new(bounds.MinX, bounds.MinY));
        tags.Add(9, "$LIMMAX").Point(10, new(bounds.MaxX, bounds.MaxY));
        tags.Add(9, "$LTSCALE").Real(40, 1);
        tags.Add(9, "$INSUNITS").Add(70, 4); // millimetres
        tags.Add(9, "$MEASUREMENT").Add(70, 1); // metric
        tags.Add(9, "$LWDISPLAY").Add(290, 1);
        tags.Add(9, "$HANDSEED").Add(5, nextHandle);
        tags.Add(0, "ENDSEC").Add(0, "SECTION").Add(2, "CLASSES").Add(0, "ENDSEC");
        return tags.Text;
    }
}
