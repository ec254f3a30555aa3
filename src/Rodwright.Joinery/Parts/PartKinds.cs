namespace Rodwright.Joinery.Parts;

/// <summary>What kinds of parts have in common.</summary>
public static class PartKinds
{
    /// <summary>Strings and the newels they are tenoned into: what carries the steps.</summary>
    public static bool IsCarrier(this PartKind kind) => kind is PartKind.WallString or PartKind.NewelString or PartKind.Newel;

    /// <summary>Posts, worked on several upright faces.</summary>
    public static bool IsPost(this PartKind kind) => kind is PartKind.Newel or PartKind.WallNewel;

    /// <summary>What is fitted to the stair once it stands: rails, balusters, caps.</summary>
    public static bool IsFitted(this PartKind kind) => !kind.IsCarrier() && !kind.IsOfStep();

    /// <summary>Pieces of a step: treads, risers, nosing pieces, and what a rounded bottom step is made of.</summary>
    public static bool IsOfStep(this PartKind kind) => kind is PartKind.Tread or PartKind.TaperedTread or PartKind.Riser or PartKind.TaperedRiser or PartKind.NosingPiece
        or PartKind.BentRiser or PartKind.Block or PartKind.Wedges;
}
