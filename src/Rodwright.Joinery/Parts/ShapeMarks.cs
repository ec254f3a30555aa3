using Rodwright.Geometry;

namespace Rodwright.Joinery.Parts;

/// <summary>Marks of small pieces: one for each shape, so that equal pieces share theirs.</summary>
/// <param name="letters">What every mark begins with.</param>
internal sealed class ShapeMarks(string letters)
{
    private readonly List<(Path2 Outline, Blank Blank)> shapes = [];

    /// <summary>The mark of an outline on its blank; a new one where no piece before had that shape, within 0.01 mm.</summary>
    public string Of(Path2 outline, Blank blank)
    {
        var i = shapes.FindIndex(s => IsSame(s, (outline, blank)));
        if (i < 0)
        {
            i = shapes.Count;
            shapes.Add((outline, blank));
        }
        return letters + Number.Print(i + 1, 0);
    }

    private static bool IsSame((Path2 Outline, Blank Blank) a, (Path2 Outline, Blank Blank) b) =>
        a.Outline.Vertices.Length == b.Outline.Vertices.Length && Math.Abs(a.Blank.Thickness - b.Blank.Thickness) < Tolerance.Joint
        && a.Outline.Vertices.Zip(b.Outline.Vertices).All(v =>
            (v.First.At - a.Blank.Corner - (v.Second.At - b.Blank.Corner)).Length < Tolerance.Joint && Math.Abs(v.First.Bulge - v.Second.Bulge) < 1e-6);
}
