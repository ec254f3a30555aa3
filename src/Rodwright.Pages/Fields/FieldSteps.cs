using System.Globalization;
using Rodwright.Geometry;

namespace Rodwright.Pages.Fields;

/// <summary>Numbers moved by a key.</summary>
internal static class FieldSteps
{
    /// <summary>A number as text, moved; null where the text is not one number.</summary>
    public static string? Moved(string text, double by) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? Number.Print(value + by, 3) : null;
}
