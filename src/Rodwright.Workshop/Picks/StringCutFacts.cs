using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Strings;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>Where a cut of a string lies on its development: along the face, and up from the lower floor.</summary>
internal static class StringCutFacts
{
    public static IEnumerable<Fact> Of(PickBench bench, Part part, Cut cut)
    {
        if (bench.Board(part.Id) is not { } board) return [];
        if (cut.Kind == CutKind.Housing && board.Housings.FirstOrDefault(h => cut.Joint == $"{h.Piece}/{part.Id}") is { } housing)
            return housing.IsRiser ? HousingFacts.Riser(bench, board, housing) : HousingFacts.Tread(bench, board, housing);
        return Plain(bench, board, part, cut);
    }

    public static string Along(PickBench bench, StringBoard board) => Why.Rule($"along the string's face from {RiserPlaces.Datum(bench, board)}, carried over from the plan");

    private static IEnumerable<Fact> Plain(PickBench bench, StringBoard board, Part part, Cut cut)
    {
        var along = Along(bench, board);
        var up = Why.Rule("heights are counted up from the lower floor");
        // The development runs up the stair; the face may run the other way.
        var sense = part.FaceSide.Frame.U.Dot(Vector3.Level(board.Site.Face.Along)) > 0 ? 1 : -1;
        var box = cut.Shape.Bounds;
        var (from, to) = sense > 0 ? (box.MinX, box.MaxX) : (-box.MaxX, -box.MinX);
        var tenon = board.Tenons.FirstOrDefault(t => cut.Joint == $"{part.Id}/{t.Newel}");
        if (cut.Kind == CutKind.Bore)
        {
            var centre = (from + to) / 2;
            yield return bench.Mm("centre, along", centre, along, "practice.tenon.pegBack", tenon is null ? [] : tenon.IsUpper ? [Working.Of(tenon.Shoulder) + tenon.PegBack - tenon.Practice.Draw] : [Working.Of(tenon.Shoulder) - tenon.PegBack + tenon.Practice.Draw]);
            yield return bench.Mm("centre, up", box.Centre.Y, up + ", in the middle of the tenon or as near as the newel's other joints allow", "",
                tenon is null ? [] : [Working.Of(tenon.Bottom) + Working.Of(tenon.Third) / 2, Working.Of(tenon.Top) - Working.Of(tenon.Third) / 2]);
            if (tenon is not null) yield return bench.Mm("from the shoulder", tenon.PegBack - tenon.Practice.Draw, Why.Rule("nearer the shoulder than in the newel by the draw"), "practice.tenon.draw", Working.Of(tenon.PegBack) - tenon.Practice.Draw);
            yield break;
        }
        yield return bench.Mm(tenon is { IsUpper: false } ? "tip, along" : tenon is not null ? "shoulder, along" : "from, along", from, along, "", tenon is { IsUpper: false } ? [Working.Of(tenon.Shoulder) - tenon.Length] : tenon is not null ? [Working.Of(board.Site.Upper.At) - Working.Of(bench.Practice.Newel) / 2] : []);
        yield return bench.Mm(tenon is { IsUpper: true } ? "tip, along" : tenon is not null ? "shoulder, along" : "to, along", to, along, "",
            tenon is { IsUpper: true } ? [Working.Of(tenon.Shoulder) + tenon.Length] : cut.Kind == CutKind.CornerHousing ? [Working.Of(from) + bench.Plan.OuterThickness] : tenon is not null ? [Working.Of(board.Site.Lower.At) + Working.Of(bench.Practice.Newel) / 2] : []);
        if (tenon is not null) yield break; // the band was told with the tenons
        yield return bench.Mm("bottom, up", box.MinY, up);
        yield return bench.Mm("top, up", box.MaxY, up);
        yield return bench.Mm("from bottom to top", box.Height, Why.Rule("plumb"), "", Working.Of(box.MaxY) - box.MinY);
    }
}
