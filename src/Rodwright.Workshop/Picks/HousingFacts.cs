using Rodwright.Geometry;
using Rodwright.Joinery.Strings;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>A housing on a string's development, with its wedge space.</summary>
internal static class HousingFacts
{
    public static IEnumerable<Fact> Tread(PickBench bench, StringBoard board, StringHousing housing)
    {
        var (practice, seat, along) = (bench.Practice, housing.Seat.Bounds, StringCutFacts.Along(bench, board));
        var at = Working.Of(housing.Step) * bench.Plan.Rise;
        yield return bench.Mm("top, up", seat.MaxY, Why.Rule("a tread's surface stands so many rises above the floor"), Why.Height, at);
        yield return bench.Mm("underside, up", seat.MinY, Why.Rule("the tread's thickness below its surface"), "practice.tread", at - practice.Tread);
        yield return bench.Mm("front, along", seat.MinX, along, "practice.nosing", [.. Station(board, housing.Step).Select(s => Working.Of(s) - practice.Nosing)]);
        yield return bench.Mm("back, along", seat.MaxX, along, "", [.. Station(board, housing.Step + 1).SelectMany(s => new[] { RiserPlaces.Station(bench, board, Index(board, housing.Step + 1)), Working.Of(s) + practice.Riser }), .. Station(board, housing.Step).Select(s => Working.Of(s) + practice.NosingPiece - practice.Nosing)]);
        foreach (var fact in TreadWedge(bench, board, housing)) yield return fact;
    }

    public static IEnumerable<Fact> Riser(PickBench bench, StringBoard board, StringHousing housing)
    {
        var (practice, plan, seat, along) = (bench.Practice, bench.Plan, housing.Seat.Bounds, StringCutFacts.Along(bench, board));
        var k = housing.Step;
        yield return bench.Mm("face, along", seat.MinX, along, "", [.. Station(board, k).Select(_ => RiserPlaces.Station(bench, board, Index(board, k)))]);
        yield return bench.Mm("back, along", seat.MaxX, along, "practice.riser", Working.Of(seat.MinX) + practice.Riser, Slanted(bench, board, k, seat.MinX));
        yield return bench.Mm("top, up", seat.MaxY, Why.Rule("under its tread"), "practice.tread", Working.Of(k) * plan.Rise - practice.Tread);
        yield return bench.Mm("lower edge, up", seat.MinY, Why.Rule("it runs down behind the tread below, or stands on it or on the floor"), "practice.riserOnTread",
            Working.Of(k - 1) * plan.Rise - practice.Tread, Working.Of(k - 1) * plan.Rise);
        foreach (var fact in RiserWedge(bench, board, housing)) yield return fact;
    }

    private static IEnumerable<Fact> TreadWedge(PickBench bench, StringBoard board, StringHousing housing)
    {
        if (ReferenceEquals(housing.Seat, housing.Shape) || housing.Shape.Bounds.MinY > housing.Seat.Bounds.MinY - Tolerance.Same)
        {
            yield return Facts.Words("wedge", "none", Why.Rule("nothing can be driven there, or the piece takes none: it is glued and blocked"));
            yield break;
        }
        var (practice, wedge, seat, shape) = (bench.Practice, bench.Practice.TreadWedge, housing.Seat.Bounds, housing.Shape.Bounds);
        yield return bench.Given("practice.treadWedge.thin", wedge.Thin);
        yield return Facts.Words("wedge thickens by", $"1 in {Facts.Figure(wedge.Taper)}", Why.Field("practice.treadWedge.taper"), "practice.treadWedge.taper");
        var begin = WedgeBegin(housing);
        yield return bench.Mm("wedge space begins, along", begin, Why.Rule($"{bench.Units.Print(wedge.Length)} before the riser behind, or at the back of its own riser"), "practice.treadWedge.length", Working.Of(housing.Seat.Bounds.MaxX) - wedge.Length);
        yield return bench.Mm("wedge space ends, along", shape.MaxX, Why.Rule("past the riser behind by its thickness and the run on, so that the wedge can be driven; never past the end of the string"), "practice.treadWedge.runOn",
            Working.Of(seat.MaxX) + practice.Riser + wedge.RunOn, Working.Of(seat.MaxX) + wedge.RunOn, End(bench, board));
        var thick = seat.MinY - shape.MinY;
        yield return bench.Mm("wedge space at its thick end", thick, Why.Rule("the thin end, and the taper over the length"), "practice.treadWedge.taper", Working.Of(wedge.Thin) + (Working.Of(shape.MaxX) - begin) / wedge.Taper,
            Working.Of(wedge.Thin) + Working.Of((thick - wedge.Thin) * wedge.Taper) / Working.Ratio(wedge.Taper));
    }

