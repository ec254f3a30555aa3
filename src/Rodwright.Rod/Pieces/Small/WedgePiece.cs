using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Pieces.Small;

/// <summary>A wedge apart from its place: turned over it serves the other string just as well, so that two of one shape are one piece of work.</summary>
/// <param name="Length">Along the edge that lies against tread or riser, mm.</param>
/// <param name="Thin">Across at the thin end, mm.</param>
/// <param name="Thick">Across at the thick end, mm.</param>
/// <param name="Wide">Square to the string's face, mm.</param>
internal sealed record WedgePiece(double Length, double Thin, double Thick, double Wide)
{
    /// <summary>Read off a wedge: both its ends are square to the edge along its grain.</summary>
    public static WedgePiece Of(Part wedge)
    {
        var at = wedge.FaceSide.Outline.Moved(wedge.Blank.OnBoard).Vertices.Select(v => v.At).ToList();
        var middle = wedge.Blank.Length / 2;
        var ends = new[] { Across(at.Where(p => p.X < middle)), Across(at.Where(p => p.X >= middle)) };
        return new(wedge.Blank.Length, ends.Min(), ends.Max(), wedge.FaceSide.Thickness);

        static double Across(IEnumerable<Point2> end) => end.Max(p => p.Y) - end.Min(p => p.Y);
    }

    /// <summary>Thin end on the left, the square edge at the bottom.</summary>
    public Path2 Outline => Path2.Polygon(Point2.Origin, new(Length, 0), new(Length, Thick), new(0, Thin));

    /// <summary>How far it runs for each one it grows.</summary>
    public double Taper => Length / (Thick - Thin);

    /// <summary>Between its two long edges.</summary>
    public Angle Angle => Angle.OfPitch(Thick - Thin, Length);

    /// <summary>Whether both are one piece of work.</summary>
    public bool IsAs(WedgePiece other) => Near(Length, other.Length) && Near(Thin, other.Thin) && Near(Thick, other.Thick) && Near(Wide, other.Wide);

    private static bool Near(double a, double b) => Math.Abs(a - b) < Tolerance.Joint;
}
