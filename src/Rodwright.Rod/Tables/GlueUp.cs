using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Rod.Tables;

/// <summary>How a board wider than one strip is glued up: strips of equal width, grain along the board.</summary>
/// <param name="Strips">How many strips; 1 for a board in one piece.</param>
/// <param name="Width">Finished width of each, mm.</param>
/// <param name="Joints">Distances of the glue lines from the board's lower edge, mm.</param>
public sealed record GlueUp(int Strips, double Width, ImmutableArray<double> Joints)
{
    /// <summary>The glue-up of a tread or nosing piece; other parts come in one piece.</summary>
    public static GlueUp Of(Part part, Practice practice)
    {
        var width = part.Blank.Width;
        var glued = part.Kind is PartKind.TaperedTread or PartKind.Tread or PartKind.NosingPiece;
        var strips = glued ? Math.Max(1, (int)Math.Ceiling((width - Tolerance.Joint) / practice.GlueStrip)) : 1;
        return new(strips, width / strips, [.. Enumerable.Range(1, strips - 1).Select(i => i * width / strips)]);
    }

    /// <summary>"3 strips 148.2 wide"; empty for one piece.</summary>
    public string InWords(Units units) => Strips == 1 ? "" : $"{Number.Print(Strips, 0)} strips {units.Print(Width)} wide";
}
