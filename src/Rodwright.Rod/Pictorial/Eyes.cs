using Rodwright.Geometry;
using Rodwright.Geometry.Solids.Sight;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Scenes;

namespace Rodwright.Rod.Pictorial;

/// <summary>Where one stands to look at a stair and at its newels.</summary>
public static class Eyes
{
    /// <summary>Isometric, over the open side of the first flight, its bottom step towards the reader. Between two walls it is looked at over the inner side.</summary>
    public static ParallelView Whole(Stair stair)
    {
        var first = stair.Plan.Riser(1);
        var across = (first.Inner - first.Outer).Unit;
        var open = Room.Of(stair).Where(r => r.Kind == "wall").Sum(r => r.Looks.Dot(Vector3.Level(across)));
        return ParallelView.Isometric((open < -0.5 ? -1 : 1) * across - first.Up.Unit);
    }

    /// <summary>Up under one flight from behind, a little from the side the whole stair is looked at from: the backs of treads and risers are seen between the strings, where wedges are driven and blocks rubbed in.</summary>
    /// <param name="stair">The stair.</param>
    /// <param name="step">A step of the flight.</param>
    public static ParallelView Flight(Stair stair, int step)
    {
        var (riser, whole) = (stair.Plan.Riser(step), Whole(stair).Eye);
        var up = riser.Up.Unit;
        var aside = (up.Left.Dot(new(whole.X, whole.Y)) < 0 ? -0.45 : 0.45) * up.Left;
        return ParallelView.From(new(aside.X + up.X, aside.Y + up.Y, -0.95));
    }

    /// <summary>Isometric over the arris between two neighbouring faces of a newel.</summary>
    /// <param name="newel">A newel.</param>
    /// <param name="face">Index of the first face; the other is the next one round.</param>
    public static ParallelView Newel(Part newel, int face)
    {
        var ways = newel.Faces[face].Frame.W + newel.Faces[(face + 1) % newel.Faces.Length].Frame.W;
        return ParallelView.Isometric(new(ways.X, ways.Y));
    }
}
