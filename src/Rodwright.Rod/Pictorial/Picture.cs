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
        Bounds = seen.Count == 0 ? new(0, 0, 0, 0) : Box2.Of(seen.SelectMany(e => new[] { e.From, e.To }));
    }

    /// <summary>How far chords leave their arcs on a sheet of pictures, mm: at 1:5 less than a tenth of the finest pen.</summary>
    public const double Chord = 0.05;

    /// <summary>The box round all that is seen.</summary>
    public Box2 Bounds { get; }

    /// <summary>The picture of some parts; what stands before another hides it.</summary>
    /// <param name="solids">The parts.</param>
    /// <param name="view">The eye.</param>
    /// <param name="isWanted">Which parts are drawn dashed where nothing of them is seen; none when null.</param>
    public static Picture Of(IEnumerable<PlacedSolid> solids, ParallelView view, Func<Part, bool>? isWanted = null)
    {
        var all = solids.ToList();
        var edges = HiddenLines.Of([.. all.Select(s => s.InWorld)], view, withHidden: isWanted is not null);
        if (isWanted is null) return new([.. all.Select(s => s.Part)], edges);
        var seen = edges.Where(e => e.IsSeen).Select(e => e.Solid).ToHashSet();
        return new([.. all.Select(s => s.Part)], [.. edges.Where(e => e.IsSeen || (!seen.Contains(e.Solid) && isWanted(all[e.Solid].Part)))]);
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
                    place.Map(e.From), place.Map(e.To), !e.IsSeen ? Pens.Hidden : faint ? PictorialPens.Faint : e.IsContour ? PictorialPens.Contour : PictorialPens.Arris,
                    e.IsSeen ? Layer.Visible : Layer.Hidden, part.Id)),
            ];
            if (lines.Count > 0) yield return new GroupMark(part.Id, part.Name, lines);
        }
    }
}
