namespace Rodwright.Stairs.Jobs;

/// <summary>How the foot of a wall string meets the floor's skirting, top edge to top edge.</summary>
public enum SkirtingJoint
{
    /// <summary>Cut plumb where its upper edge has come down to the skirting's height; the skirting butts square.</summary>
    Plumb,

    /// <summary>Cut on the line that halves the angle between its upper edge and the skirting's, so that mouldings run on; the skirting is cut to the same angle.</summary>
    Mitred,

    /// <summary>Its upper edge eased into the skirting's level top, and cut plumb there (trade-practice.md 3).</summary>
    Eased,
}
