using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Stairs.Plans;

/// <summary>Ids of newels, made in one place so that boundaries, sites and parts agree.</summary>
internal static class Ids
{
    public static string Bottom(Hand side) => side == Hand.Left ? "newel-bottom" : "newel-bottom-outer";

    public static string Top(Hand side) => side == Hand.Left ? "newel-top" : "newel-top-outer";

    /// <summary>A turn's newel; the second one of a half landing round a well, where asked for.</summary>
    public static string Turn(PlanShape shape, int turn, bool last)
    {
        var number = shape.Turns.Length == 1 ? "" : "-" + Number.Print(turn + 1, 0);
        return shape.Turns[turn].Between == 0 ? "newel-turn" + number : $"newel-turn{number}-{(last ? "upper" : "lower")}";
    }

    /// <summary>The newel at the outer corner of a turn that is open there; the second one of a half turn, where asked for.</summary>
    public static string Outer(PlanShape shape, int turn, bool last)
    {
        var number = shape.Turns.Length == 1 ? "" : "-" + Number.Print(turn + 1, 0);
        return shape.Turns[turn].Quarters == 1 ? "newel-corner" + number : $"newel-corner{number}-{(last ? "upper" : "lower")}";
    }
}
