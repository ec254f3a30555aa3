using Rodwright.Geometry;
using Rodwright.Joinery.Strings;

namespace Rodwright.Workshop.Picks;

/// <summary>Heights of a string's edges, from the pitch points and the margin.</summary>
internal static class EdgeFacts
{
    /// <summary>Both edges at a tenon's shoulder.</summary>
    public static IEnumerable<Fact> AtShoulder(PickBench bench, StringBoard board, StringTenon tenon, string end)
    {
        var s = tenon.Shoulder;
        yield return bench.Mm($"{end}upper edge at the shoulder, up", GraphCut.HeightAt(board.UpperEdge, s), Why.Rule("the margin line there, and the margin, which is square to the pitch, plumb"), "practice.margin",
            [.. At(board, s).Select(m => m.Line + Working.Of(bench.Practice.Margin) / Working.Cos(m.Pitch))]);
        var below = board.Site.Width - bench.Practice.Margin;
        yield return bench.Mm($"{end}lower edge at the shoulder, up", GraphCut.HeightAt(board.LowerEdge, s), Why.Rule("the margin line there, less what the board leaves below it, plumb; lower where the housings need more"), "practice.margin",
            [.. At(board, s).Select(m => m.Line - Working.Of(below) / Working.Cos(m.Pitch))]);
    }

    /// <summary>The margin line at a station, produced, for each of its pieces.</summary>
    private static IEnumerable<(Working Line, Angle Pitch)> At(StringBoard board, double s)
    {
        for (var i = 0; i + 1 < board.Margin.Length; i++)
        {
            var (a, b) = (board.Margin[i], board.Margin[i + 1]);
            var pitch = Angle.OfPitch(b.Y - a.Y, b.X - a.X);
            yield return (Working.Of(a.Y) + (Working.Of(s) - a.X) * Working.Tan(pitch), pitch);
        }
    }
}
