namespace Rodwright.Rod.Machining;

/// <summary>What is to be done about what a cutter leaves.</summary>
public enum LeftKind
{
    /// <summary>A corner that the piece in the joint fills: squared by hand.</summary>
    Square,

    /// <summary>A corner in the wedge's room only, or beyond the end of a piece: it may stay round.</summary>
    MayStay,

    /// <summary>A place narrower than the cutter: a smaller cutter, or all of it by hand.</summary>
    Narrow,

    /// <summary>An arc of the outline tighter than the cutter: finished by hand, or with a smaller cutter.</summary>
    TightArc,

    /// <summary>Edges that all but touch, so that the cutter's way round them is not known: looked at before it is cut.</summary>
    NotFollowed,
}
