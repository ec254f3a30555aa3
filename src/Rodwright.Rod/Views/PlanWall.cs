using Rodwright.Geometry;

namespace Rodwright.Rod.Views;

/// <summary>A stretch of wall behind the strings of one side.</summary>
/// <param name="Face">Its face in plan, directed so that the wall lies to its left.</param>
/// <param name="Id">The wall it belongs to.</param>
/// <param name="StartsFree">Whether the wall goes on past the beginning of the face: a turn's newel stops it, the ends of the stair do not.</param>
/// <param name="EndsFree">Whether it goes on past the end of the face.</param>
public sealed record PlanWall(Path2 Face, string Id, bool StartsFree, bool EndsFree);
