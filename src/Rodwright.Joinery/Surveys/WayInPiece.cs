using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Joinery.Surveys;

/// <summary>Something that may be carried in whole: the box round it.</summary>
/// <param name="Mark">W1, N1; W1 + F1 for a flight put together.</param>
/// <param name="Name">In words.</param>
/// <param name="Length">mm.</param>
/// <param name="Width">mm.</param>
/// <param name="Thickness">mm.</param>
/// <param name="Together">Whether it is a flight put together rather than one piece.</param>
public sealed record WayInPiece(string Mark, string Name, double Length, double Width, double Thickness, bool Together)
{
    /// <summary>Flights put together first, then strings and newels, the longest first.</summary>
    public static ImmutableArray<WayInPiece> Of(Kit kit)
    {
        var strings = kit.Strings;
        var flights = new List<WayInPiece>();
        foreach (var outer in strings.Where(s => !s.Site.Inner))
        {
            // The string across the clear width, parallel to this one and beside it.
            var inner = strings.FirstOrDefault(s => s.Site.Inner && Math.Abs(s.Site.Face.Along.Dot(outer.Site.Face.Along)) > 0.999
                && Tolerance.IsSame(Math.Round(Math.Abs(outer.Site.Face.LeftOf(s.Site.Face.Through)), 3), Math.Round(kit.Plan.ClearWidth, 3)));
            if (inner is null) continue;
            var (a, b) = (outer.Part.Blank, inner.Part.Blank);
            flights.Add(new($"{outer.Site.Mark} + {inner.Site.Mark}", "flight put together", Math.Max(a.Length, b.Length), kit.Plan.Job.Width, Math.Max(Whole(outer.Part), Whole(inner.Part)), true));
        }
        var alone = strings.Select(s => new WayInPiece(s.Site.Mark, s.Site.Name, s.Part.Blank.Length, Whole(s.Part), s.Part.Blank.Thickness, false))
            .Concat(kit.Parts.Where(p => p.Kind == PartKind.Newel).Select(p => new WayInPiece(p.Mark, p.Name, p.Blank.Length, p.Blank.Width, p.Blank.Thickness, false)));
        return [.. flights.OrderByDescending(f => f.Length), .. alone.OrderByDescending(f => f.Length)];
    }

    /// <summary>Width of a board with what is jointed up to it: the band that holds all of it along the grain.</summary>
    private static double Whole(Part part)
    {
        var across = part.Blank.JointedUp.SelectMany(j => j.Shape.Flattened()).Select(p => part.Blank.OnBoard(p).Y).Append(0).Append(part.Blank.Width).ToList();
        return across.Max() - across.Min();
    }

    /// <summary>Whether it passes, and the longest of its section that does.</summary>
    public WayInVerdict At(WayInStop stop) => new(this, stop, Passage.Passes(stop, Length, Width, Thickness), Passage.Longest(stop, Width, Thickness));
}

/// <summary>One piece at one place on the way in.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Stop">The place.</param>
/// <param name="Passes">Whether it passes.</param>
/// <param name="Longest">The longest of its section that passes, mm; null when any length does; 0 when the section does not.</param>
public sealed record WayInVerdict(WayInPiece Piece, WayInStop Stop, bool Passes, double? Longest);
