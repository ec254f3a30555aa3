using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Joinery.Timber;

/// <summary>How a board wider than one strip is glued up: strips of equal width, grain along the board.</summary>
/// <param name="Strips">How many strips; 1 for a board in one piece.</param>
/// <param name="Width">Finished width of each, mm.</param>
/// <param name="Joints">Distances of the glue lines from the board's lower edge, mm.</param>
public sealed record GlueUp(int Strips, double Width, ImmutableArray<double> Joints)
{
    /// <summary>The glue-up of a tread or nosing piece; other parts come in one piece.</summary>
    public static GlueUp Of(Part part, Practice practice)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(practice);
        return In(part.Blank.Width, IsOf(part.Kind) ? Math.Max(1, (int)Math.Ceiling((part.Blank.Width - Tolerance.Joint) / practice.GlueStrip)) : 1);
    }

    /// <summary>Whether a kind of part is glued up from strips as wide as practice has them, even where a wider board could be had.</summary>
    public static bool IsOf(PartKind kind) => kind is PartKind.TaperedTread or PartKind.Tread or PartKind.NosingPiece;

    /// <summary>The same board in one strip more: where no board is wide enough for fewer.</summary>
    public GlueUp Narrower() => In(Strips * Width, Strips + 1);

    /// <summary>Where a strip lies, from the board's lower edge, mm.</summary>
    /// <param name="strip">Which, the lowest 0.</param>
    public (double From, double To) Of(int strip) => (strip == 0 ? 0 : Joints[strip - 1], strip == Strips - 1 ? Strips * Width : Joints[strip]);

    /// <summary>"3 strips 148.2 wide"; empty for one piece.</summary>
    public string InWords(Units units)
    {
        ArgumentNullException.ThrowIfNull(units);
        return Strips == 1 ? "" : $"{Number.Print(Strips, 0)} strips {units.Print(Width)} wide";
    }

    private static GlueUp In(double width, int strips) => new(strips, width / strips, [.. Enumerable.Range(1, strips - 1).Select(i => i * width / strips)]);
}
