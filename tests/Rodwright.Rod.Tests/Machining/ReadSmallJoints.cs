using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Tests.Machining;

/// <summary>Wedges, glue blocks and pegs put where they go, from their files and the files of what holds them: how far each is from closing, mm.</summary>
internal static class ReadSmallJoints
{
    /// <param name="joint">What is wedged, rubbed or driven.</param>
    /// <param name="small">The wedge, block or peg.</param>
    /// <param name="holds">String, tread, riser or newel it goes into.</param>
    /// <param name="wedged">The tread or riser a wedge presses on; null for the others.</param>
    public static double Gap(Joint joint, ReadPart small, ReadPart holds, ReadPart? wedged) => joint.Kind switch
    {
        JointKind.WedgeDriven => Wedge(small, holds, wedged!),
        JointKind.Rubbed => Rubbed(small, holds),
        JointKind.PegInBore => Peg(small, holds),
        _ => double.NaN,
    };

    /// <summary>One long side on the housing's slope, the other on the piece it presses home; on the bottom of the housing; outside the housing nowhere.</summary>
    private static double Wedge(ReadPart wedge, ReadPart board, ReadPart piece)
    {
        var frame = board.Frame(0);
        var corners = wedge.Outlines[0].Vertices.Select(v => wedge.Frame(0).ToWorld(v.At)).ToList();
        var local = corners.Select(frame.ToLocal).ToList();
        var isRiser = piece.Stands.Kind is PartKind.Riser or PartKind.TaperedRiser;
        var backs = isRiser ? Reach(piece, frame, local[0].W, local[0].W - wedge.Stands.FaceSide.Thickness) : [];
        var presses = isRiser
            ? backs.Min(back => local.Select(p => Math.Abs(p.Face.X - back)).Order().ElementAt(1))
            : corners.Select(c => Math.Abs(c.Z - piece.Bottom)).Order().ElementAt(1);
        return board.Cuts.Where(c => c.Operation == "HOUSING").Min(recess => new[]
        {
            local.Select(p => recess.Shape.DistanceTo(p.Face)).Order().ElementAt(1),
            local.Max(p => recess.Shape.Holds(p.Face) ? 0 : recess.Shape.DistanceTo(p.Face)),
            Math.Abs(local[0].W - wedge.Stands.FaceSide.Thickness + recess.Depth),
            presses,
        }.Max());
    }

    /// <summary>How far a riser reaches either way along a board, between two depths in it: its plan cut off at both.</summary>
    private static double[] Reach(ReadPart riser, Frame3 frame, double outer, double bottom)
    {
        var ring = riser.Plan.Select(p => frame.ToLocal(new(p.X, p.Y, frame.Origin.Z))).Select(p => new Point2(p.Face.X, p.W)).ToList();
        var within = new List<Point2>();
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            if (a.Y >= bottom - 1e-6 && a.Y <= outer) within.Add(a);
            foreach (var level in new[] { outer, bottom }) if (a.Y < level != b.Y < level) within.Add(a.Towards(b, (level - a.Y) / (b.Y - a.Y)));
        }
        return [within.Min(p => p.X), within.Max(p => p.X)];
    }

    /// <summary>Distance in plan from the plane of a riser's back.</summary>
    private static double OffBack(ReadPart riser, Point3 p) => Math.Abs(Math.Abs(riser.Frame(0).ToLocal(p).W) - riser.Stands.FaceSide.Thickness);

    private static double Rubbed(ReadPart block, ReadPart piece)
    {
        var corners = block.Outlines[0].Vertices.Select(v => block.Frame(0).ToWorld(v.At)).ToList();
        return (piece.Stands.Kind is PartKind.Riser or PartKind.TaperedRiser ? corners.Select(c => OffBack(piece, c)) : corners.Select(c => Math.Abs(c.Z - piece.Bottom))).Order().ElementAt(1);
    }

    private static double Peg(ReadPart peg, ReadPart post)
    {
        var (circle, depth) = (peg.Outlines[0].Bounds, peg.Stands.FaceSide.Thickness);
        var at = peg.Frame(0).ToWorld(circle.Centre);
        return post.Cuts.Where(c => c.Operation == "BORE")
            .Min(c => new[] { post.Frame(c.Face).ToWorld(c.Shape.Bounds.Centre).DistanceTo(at), Math.Abs(c.Shape.Bounds.Width - circle.Width), Math.Abs(c.Depth - depth) }.Max());
    }
}
