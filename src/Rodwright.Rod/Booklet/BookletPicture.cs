using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Geometry;

namespace Rodwright.Rod.Booklet;

/// <summary>A picture of the rod so far, ready to be drawn in a box of paper as high as it asks for.</summary>
/// <param name="Height">mm of paper.</param>
/// <param name="Scale">Its scale.</param>
/// <param name="Draw">Given its box.</param>
internal sealed record BookletPicture(double Height, Scale Scale, Func<Box2, IReadOnlyList<Mark>> Draw);
