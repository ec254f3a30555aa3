using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Formats.Dxf;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Strings;

namespace Rodwright.Rod.Machining;

/// <summary>Left and right string of a flight on one drawing, housings facing: see <see cref="StringPair"/>.</summary>
public static class PairDxf
{
    // Clear of each other by so much, lettering included.
    private const double Clear = 20;
    private const double Letters = 12;

    /// <summary>A file for each pair.</summary>
    public static IEnumerable<WrittenFile> Files(Kit kit, IReadOnlyDictionary<string, IReadOnlyList<LeftByCutter>> left) =>
        StringPair.Of(kit).Select(p => new WrittenFile(p.Name + ".dxf", DxfFormat.MediaType, DxfWriter.Write(Of(p, kit, left))));

    /// <summary>The drawing of a pair: what is in the drawings of its two strings, each on its own layer, and the risers squared across both.</summary>
    /// <param name="pair">The two strings.</param>
    /// <param name="kit">Their kit.</param>
    /// <param name="left">What the cutter leaves, by mark.</param>
    public static DxfDrawing Of(StringPair pair, Kit kit, IReadOnlyDictionary<string, IReadOnlyList<LeftByCutter>> left)
    {
        var (lower, upper) = (Lying(pair, pair.Lower, kit, left), Lying(pair, pair.Upper, kit, left));
        var rise = new Vector2(0, lower.Bounds.MaxY + Clear - upper.Bounds.MinY);
        return new([.. lower.Entities, .. upper.Entities.Select(e => Moved(e, default, p => p + rise)), .. Across(pair, lower.Bounds.MaxY + Clear / 2, rise)]);
    }

    private static DxfDrawing Lying(StringPair pair, StringBoard board, Kit kit, IReadOnlyDictionary<string, IReadOnlyList<LeftByCutter>> left)
    {
        var (turn, motion) = pair.Lying(board);
        return new(PartDxf.Of(board.Part, kit, left[board.Site.Mark]).Entities.Select(e => Moved(e, turn, motion)));
    }

    private static IEnumerable<DxfEntity> Across(StringPair pair, double middle, Vector2 rise)
    {
        foreach (var number in pair.Risers)
        {
            var from = pair.Lying(pair.Lower).Motion(StringPair.Place(pair.Lower, number)!.Value);
            var to = pair.Lying(pair.Upper).Motion(StringPair.Place(pair.Upper, number)!.Value) + rise;
            yield return new DxfPath(MachiningLayers.Marking, Path2.Polyline(from, to));
            yield return new DxfText(MachiningLayers.Marking, new(new(from.X + 3, middle - Letters / 2), Number.Print(number, 0), Letters, Layer.Lettering));
        }
    }

    private static DxfEntity Moved(DxfEntity entity, Angle turn, Func<Point2, Point2> motion) => entity switch
    {
        DxfPath path => new DxfPath(path.Layer, path.Path.Moved(motion), path.Pen),
        DxfText text => new DxfText(text.Layer, text.Text with { At = motion(text.Text.At), Turn = Angle.FromRadians(text.Text.Turn.Radians + turn.Radians) }),
        DxfFill fill => new DxfFill(fill.Layer, fill.Outlines.Select(o => o.Moved(motion)), fill.Tint),
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
