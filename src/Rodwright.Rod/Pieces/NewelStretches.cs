using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Pieces;

/// <summary>The stretches of a newel that are drawn: those with work on them, its foot and its head. Plain lengths between are left out at break lines.</summary>
/// <param name="Kept">From and to above the foot, lowest first, mm.</param>
internal sealed record NewelStretches(ImmutableArray<(double From, double To)> Kept)
{
    /// <summary>Paper between two stretches, mm.</summary>
    public const double Break = 7;

    private const double Round = 25; // of plain wood shown round any work, mm
    private const double Least = 120; // plain lengths shorter than this are drawn
    private const double End = 60;

    /// <summary>Length drawn, mm of timber.</summary>
    public double Length => Kept.Sum(k => k.To - k.From);

    /// <summary>Paper taken by breaks, mm.</summary>
    public double Breaks => (Kept.Length - 1) * Break;

    /// <summary>All of a newel, for where paper is no concern.</summary>
    public static NewelStretches Whole(Part newel) => new([(0, newel.Blank.Length)]);

    public static NewelStretches Of(Part newel)
    {
        var length = newel.Blank.Length;
        var busy = newel.Cuts.Select(c => c.Shape.Bounds).Select(b => (From: Math.Max(0, b.MinY - Round), To: Math.Min(length, b.MaxY + Round)))
            .Append((From: 0.0, To: End)).Append((From: length - End, To: length)).OrderBy(b => b.From).ToList();
        var kept = new List<(double From, double To)>();
        foreach (var (from, to) in busy)
        {
            if (kept.Count > 0 && from - kept[^1].To < Least) kept[^1] = (kept[^1].From, Math.Max(kept[^1].To, to));
            else kept.Add((from, to));
        }
        return new([.. kept]);
    }

    /// <summary>Height on paper above the foot's, mm; a place left out lies in its break.</summary>
    public double OnPaper(double height, double factor)
    {
        var y = 0.0;
        foreach (var (from, to) in Kept)
        {
            if (height < from) return y - Break / 2;
            if (height <= to + Tolerance.Same) return y + (height - from) * factor;
            y += (to - from) * factor + Break;
        }
        return y - Break;
    }

    /// <summary>Whether a height is drawn.</summary>
    public bool Holds(double height) => Kept.Any(k => height >= k.From - Tolerance.Same && height <= k.To + Tolerance.Same);
}
