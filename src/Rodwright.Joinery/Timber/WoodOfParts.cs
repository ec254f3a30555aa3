using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Shops;

namespace Rodwright.Joinery.Timber;

/// <summary>Says of each part what wood it is made from.</summary>
internal sealed class WoodOfParts(Kit kit, Shop shop)
{
    private readonly SawnSizes sizes = new(shop, kit.Plan.Units);
    private readonly Practice practice = kit.Plan.Job.Practice;

    public ListedPiece Of(Part part)
    {
        var grain = part.Kind is PartKind.TaperedTread or PartKind.Tread or PartKind.NosingPiece ? "along the nosing" : part.Kind == PartKind.Block ? "layers crossing" : "along the length";
        // Too small to be planned from boards.
        if (part.Kind is PartKind.Wedges or PartKind.Wedge or PartKind.GlueBlock or PartKind.Peg) return new(part, StockKind.Scrap, [Plain(part, part.Blank.Thickness)], grain, "from offcuts");
        if (sizes.IsSheet(part.Material)) return Sheet(part, grain);
        if (part.Kind == PartKind.Block || sizes.Thickness(part.Material, part.Blank.Thickness) is null) return Layered(part, grain);
        return Strips(part, part.Blank.Thickness, sizes.Thickness(part.Material, part.Blank.Thickness)!.Value, grain, "");
    }

    private ListedPiece Sheet(Part part, string grain)
    {
        var thickness = sizes.SheetOf(part.Material, part.Blank.Thickness);
        var wood = Plain(part, thickness ?? part.Blank.Thickness) with { SawnLength = sizes.Up(part.Blank.Length), SawnWidth = sizes.Up(part.Blank.Width) };
        return new(part, thickness is null ? StockKind.None : StockKind.Sheet, [wood], grain, "");
    }

    private Wood Plain(Part part, double sawnThickness) => new(part.Mark, part.Id, part.Material, part.Blank.Length, part.Blank.Width, part.Blank.Thickness,
        sizes.Length(part.Kind, part.Blank.Length), sizes.Planed(part.Blank.Width), sawnThickness);

    /// <summary>Thicker than any board: layers glued face to face, as few as the shop's boards, and for a block the job, allow.</summary>
    private ListedPiece Layered(Part part, string grain)
    {
        var fewest = part.Kind == PartKind.Block ? Math.Max(1, (int)Math.Ceiling(part.Blank.Thickness / kit.Plan.Job.BottomStep.Layer - 1e-9)) : 2;
        for (var n = fewest; n <= 8; n++)
        {
            if (sizes.Thickness(part.Material, part.Blank.Thickness / n) is not { } sawn) continue;
            var layer = Strips(part, part.Blank.Thickness / n, sawn, grain, "");
            if (n == 1) return layer;
            var woods = Enumerable.Range(0, n).SelectMany(i => layer.Woods.Select(w => w with { Id = $"{part.Mark}{Letter(i)}" + (layer.IsGluedUp ? w.Id[^1..] : "") }));
            return layer with { Woods = [.. woods], Remark = $"{Number.Print(n, 0)} layers of {kit.Plan.Units.Print(part.Blank.Thickness / n)}" + (layer.Remark.Length > 0 ? ", each of " + layer.Remark : "") };
        }
        return new(part, StockKind.None, [Plain(part, sizes.Planed(part.Blank.Thickness))], grain, "");
    }

