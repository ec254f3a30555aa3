namespace Rodwright.Geometry.Solids.Sight;

/// <summary>An edge of a solid that is drawn, and how the faces at either side of it look.</summary>
/// <param name="Solid">Index of its solid.</param>
/// <param name="From">Begins here, on the picture.</param>
/// <param name="To">Ends here.</param>
/// <param name="FromNear">How near the eye it begins, mm.</param>
/// <param name="ToNear">How near it ends.</param>
/// <param name="Left">Index of the face at one side, among all faces of the scene.</param>
/// <param name="Right">The face at the other.</param>
/// <param name="IsOpen">Whether the wood beside it leaves it free to be seen.</param>
/// <param name="IsContour">Whether one of its faces looks away.</param>
internal readonly record struct SightLine(
    int Solid, Point2 From, Point2 To, double FromNear, double ToNear, int Left, int Right, bool IsOpen, bool IsContour)
{
    // A face at a smaller sine than this to the line of sight is looked along.
    private const double Along = 1e-9;

    /// <summary>
    /// The edges of a solid that a draughtsman lines in: arrises, and of rounds the lines where they turn out of sight. An edge that is looked along is a point, and none.
    /// </summary>
    public static IEnumerable<SightLine> Of(Solid solid, int index, int firstFace, ParallelView view)
    {
        var sides = new Dictionary<(int, int), int>();
        for (var f = 0; f < solid.Faces.Length; f++)
            foreach (var loop in solid.Faces[f].Loops)
                for (int i = loop.Length - 1, j = 0; j < loop.Length; i = j++) sides[(loop[i], loop[j])] = f;
        foreach (var ((from, to), left) in sides)
        {
            if (from > to) continue;
            if (!sides.TryGetValue((to, from), out var right)) throw new ArgumentException("a solid is not closed", nameof(solid));
            var (a, b) = (solid.Faces[left], solid.Faces[right]);
            var (looksA, looksB) = (Math.Sign(Round(view.Eye.Dot(a.Normal))), Math.Sign(Round(view.Eye.Dot(b.Normal))));
            var contour = (looksA > 0) != (looksB > 0);
            if (!contour && Crease.IsSmooth(a, b)) continue;
            var (p, q) = (solid.Vertices[from], solid.Vertices[to]);
            // The first face runs inwards from the edge to its left: below the other's plane at an arris, above it in an inner corner.
            var isInner = b.Normal.Dot(a.Normal.Cross(q - p)) > 0;
            var open = isInner ? looksA >= 0 && looksB >= 0 && looksA + looksB > 0 : looksA > 0 || looksB > 0;
            var (at, end) = (view.At(p), view.At(q));
            if (at.DistanceTo(end) > Tolerance.Weld)
                yield return new(index, at, end, view.Nearness(p), view.Nearness(q), firstFace + left, firstFace + right, open, contour);
        }

        static double Round(double sine) => Math.Abs(sine) < Along ? 0 : sine;
    }
}
