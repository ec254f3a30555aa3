using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Tables;

/// <summary>Parts that are one shape: cut from one setting, drawn once, listed with their number.</summary>
/// <param name="Parts">The parts, in the kit's order.</param>
public sealed record EqualParts(ImmutableArray<Part> Parts)
{
    /// <summary>The part that stands for all.</summary>
    public Part First => Parts[0];

    /// <summary>The marks of all: T5, or "T5 to T11" for a run, "T3, T5" otherwise.</summary>
    public string Marks
    {
        get
        {
            // Small pieces of one shape share a mark; each is told once.
            var marked = Parts.DistinctBy(p => p.Mark).ToList();
            var runs = new List<string>();
            for (var i = 0; i < marked.Count;)
            {
                var j = i;
                while (j + 1 < marked.Count && marked[j + 1].Step == marked[j].Step + 1) j++;
                runs.Add(i == j ? marked[i].Mark : j == i + 1 ? $"{marked[i].Mark}, {marked[j].Mark}" : $"{marked[i].Mark} to {marked[j].Mark}");
                i = j + 1;
            }
            return string.Join(", ", runs);
        }
    }

    /// <summary>Parts sorted into groups of one shape, within 0.01 mm, in the order their first ones come.</summary>
    public static ImmutableArray<EqualParts> Of(IEnumerable<Part> parts)
    {
        var groups = new List<List<Part>>();
        foreach (var part in parts)
        {
            if (groups.Find(g => AreEqual(g[0], part)) is { } group) group.Add(part);
            else groups.Add([part]);
        }
        return [.. groups.Select(g => new EqualParts([.. g]))];
    }

    private static bool AreEqual(Part a, Part b) =>
        a.Kind == b.Kind && a.Material == b.Material && Near(a.Blank.Thickness, b.Blank.Thickness)
        && Near(a.Blank.Length, b.Blank.Length) && Near(a.Blank.Width, b.Blank.Width)
        && a.Faces.Length == b.Faces.Length && a.Cuts.Length == b.Cuts.Length
        && Enumerable.Range(0, a.Faces.Length).All(i => Near(a.Faces[i].Thickness, b.Faces[i].Thickness) && Same(a, a.Faces[i].Outline, b, b.Faces[i].Outline, i))
        && a.Cuts.Zip(b.Cuts).All(c => c.First.Kind == c.Second.Kind && c.First.Face == c.Second.Face && Near(c.First.Depth, c.Second.Depth) && Near(c.First.Beneath, c.Second.Beneath)
            && Same(a, c.First.Shape, b, c.Second.Shape, c.First.Face));

    private static bool Same(Part a, Path2 p, Part b, Path2 q, int face)
    {
        if (p.Vertices.Length != q.Vertices.Length) return false;
        // Faces other than the first share the blank's left end, and their own zero across.
        var (pa, pb) = (a.Blank.Corner, b.Blank.Corner);
        if (a.Kind == PartKind.Newel) pa = pb = Point2.Origin;
        else if (face > 0) (pa, pb) = (new(pa.X, 0), new(pb.X, 0));
        return p.Vertices.Zip(q.Vertices).All(v => (v.First.At - pa - (v.Second.At - pb)).Length < Tolerance.Joint && Math.Abs(v.First.Bulge - v.Second.Bulge) < 1e-6);
    }

    private static bool Near(double a, double b) => Math.Abs(a - b) < Tolerance.Joint;
}
