using System.Globalization;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Pieces;

/// <summary>Marks of pieces written short.</summary>
internal static class ShortMarks
{
    private static readonly char[] Digits = [.. "0123456789"];

    /// <summary>Marks in order, runs drawn together: "T3-5, R4".</summary>
    public static string Joined(IEnumerable<string> marks)
    {
        var runs = new List<(string Letter, int From, int To)>();
        foreach (var (letter, number) in marks.Distinct().Select(m => (m.TrimEnd(Digits), int.Parse(m.AsSpan(m.TrimEnd(Digits).Length), CultureInfo.InvariantCulture))).OrderBy(m => m.Item1, StringComparer.Ordinal).ThenBy(m => m.Item2))
        {
            if (runs.Count > 0 && runs[^1].Letter == letter && runs[^1].To == number - 1) runs[^1] = (letter, runs[^1].From, number);
            else runs.Add((letter, number, number));
        }
        return string.Join(", ", runs.Select(r => r.From == r.To ? $"{r.Letter}{Number.Print(r.From, 0)}" : $"{r.Letter}{Number.Print(r.From, 0)}-{Number.Print(r.To, 0)}"));
    }

    /// <summary>Mark of the piece that a cut takes; empty for none.</summary>
    public static string Of(Cut cut, Kit kit) =>
        cut.Joint.IndexOf('/', StringComparison.Ordinal) is > 0 and var slash ? kit.Find(cut.Joint[..slash]).Mark : "";
}
