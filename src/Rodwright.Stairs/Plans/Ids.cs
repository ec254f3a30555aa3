using Rodwright.Stairs.Jobs;

namespace Rodwright.Stairs.Plans;

/// <summary>Ids of strings and newels, made in one place so that boundaries, sites and parts agree.</summary>
internal static class Ids
{
    public const string BottomNewel = "newel-bottom";
    public const string TurnNewel = "newel-turn";
    public const string TopNewel = "newel-top";
    public const string OuterBottomNewel = "newel-bottom-outer";
    public const string OuterTopNewel = "newel-top-outer";

    /// <summary>The outer side's string of flight 1 or 2. Wall strings are numbered outer side first.</summary>
    public static string Outer(PlanShape shape, int flight) =>
        shape.Job.OuterSide == SideKind.Wall ? $"wall-string-{flight}" : $"newel-string-{flight + (shape.Job.InnerSide == SideKind.Open ? 1 : 0)}";

    /// <summary>The inner side's string of flight 1 or 2; numbered on from the outer side's when both are of one kind.</summary>
    public static string Inner(PlanShape shape, int flight)
    {
        if (shape.Job.InnerSide == SideKind.Open) return $"newel-string-{(shape.HasTurn && shape.Before == 0 ? 1 : flight)}";
        var outers = shape.Job.OuterSide == SideKind.Wall ? shape.HasTurn ? 2 : 1 : 0;
        return $"wall-string-{outers + (shape.HasTurn && shape.Before == 0 ? 1 : flight)}";
    }
}
