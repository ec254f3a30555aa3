using Rodwright.Geometry;

namespace Rodwright.Stairs.Regulations;

/// <summary>Lengths of a table as its document says them: in millimetres, or in inches with millimetres beside.</summary>
public static class DocumentLength
{
    /// <summary>"270 mm"; of a document in inches "12" (304.8 mm)", or where it is no fraction a rule shows, as in a clause of a shop's own, "310 mm (12 3/16" heavy)".</summary>
    /// <param name="length">Millimetres.</param>
    /// <param name="document">The unit the document is written in.</param>
    public static string Print(double length, Units document) => !document.IsInches ? Units.Millimetres.With(length)
        : IsFraction(length) ? $"{Units.Inches.With(length)} ({Units.Millimetres.With(length)})" : $"{Units.Millimetres.With(length)} ({Units.Inches.With(length)})";

    /// <summary>Whether a length is a whole number of sixteenths: then a document in inches can say it.</summary>
    internal static bool IsFraction(double length) => Tolerance.IsSame(Units.Inches.Stock(length), length);
}
