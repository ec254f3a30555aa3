using Rodwright.Drawings.Formats.Dxf;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Machining;

/// <summary>
/// The layers of a part's drawing, named in this one place: the operation, then its depth in millimetres, as HOUSING-12; a decimal point is written
/// as an underscore, HOUSING-12_5. A newel's layers begin with the face they are cut in, as S-MORTICE-62.
/// </summary>
public static class MachiningLayers
{
    /// <summary>Finished outline, cut right through.</summary>
    public static DxfLayer Outline { get; } = new("OUTLINE", 7, 0.5, Dash.None);

    /// <summary>The square-edged board the part lies in. Not cut.</summary>
    public static DxfLayer Blank { get; } = new("BLANK", 8, 0.18, Dash.None);

    /// <summary>Pieces glued to the board's edges before it is cut. Not cut.</summary>
    public static DxfLayer Jointed { get; } = new("JOINTED", 9, 0.18, Dash.Short);

    /// <summary>Outline of a riser's top edge, which shows its bevelled ends; drawn above its face.</summary>
    public static DxfLayer TopEdge { get; } = new("TOP-EDGE", 4, 0.35, Dash.None);

    /// <summary>Lettering, arrows and seats: pencilled, not cut.</summary>
    public static DxfLayer Marking { get; } = new("MARKING", 3, 0.18, Dash.None);

    /// <summary>What a round cutter leaves in inside corners. Not cut: squared by hand where the list says so.</summary>
    public static DxfLayer ToolRadius { get; } = new("TOOL-RADIUS", 11, 0.18, Dash.None);

    /// <summary>Opening of a router jig, cut right through its plate.</summary>
    public static DxfLayer JigOpening { get; } = new("JIG-OPENING", 7, 0.5, Dash.None);

    /// <summary>Edge of a router jig's plate; any plate no smaller will do.</summary>
    public static DxfLayer JigPlate { get; } = new("JIG-PLATE", 8, 0.18, Dash.None);

    /// <summary>The housing a router jig makes, and the lines it is laid by: pencilled.</summary>
    public static DxfLayer JigLines { get; } = new("JIG-LINES", 3, 0.18, Dash.None);

    /// <summary>The layer of a cut: its operation and depth; for a bore the depth (its diameter is lettered beside it), for a rounded edge the radius; where it begins below the face, from which depth to which: GROOVE-13_5-TO-54_5.</summary>
    public static DxfLayer Of(Cut cut)
    {
        var (operation, colour) = cut.Kind switch
        {
            CutKind.Housing => ("HOUSING", 1),
            CutKind.CornerHousing => ("CORNER-HOUSING", 30),
            CutKind.Dovetail => ("DOVETAIL", 31),
            CutKind.Mortice => ("MORTICE", 6),
            CutKind.Haunch => ("HAUNCH", 200),
            CutKind.TenonCheek => ("CHEEK", 5),
            CutKind.Bore => ("BORE", 2),
            CutKind.Notch => ("NOTCH", 32),
            CutKind.Split => ("SPLIT", 33),
            CutKind.RoundedEdge => ("ROUND", 150),
            CutKind.Cheek => ("TENON-CHEEK", 5),
            CutKind.Groove => ("GROOVE", 140),
            CutKind.Recess => ("RECESS", 34),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        var depth = cut.Beneath == 0 ? Number.Print(cut.Depth, 2) : $"{Number.Print(cut.Beneath, 2)}-TO-{Number.Print(cut.Depth, 2)}";
        return new($"{operation}-{depth.Replace('.', '_')}", colour, 0.35, Dash.None);
    }

    /// <summary>A layer of one face of a newel.</summary>
    public static DxfLayer OnFace(DxfLayer layer, string looks) => layer with { Name = $"{looks.ToUpperInvariant().Replace(' ', '-')}-{layer.Name}" };
}
