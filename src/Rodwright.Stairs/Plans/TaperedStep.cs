using Rodwright.Geometry;

namespace Rodwright.Stairs.Plans;

/// <summary>What is measured on a tapered step; all on riser faces, mm.</summary>
/// <param name="Number">Step number.</param>
/// <param name="GoingChord">Going on the walking line, straight across.</param>
/// <param name="GoingArc">Going along the walking line.</param>
/// <param name="NosingGoing">Going straight across on the walking line from nosing to nosing, reported beside the going on riser faces.</param>
/// <param name="OuterGoing">Going straight across on the second measuring line, where the regulation has one.</param>
/// <param name="NarrowAlongFaces">Narrow end along the newel's and string's faces; the jog between them is not counted.</param>
/// <param name="NarrowStraight">Narrow end straight across.</param>
/// <param name="NarrowTreadWidth">Narrow end as tread width: along the faces and the nosing.</param>
/// <param name="Wide">Wide end along the wall faces, round the corner.</param>
/// <param name="Taper">Angle between its two riser faces.</param>
public sealed record TaperedStep(
    int Number, double GoingChord, double GoingArc, double NosingGoing, double? OuterGoing,
    double NarrowAlongFaces, double NarrowStraight, double NarrowTreadWidth, double Wide, Angle Taper);
