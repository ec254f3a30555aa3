using Rodwright.Geometry;

namespace Rodwright.Rod.Stages;

/// <summary>One distance to mark off.</summary>
/// <param name="Datum">What it is measured from, in bench words.</param>
/// <param name="Distance">How far, mm; never negative.</param>
/// <param name="Way">Which way.</param>
/// <param name="Label">What it is called at the head of a table.</param>
/// <param name="Back">True when it runs against the others of its column: a table then shows it with a minus.</param>
public sealed record Measure(string Datum, double Distance, string Way, string Label, bool Back = false)
{
    /// <summary>The distance as it stands in a table.</summary>
    public string Figure(Units units) => units.Print(Back ? -Distance : Distance);

    /// <summary>"from the wall's face measure 32 to the left".</summary>
    public string Words(Units units) => $"from {Datum} measure {units.Print(Distance)} {Way}";
}
