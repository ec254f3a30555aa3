using Rodwright.Geometry;

namespace Rodwright.Pages.Fields;

/// <summary>Numbers moved by a key.</summary>
internal static class FieldSteps
{
    /// <summary>A number or length as text, moved by so many steps of its unit; null where the text is not one. A length in inches goes on to whole sixteenths.</summary>
    public static string? Moved(Units units, string text, double by) => !units.TryRead(text, out var value) ? null
        : units.IsInches ? units.Typed(units.Stock(value + by * units.Step)) : Number.Print(value + by, 3);
}