    /// <summary>A board in one piece, or strips of one width glued up; a string's jointed-up pieces beside it.</summary>
    private ListedPiece Strips(Part part, double thickness, double sawnThickness, string grain, string remark)
    {
        var blank = part.Blank;
        var widest = sizes.Widest(part.Material, sawnThickness);
        var back = part.Kind == PartKind.TaperedTread ? shop.Allowances.GlueBack : 0;
        var glue = GlueUp.Of(part, practice);
        while (glue.Strips <= 12 && SawnWidth(glue) > widest + Tolerance.Same) glue = glue.Narrower();
        var n = glue.Strips;
        if (n > 12) return new(part, StockKind.None, [Plain(part, sawnThickness) with { Thickness = thickness }], grain, "");
        var woods = ImmutableArray.CreateBuilder<Wood>();
        for (var i = 0; i < n; i++)
        {
            var (from, to) = glue.Of(i);
            var length = n == 1 ? blank.Length : Reach(part, from, to);
            var width = to - from;
            woods.Add(new(n == 1 ? part.Mark : part.Mark + Letter(i), part.Id, part.Material, length, width, thickness,
                n == 1 ? sizes.Length(part.Kind, length) : sizes.GluedLength(length), n == 1 ? sizes.Planed(width) : sizes.Strip(width + (i == n - 1 ? back : 0)), sawnThickness));
            if (GlueUp.IsOf(part.Kind)) woods[^1] = woods[^1] with { Shape = SawnShape.Of(Band([.. part.FaceSide.Outline.Flattened(0.05).Select(blank.OnBoard)], from, to), woods[^1].SawnLength, woods[^1].SawnWidth) };
        }
        foreach (var piece in blank.JointedUp)
        {
            var strips = 1;
            while (strips < 12 && sizes.JointedUp(piece.Width / strips) > widest + Tolerance.Same) strips++;
            for (var i = 0; i < strips; i++)
                woods.Add(new($"{part.Mark}+{piece.Mark}{(strips == 1 ? "" : Number.Print(i + 1, 0))}", part.Id, part.Material, piece.Length, piece.Width / strips, thickness, sizes.GluedLength(piece.Length), sizes.JointedUp(piece.Width / strips), sawnThickness)
                {
                    Shape = SawnShape.Of(Band([.. piece.Shape.Flattened(0.05).Select(blank.OnBoard)], piece.Place.MinY + piece.Width * i / strips, piece.Place.MinY + piece.Width * (i + 1) / strips), sizes.GluedLength(piece.Length), sizes.JointedUp(piece.Width / strips)),
                });
        }
        var words = glue.InWords(kit.Plan.Units);
        if (!blank.JointedUp.IsEmpty) words += (words.Length > 0 ? ", " : "") + $"{Number.Print(blank.JointedUp.Length, 0)} jointed up";
        return new(part, StockKind.Board, woods.ToImmutable(), grain, remark + words);

        double SawnWidth(GlueUp glue) => glue.Strips == 1 ? sizes.Planed(blank.Width) : sizes.Strip(glue.Width + back);
    }

    /// <summary>How long a strip must be between two lines along the board: from the outline's first point between them to its last.</summary>
    private static double Reach(Part part, double from, double to)
    {
        var ring = part.FaceSide.Outline.Flattened(0.05).Select(part.Blank.OnBoard).ToList();
        var (least, most) = (double.PositiveInfinity, double.NegativeInfinity);
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            if (Math.Max(a.Y, b.Y) < from || Math.Min(a.Y, b.Y) > to) continue;
            foreach (var y in new[] { Math.Clamp(a.Y, from, to), Math.Clamp(b.Y, from, to) })
            {
                var x = Math.Abs(b.Y - a.Y) < Tolerance.Same ? a.X : a.X + (b.X - a.X) * (y - a.Y) / (b.Y - a.Y);
                (least, most) = (Math.Min(least, x), Math.Max(most, x));
                if (Math.Abs(b.Y - a.Y) < Tolerance.Same) (least, most) = (Math.Min(least, b.X), Math.Max(most, b.X));
            }
        }
        return Math.Max(0, most - least);
    }

    /// <summary>The corners of what a ring has between two lines along the board.</summary>
    private static List<Point2> Band(IReadOnlyList<Point2> ring, double from, double to)
    {
        var points = new List<Point2>();
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            if (a.Y >= from - Tolerance.Same && a.Y <= to + Tolerance.Same) points.Add(a);
            foreach (var y in (double[])[from, to])
                if (Math.Min(a.Y, b.Y) < y && Math.Max(a.Y, b.Y) > y) points.Add(new(a.X + (b.X - a.X) * (y - a.Y) / (b.Y - a.Y), y));
        }
        return points;
    }

    private static string Letter(int i) => ((char)('a' + i)).ToString();
}
