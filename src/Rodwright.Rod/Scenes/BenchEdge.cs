using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Views;

namespace Rodwright.Rod.Scenes;

/// <summary>A straight stretch of the face edge's arris, as it lies on the face side.</summary>
/// <param name="Face">The face side.</param>
/// <param name="From">One end, in the face's frame.</param>
/// <param name="To">The other end; the wood lies to the left.</param>
/// <param name="Thickness">Across the edge, mm.</param>
/// <param name="Round">Radius of the edge where it is rounded; 0 for a square one.</param>
/// <param name="Edge">The face edge where it is a face of its own; null for the edge of a board.</param>
internal sealed record BenchEdge(PartFace Face, Point2 From, Point2 To, double Thickness, double Round = 0, PartFace? Edge = null)
{
    /// <summary>Unit direction along the arris.</summary>
    public Vector2 Along => (To - From).Unit;

    /// <summary>Unit direction into the wood.</summary>
    public Vector2 Inward => Along.Left;

    /// <summary>The stretches of a part: of a board's upper or front edge, of the arris between two faces of a newel.</summary>
    public static ImmutableArray<BenchEdge> Of(Part part)
    {
        var face = part.FaceSide;
        switch (part.Kind)
        {
            case PartKind.Newel:
                var (side, edge) = BenchFaces.OfNewel(part);
                var post = part.Faces[side];
                var box = post.Outline.Bounds;
                var rightHand = edge == (side + 1) % 4;
                return [rightHand
                    ? new(post, new(box.MaxX, box.MinY), new(box.MaxX, box.MaxY), post.Thickness, 0, part.Faces[edge])
                    : new(post, new(box.MinX, box.MaxY), new(box.MinX, box.MinY), post.Thickness, 0, part.Faces[edge])];
            case PartKind.Tread or PartKind.TaperedTread or PartKind.NosingPiece:
                var round = part.Cuts.First(c => c.Kind == CutKind.RoundedEdge).Depth;
                return [.. Edges(face).Where(e => e.Inward.Y > 1 - 1e-9 && Math.Abs(e.From.Y) < Tolerance.Joint).Select(e => e with { Round = round })];
            default:
                BenchEdge[] upper = [.. Edges(face).Where(e => e.Inward.Y < -0.3)];
                // A wedge has no long edge, a block none that looks up: the longest straight one there is.
                return upper.Length > 0 ? [.. upper] : [Edges(face, shortest: 0).MaxBy(e => e.From.DistanceTo(e.To)) ?? Beneath(face)];
        }
    }

    /// <summary>The edge's surface where the arris begins to be met by it: at the arris itself, or where a round begins.</summary>
    public Point2 At(double station) => From + station * Along + Round * Inward;

    /// <summary>A round end has no edge: the tangent at its lowest point.</summary>
    private static BenchEdge Beneath(PartFace face)
    {
        var (box, half) = (face.Outline.Bounds, Math.Min(face.Outline.Bounds.Width / 4, 4));
        return new(face, new(box.Centre.X - half, box.MinY), new(box.Centre.X + half, box.MinY), face.Thickness);
    }

    private static IEnumerable<BenchEdge> Edges(PartFace face, double shortest = 20)
    {
        for (var i = 0; i < face.Outline.EdgeCount; i++)
        {
            var (a, b, bulge) = face.Outline.Edge(i);
            if (bulge == 0 && a.DistanceTo(b) > shortest) yield return new(face, a, b, face.Thickness);
        }
    }
}
