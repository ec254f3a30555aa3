namespace Rodwright.Stairs.Regulations;

/// <summary>How a regulation measures the going of a tapered step on the walking line.</summary>
public enum GoingMeasure
{
    /// <summary>Straight across between the two crossings.</summary>
    Chord,

    /// <summary>Along the line.</summary>
    Arc,
}
