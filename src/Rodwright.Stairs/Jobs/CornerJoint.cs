namespace Rodwright.Stairs.Jobs;

/// <summary>How two wall strings meet at the corner of the room (trade-practice.md 3).</summary>
public enum CornerJoint
{
    /// <summary>The upper one's whole end let into the lower one's face.</summary>
    Housed,

    /// <summary>A tongue in the middle of the upper one's end, in a groove in the lower one's face.</summary>
    Tongued,

    /// <summary>Tails on the upper one's end, lapped into sockets in the lower one's end.</summary>
    Dovetailed,
}
