using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Strings;

/// <summary>
/// One string as set out on its development, and the part it becomes. All points are (s, z): s along the face, z above the lower floor; the same numbers for
/// either hand.
/// </summary>
/// <param name="Site">Where it stands.</param>
/// <param name="PitchPoints">The development's pitch points.</param>
/// <param name="Margin">The development's margin line.</param>
/// <param name="UpperEdge">Eased, up to the head's level top or the corner.</param>
/// <param name="LowerEdge">Eased; a level cut on the floor comes first.</param>
/// <param name="Outline">The finished board, anticlockwise, tenons included.</param>
/// <param name="Easings">The development's easings.</param>
/// <param name="LeastWidth">Narrowest board that would hold the straight steps' housings, mm.</param>
/// <param name="Housings">Housings on its face.</param>
/// <param name="Tenons">Its tenons.</param>
/// <param name="Band">The stock board on the development: its four corners.</param>
/// <param name="Part">The piece itself.</param>
public sealed record StringBoard(
    StringSite Site, ImmutableArray<PitchPoint> PitchPoints, ImmutableArray<Point2> Margin, Path2 UpperEdge, Path2 LowerEdge, Path2 Outline,
    ImmutableArray<Easing> Easings, double LeastWidth, ImmutableArray<StringHousing> Housings, ImmutableArray<StringTenon> Tenons, Path2 Band, Part Part);
