using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;

namespace Rodwright.Stairs.Proposals;

/// <summary>What is tried: numbers of risers, goings, newels and widths.</summary>
/// <param name="Risers">Fewest and most.</param>
/// <param name="Goings">Shortest and longest, counted in <paramref name="Steps"/>.</param>
/// <param name="Newels">Sides of newels, mm.</param>
/// <param name="Widths">Over the strings, mm.</param>
/// <param name="Steps">The steps goings are tried in.</param>
internal sealed record SearchRange((int Least, int Most) Risers, (int Least, int Most) Goings, ImmutableArray<double> Newels, ImmutableArray<double> Widths, Pace Steps)
{
    private const double UsualWidth = 860;

    // 3 feet clear between strings of stock, which the International Residential Code asks for.
    private const double UsualInchWidth = 38.5 * Units.Inch;

    public static SearchRange Of(Brief brief, RuleBounds rules)
    {
        var (scale, wishes) = (brief.ModelScale, brief.Wishes ?? Wishes.UsualIn(brief.Units));
        var (low, high) = (Math.Max(rules.Rise.Least, 120 * scale), Math.Min(rules.Rise.Most, 230 * scale));
        var height = brief.Survey.Height;
        var risers = ((int)Math.Ceiling(height / high - 1e-9), (int)Math.Floor(height / low + 1e-9));
        var steps = Pace.OfGoings(brief.Units);
        var goings = (steps.Up(Math.Max(rules.Going.Least, 180 * scale), 1e-9), steps.Down(Math.Min(rules.Going.Most, 400 * scale), 1e-9));
        // Larger newels than the shop's own only help the narrow ends; more than 140 is a column.
        ImmutableArray<double> newels = wishes.Newels.Count > 0
            ? [.. wishes.Newels.Distinct().Order()]
            : [brief.Practice.Newel, .. Remedied.Newels(brief.Units).Where(n => n > brief.Practice.Newel && n <= 140)];
        ImmutableArray<double> widths = wishes.Widths.Count > 0 ? [.. wishes.Widths.Distinct().Order()] : [brief.Width ?? (brief.Units.IsInches ? UsualInchWidth : UsualWidth) * scale];
        return new(risers, goings, newels, widths, steps);
    }

    /// <summary>The same with a little beyond every limit of rise and going: to see what decides against a family.</summary>
    public SearchRange Wider() => this with
    {
        Risers = (Math.Max(2, Risers.Least - 1), Risers.Most + 1), Goings = (Math.Max(Steps.Up(20, 0), Goings.Least - Steps.Up(20, 0)), Goings.Most),
    };
}
