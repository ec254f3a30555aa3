using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Formats.Dxf;

/// <summary>The parts of a file that strict readers insist on: tables, the two spaces, and the root dictionary.</summary>
internal sealed class DxfStructure
{
    private readonly DxfTags tags;
    private readonly string paperSpace;
    private readonly string groups;
    private readonly string plotStyles;
    private readonly string plotStyle;
    private readonly string root;

    public DxfStructure(DxfTags tags)
    {
        this.tags = tags;
        root = tags.Handle();
        ModelSpace = tags.Handle();
        paperSpace = tags.Handle();
        groups = tags.Handle();
        plotStyles = tags.Handle();
        plotStyle = tags.Handle();
    }

    /// <summary>Handle of the model space, which owns the entities.</summary>
    public string ModelSpace { get; }

    public void WriteTables(DxfDrawing drawing)
    {
        tags.Add(0, "SECTION").Add(2, "TABLES");
        WriteViewport(drawing.Bounds);
        WriteLineTypes();
        WriteLayers(drawing.Layers);
        var table = OpenTable("STYLE", 1);
        Record("STYLE", table, "AcDbTextStyleTableRecord", "STANDARD");
        tags.Real(40, 0).Real(41, 1).Real(50, 0).Add(71, 0).Real(42, 2.5).Add(3, "txt").Add(4, "");
        EndTable();
        OpenTable("VIEW", 0);
        EndTable();
        OpenTable("UCS", 0);
        EndTable();
        Record("APPID", OpenTable("APPID", 1), "AcDbRegAppTableRecord", "ACAD");
        EndTable();
        table = OpenTable("DIMSTYLE", 1);
        tags.Add(100, "AcDbDimStyleTable");
        Record("DIMSTYLE", table, "AcDbDimStyleTableRecord", "STANDARD", handleCode: 105);
        EndTable();
        table = OpenTable("BLOCK_RECORD", 2);
        BlockRecord(table, ModelSpace, "*Model_Space");
        BlockRecord(table, paperSpace, "*Paper_Space");
        EndTable();
        tags.Add(0, "ENDSEC");
    }

    public void WriteBlocks()
    {
        tags.Add(0, "SECTION").Add(2, "BLOCKS");
        Block(ModelSpace, "*Model_Space", onPaper: false);
        Block(paperSpace, "*Paper_Space", onPaper: true);
        tags.Add(0, "ENDSEC");
    }

    public void WriteObjects()
    {
        tags.Add(0, "SECTION").Add(2, "OBJECTS");
        tags.Add(0, "DICTIONARY").Add(5, root).Add(330, "0").Add(100, "AcDbDictionary").Add(281, 1);
        tags.Add(3, "ACAD_GROUP").Add(350, groups).Add(3, "ACAD_PLOTSTYLENAME").Add(350, plotStyles);
        tags.Add(0, "DICTIONARY").Add(5, groups).Add(330, root).Add(100, "AcDbDictionary").Add(281, 1);
        tags.Add(0, "ACDBDICTIONARYWDFLT").Add(5, plotStyles).Add(330, root).Add(100, "AcDbDictionary").Add(281, 1);
        tags.Add(3, "Normal").Add(350, plotStyle).Add(100, "AcDbDictionaryWithDefault").Add(340, plotStyle);
        tags.Add(0, "ACDBPLACEHOLDER").Add(5, plotStyle).Add(330, plotStyles);
        tags.Add(0, "ENDSEC");
    }

    private void WriteViewport(Box2 bounds)
    {
        Record("VPORT", OpenTable("VPORT", 1), "AcDbViewportTableRecord", "*Active");
        tags.Point(10, Point2.Origin).Point(11, new(1, 1)).Point(12, bounds.Centre).Point(13, Point2.Origin).Point(14, new(10, 10)).Point(15, new(10, 10));
        tags.Point(16, Point2.Origin).Real(36, 1).Point3(17, Point2.Origin).Real(40, Math.Max(1, bounds.Height * 1.05)).Real(41, 1.5).Real(42, 50);
        tags.Real(43, 0).Real(44, 0).Real(50, 0).Real(51, 0).Add(71, 0).Add(72, 100).Add(73, 1).Add(74, 3);
        tags.Add(75, 0).Add(76, 0).Add(77, 0).Add(78, 0);
        EndTable();
    }

    private void WriteLineTypes()
    {
        var table = OpenTable("LTYPE", 2 + Dash.All.Count);
        LineType(table, "BYBLOCK", "", []);
        LineType(table, "BYLAYER", "", []);
        foreach (var dash in Dash.All)
        {
            // The format's patterns have lengths of their own; the pen each pattern is mostly drawn with gives them.
            var pen = dash == Dash.LongDot ? Pens.Centre : Pens.Hidden;
            LineType(table, DxfWriter.LineType(dash), dash.Title, [.. dash.Lengths.Select((l, i) => (i % 2 == 0 ? l : -l) * pen.Width)]);
        }
        EndTable();
    }

    private void LineType(string table, string name, string title, double[] lengths)
    {
        Record("LTYPE", table, "AcDbLinetypeTableRecord", name);
        tags.Add(3, title).Add(72, 65).Add(73, lengths.Length).Real(40, lengths.Sum(Math.Abs));
        foreach (var length in lengths) tags.Real(49, length).Add(74, 0);
    }

    private void WriteLayers(IReadOnlyCollection<DxfLayer> layers)
    {
        var table = OpenTable("LAYER", layers.Count + 1);
        Layer(new("0", 7, 0.25, Dash.None));
        foreach (var layer in layers.Where(l => l.Name != "0")) Layer(layer);
        EndTable();

        void Layer(DxfLayer layer)
        {
            Record("LAYER", table, "AcDbLayerTableRecord", DxfText1252.LayerName(layer.Name));
            tags.Add(62, layer.Colour).Add(6, DxfWriter.LineType(layer.Dash)).Add(370, DxfEntities.Width(layer.LineWidth)).Add(390, plotStyle);
        }
    }

    private string OpenTable(string name, int count)
    {
        var handle = tags.Handle();
        tags.Add(0, "TABLE").Add(2, name).Add(5, handle).Add(330, "0").Add(100, "AcDbSymbolTable").Add(70, count);
        return handle;
    }

    private void EndTable() => tags.Add(0, "ENDTAB");

    private void Record(string kind, string table, string subclass, string name, int handleCode = 5)
    {
        tags.Add(0, kind).Add(handleCode, tags.Handle()).Add(330, table);
        tags.Add(100, "AcDbSymbolTableRecord").Add(100, subclass).Add(2, name).Add(70, 0);
    }

    private void BlockRecord(string table, string handle, string name)
    {
        tags.Add(0, "BLOCK_RECORD").Add(5, handle).Add(330, table);
        tags.Add(100, "AcDbSymbolTableRecord").Add(100, "AcDbBlockTableRecord").Add(2, name);
    }

    private void Block(string owner, string name, bool onPaper)
    {
        Start("BLOCK");
        tags.Add(100, "AcDbBlockBegin").Add(2, name).Add(70, 0).Point3(10, Point2.Origin).Add(3, name).Add(1, "");
        Start("ENDBLK");
        tags.Add(100, "AcDbBlockEnd");

        void Start(string kind)
        {
            tags.Add(0, kind).Add(5, tags.Handle()).Add(330, owner).Add(100, "AcDbEntity");
            if (onPaper) tags.Add(67, 1);
            tags.Add(8, "0");
        }
    }
}
