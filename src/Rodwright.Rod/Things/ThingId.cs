using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

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

    /// <summary>A part: its own id, for example tread-4.</summary>
    public static string Of(Part part) => part.Id;

    /// <summary>A cut of a part: newel-turn/mortice-1.</summary>
    public static string Of(Part part, Cut cut) => $"{part.Id}/{cut.Id}";

    /// <summary>A riser line and the figures on it, and the riser itself.</summary>
    public static string Riser(int number) => $"riser-{Number.Print(number, 0)}";

    /// <summary>The nosing line of a step; it belongs to the tread.</summary>
    public static string Nosing(int step) => $"nosing-{Number.Print(step, 0)}";

    /// <summary>The part an id belongs to: all before the slash.</summary>
    public static string PartOf(string id) => id.Split('/', 2)[0];
}
