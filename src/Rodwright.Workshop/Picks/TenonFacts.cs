using Rodwright.Geometry;
using Rodwright.Joinery.Strings;

namespace Rodwright.Workshop.Picks;

/// <summary>A string's tenons at one end: band, thirds, length, thickness, haunch, pegs.</summary>
internal static class TenonFacts
{
    public static IEnumerable<Fact> Of(PickBench bench, StringBoard board, StringTenon tenon, string end = "")
    {
        var (practice, newel) = (tenon.Practice, bench.Practice.Newel);
        foreach (var fact in EdgeFacts.AtShoulder(bench, board, tenon, end)) yield return fact;
        yield return Band(bench, board, tenon, end);
        yield return bench.Mm($"{end}top of the band, up", tenon.Top, Why.Rule("the upper edge, where it stands lowest over the tenon"), "", Over(tenon, board.UpperEdge, true));
        yield return bench.Mm($"{end}bottom of the band, up", tenon.Bottom, Why.Rule("the lower edge, where it stands highest over the tenon; and clear of the floor"), "", Over(tenon, board.LowerEdge, false));
        yield return Third(bench, tenon, end + "each tenon and the gap");
        var whole = practice.Part * newel;
        yield return bench.Mm($"{end}tenon's length", tenon.Length, Why.Rule(tenon.Length < whole - 0.005
                ? $"{Part(practice.Part)} of the newel would be {bench.Length(whole)}; it is kept shorter so as not to meet another joint there" : $"{Part(practice.Part)} of the newel"), "practice.tenon.part",
            [.. Lengths(bench, tenon)]);
        yield return Thickness(bench, tenon, end);
        yield return bench.Mm($"{end}off the face side", tenon.Site.Thickness - tenon.Thickness, Why.Rule("bare-faced: the tenon keeps the back of the string"), "practice.tenon.thickness", Working.Of(tenon.Site.Thickness) - tenon.Thickness);
        yield return bench.Mm($"{end}haunch", tenon.Haunch, Why.Field("practice.tenon.haunch") + ", never more than half the tenon", "practice.tenon.haunch");
        yield return bench.Mm($"{end}peg in the tenon, from the shoulder", tenon.PegBack - practice.Draw, Why.Rule("nearer the shoulder than in the newel by the draw, so that the peg draws it home"), "practice.tenon.draw", Working.Of(tenon.PegBack) - practice.Draw);
    }

    public static Fact Third(PickBench bench, StringTenon tenon, string label) =>
        bench.Mm(label, tenon.Third, Why.Rule("the band in thirds: a tenon, a gap with its haunch, a tenon"), "", Working.Of(tenon.Top - tenon.Bottom) / 3);

    /// <summary>The usable band: inside the board over the whole tenon.</summary>
    private static Fact Band(PickBench bench, StringBoard board, StringTenon tenon, string end)
    {
        var (upper, lower) = (EndPitch(board.UpperEdge, tenon), EndPitch(board.LowerEdge, tenon));
        var (top, bottom) = (GraphCut.HeightAt(board.UpperEdge, tenon.Shoulder), GraphCut.HeightAt(board.LowerEdge, tenon.Shoulder));
        var loss = Working.Of(tenon.Length) * Working.Tan(tenon.IsUpper ? lower : upper);
        return bench.Mm($"{end}band of the tenons", tenon.Top - tenon.Bottom, Why.Rule("level, and inside the board over the whole tenon: the board's plumb depth, less what its edge climbs over the tenon's length"), "",
            Working.Of(board.Site.Width) / Working.Cos(lower) - loss, Working.Of(top - bottom) - loss, Working.Of(tenon.Top) - tenon.Bottom);
    }

    /// <summary>An edge's height where the band needs it: at the shoulder, or over the tenon's end.</summary>
    private static Working Over(StringTenon tenon, Path2 edge, bool lowest)
    {
        var pitch = EndPitch(edge, tenon);
        var at = Working.Of(GraphCut.HeightAt(edge, tenon.Shoulder));
        var climb = Working.Of(tenon.Length) * Working.Tan(pitch);
        return tenon.IsUpper == lowest ? at : lowest ? at - climb : at + climb;
    }

    /// <summary>Slope of an edge at the tenon's shoulder.</summary>
    public static Angle EndPitch(Path2 edge, StringTenon tenon)
    {
        var (a, b, _) = edge.Edge(tenon.IsUpper ? edge.EdgeCount - 1 : 0);
        return Angle.OfPitch(b.Y - a.Y, b.X - a.X);
    }

    private static Fact Thickness(PickBench bench, StringTenon tenon, string end) => tenon.Practice.Thickness is null
        ? bench.Mm($"{end}tenon's thickness", tenon.Thickness, Why.Rule("the string's thickness less the housings' depth, so that it clears them"), "practice.tenon.thickness", Working.Of(tenon.Site.Thickness) - bench.Practice.Housing)
        : bench.Mm($"{end}tenon's thickness", tenon.Thickness, Why.Field("practice.tenon.thickness"), "practice.tenon.thickness");

    /// <summary>What may decide a tenon's length: its part of the newel, another string's mortice, the notch over the trimmer, the housings beyond.</summary>
    public static IEnumerable<Working> Lengths(PickBench bench, StringTenon tenon)
    {
        var (practice, own, newel) = (bench.Practice, tenon.Practice, Working.Of(bench.Practice.Newel));
        yield return PartOf(own.Part, bench.Practice.Newel);
        foreach (var other in bench.Kit.Strings.SelectMany(s => s.Tenons).Where(t => t.Newel == tenon.Newel && t.Site.Id != tenon.Site.Id))
        {
            var free = newel / 2 - Working.Of(other.Site.Thickness) / 2;
            yield return own.Between >= own.MorticeClearance + 1 ? free - own.Between : free - own.MorticeClearance - 1;
            // Strings of two thicknesses do not both stand in the newel's middle: from the newel's face to the nearer side of the other.
            var face = tenon.Points * (tenon.Site.Face.Station(other.Site.Face.Through) - tenon.Shoulder);
            foreach (var side in new[] { face, face - other.Site.Thickness })
                yield return Working.Of(side) - Math.Max(own.Between, own.MorticeClearance + 1);
        }
        yield return newel / 2 + practice.Riser + practice.Packing - own.Between - own.MorticeClearance;
        yield return newel - practice.NewelHousing - own.Between - own.MorticeClearance;
    }

    /// <summary>A part of a newel: two thirds as a fraction, any other as it stands in the job.</summary>
    public static Working PartOf(double part, double newel) => Math.Abs(part - 2.0 / 3) < 1e-9 ? Working.Of(2) * newel / 3 : Working.Ratio(part) * newel;

    private static string Part(double part) => Math.Abs(part - 2.0 / 3) < 1e-9 ? "two thirds" : Number.Print(part, 3);
}
