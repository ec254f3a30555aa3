using System.Collections.Immutable;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Geometry.Solids.Sight;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Solids;

namespace Rodwright.Rod.Pictorial;

/// <summary>Parts as they stand, seen from one side with hidden lines removed. Its coordinates are millimetres of timber on the picture.</summary>
public sealed class Picture
{
    private readonly ImmutableArray<Part> parts;
    private readonly ILookup<int, SightEdge> edges;

    private Picture(ImmutableArray<Part> parts, IReadOnlyCollection<SightEdge> seen)
    {
        this.parts = parts;
        edges = seen.ToLookup(e => e.Solid);
        Bounds = Box2.Of(seen.SelectMany(e => new[] { e.From, e.To }));
    }

    /// <summary>How far chords leave their arcs on a sheet of pictures, mm: at 1:5 less than a tenth of the finest pen.</summary>
    public const double Chord = 0.05;

    /// <summary>The box round all that is seen.</summary>
    public Box2 Bounds { get; }

    /// <summary>The picture of some parts; what stands before another hides it.</summary>
    public static Picture Of(IEnumerable<PlacedSolid> solids, ParallelView view)
    {
        var all = solids.ToList();
        return new([.. all.Select(s => s.Part)], HiddenLines.Of([.. all.Select(s => s.InWorld)], view));
    }

    /// <summary>The marks, a group for each part; contours heavier than the arrises within them.</summary>
    /// <param name="place">Where on the paper.</param>
    /// <param name="isFaint">Which parts are there only to show where the others go; none when null.</param>
    public IEnumerable<Mark> Draw(Placement place, Func<Part, bool>? isFaint = null)
    {
        // The faint ones first, so that where lines fall together the heavier is seen.
        foreach (var i in Enumerable.Range(0, parts.Length).OrderBy(i => isFaint?.Invoke(parts[i]) == true ? 0 : 1))
        {
            var (part, faint) = (parts[i], isFaint?.Invoke(parts[i]) == true);
            List<Mark> lines =
            [
                .. edges[i].OrderBy(e => e.IsContour).Select(e => StrokeMark.Line(
                    place.Map(e.From), place.Map(e.To), faint ? PictorialPens.Faint : e.IsContour ? PictorialPens.Contour : PictorialPens.Arris, Layer.Visible, part.Id)),
            ];
            if (lines.Count > 0) yield return new GroupMark(part.Id, part.Name, lines);
        }
    }
}