    /// <summary>Where the body of a string ends: at the newel's face, or at the trimmer's.</summary>
    private static Working End(PickBench bench, StringBoard board) => board.Site.Upper.Kind switch
    {
        StringEndKind.Newel => Working.Of(board.Site.Upper.At) - Working.Of(bench.Practice.Newel) / 2,
        StringEndKind.Head => Working.Of(board.Site.Upper.At) + bench.Practice.Riser + bench.Practice.Packing,
        _ => board.Site.Upper.At,
    };

    private static double WedgeBegin(StringHousing housing)
    {
        var under = housing.Seat.Bounds.MinY;
        return housing.Shape.Vertices.Where(v => v.At.Y < under - Tolerance.Same).Min(v => v.At.X);
    }

    private static IEnumerable<Fact> RiserWedge(PickBench bench, StringBoard board, StringHousing housing)
    {
        if (ReferenceEquals(housing.Seat, housing.Shape) || housing.Shape.Bounds.MaxX < housing.Seat.Bounds.MaxX + Tolerance.Same)
        {
            yield return Facts.Words("wedge", "none", Why.Rule("nothing can be driven there: it is glued and blocked"));
            yield break;
        }
        var (wedge, seat, shape) = (bench.Practice.RiserWedge, housing.Seat.Bounds, housing.Shape.Bounds);
        yield return bench.Given("practice.riserWedge.thin", wedge.Thin);
        yield return bench.Mm("wedge space begins, up", seat.MinY + wedge.Length, Why.Rule("the wedge's length above the riser's lower edge, thick end down"), "practice.riserWedge.length", Working.Of(seat.MinY) + wedge.Length);
        yield return bench.Mm("wedge space ends, up", shape.MinY, Why.Rule("run on below the riser so that the wedge can be driven; on a floor it stops there"), "practice.riserWedge.runOn",
            Working.Of(seat.MinY) - wedge.RunOn, Working.Of(seat.MinY) - wedge.RunOn - bench.Practice.Tread);
        yield return bench.Mm("wedge space at its thick end", shape.MaxX - seat.MaxX, Why.Rule("the thin end, and the taper over the length and the run on; never past the end of the string"), "practice.riserWedge.taper",
            Working.Of(wedge.Thin) + (Working.Of(seat.MinY) + wedge.Length - shape.MinY) / Working.Ratio(wedge.Taper), End(bench, board) - seat.MaxX);
    }

    private static int Index(StringBoard board, int k)
    {
        for (var i = 0; i < board.PitchPoints.Length; i++) if (board.PitchPoints[i].Riser == k) return i;
        return -1;
    }

    private static IEnumerable<double> Station(StringBoard board, int k) => board.PitchPoints.Where(p => p.Riser == k).Select(p => p.At.X);

    /// <summary>The back of a riser that meets the string at a slant.</summary>
    private static Working Slanted(PickBench bench, StringBoard board, int k, double from)
    {
        var line = bench.Plan.Riser(k);
        var angle = Angle.FromRadians(Angle.Acos(Math.Abs(line.Line.Along.Cross(board.Site.Face.Along))));
        return Working.Of(from) + Working.Of(bench.Practice.Riser) / Working.Cos(angle);
    }
}
