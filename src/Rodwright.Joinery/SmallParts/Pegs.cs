using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.SmallParts;

/// <summary>A peg for every bore in a newel: as thick as the bore and as long as it is deep, cut off flush.</summary>
internal static class Pegs
{
    public static void Add(StairPlan plan, List<Part> parts, List<Joint> joints)
    {
        var (marks, n) = (new ShapeMarks("PG"), 0);
        foreach (var post in parts.Where(p => p.Kind.IsPost()).ToList())
        {
            foreach (var bore in post.Cuts.Where(c => c.Kind == CutKind.Bore))
            {
                n++;
                var face = post.Faces[bore.Face];
                var blank = Blank.Around(bore.Shape.Bounds, bore.Depth);
                var id = $"peg-{Number.Print(n, 0)}";
                parts.Add(new()
                {
                    Id = id, Name = $"peg {Number.Print(n, 0)}", Mark = marks.Of(bore.Shape, blank), Kind = PartKind.Peg, Material = plan.Job.SmallParts!.Timber,
                    Blank = blank, Faces = [new("end", new(face.Frame.Origin, face.Frame.U, face.Frame.V), bore.Shape, bore.Depth)],
                });
                joints.Add(new($"{id}/{post.Id}", JointKind.PegInBore, id, post.Id, bore.Depth));
            }
        }
    }
}
