using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Strings;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Things;

/// <summary>
/// Ids of everything that can be picked on the rod, one home for them: marks carry them, screens light them up in every view, and explanations are found by them.
/// </summary>
public static class ThingId
{
    /// <summary>The whole stair in plan.</summary>
    public const string Plan = "plan";

    /// <summary>The walking line.</summary>
    public const string WalkingLine = "walking-line";

    /// <summary>Centre lines of newel strings, on which newels stand.</summary>
    public const string CentreLine = "centre-line";

    /// <summary>The line through the pitch points, which edges of strings are set off from.</summary>
    public const string MarginLine = "margin-line";

    /// <summary>Corner of the room, where two wall strings meet.</summary>
    public const string Corner = "corner";

    /// <summary>Face of the wall on the outer side.</summary>
    public const string WallOuter = "wall-outer";

    /// <summary>Face of the wall on the side the stair turns to.</summary>
    public const string WallInner = "wall-inner";

    /// <summary>Level of the lower floor.</summary>
    public const string Floor = "floor";

    /// <summary>Level of a landing.</summary>
    public const string Landing = "landing";

    /// <summary>Level of the upper floor.</summary>
    public const string UpperFloor = "upper-floor";

    /// <summary>The well in the upper floor.</summary>
    public const string Well = "well";

    /// <summary>A sloping ceiling.</summary>
    public const string Ceiling = "ceiling";

    /// <summary>Width over the strings.</summary>
    public const string Width = "width";

    /// <summary>Width between the strings' faces.</summary>
    public const string ClearWidth = "clear-width";

    /// <summary>A part: its own id, for example tread-4.</summary>
    public static string Of(Part part) => part.Id;

    /// <summary>A cut of a part: newel-turn/mortice-1.</summary>
    public static string Of(Part part, Cut cut) => $"{part.Id}/{cut.Id}";

    /// <summary>A string's tenons at one end: the cut that leaves them.</summary>
    public static string Of(StringBoard board, StringTenon tenon) =>
        Of(board.Part, board.Part.Cuts.First(c => c.Kind == CutKind.TenonCheek && c.Joint == $"{board.Part.Id}/{tenon.Newel}"));

    /// <summary>A riser line and the figures on it, and the riser itself.</summary>
    public static string Riser(int number) => $"riser-{Number.Print(number, 0)}";

    /// <summary>The nosing line of a step; it belongs to the tread. At a landing or the upper floor, the nosing piece itself.</summary>
    public static string Nosing(int step) => $"nosing-{Number.Print(step, 0)}";

    /// <summary>The tread of a step; also its level in the strings.</summary>
    public static string Tread(int step) => $"tread-{Number.Print(step, 0)}";

    /// <summary>The going of a step, measured on the walking line.</summary>
    public static string Going(int step) => $"going-{Number.Print(step, 0)}";

    /// <summary>The level of a step: its tread, or the landing or floor that it is.</summary>
    public static string Level(StairPlan plan, int step) => plan.Steps[step - 1] switch
    {
        StepKind.Landing => Landing,
        StepKind.Floor => UpperFloor,
        _ => Tread(step),
    };

    /// <summary>The part an id belongs to: all before the slash.</summary>
    public static string PartOf(string id) => id.Split('/', 2)[0];
}
