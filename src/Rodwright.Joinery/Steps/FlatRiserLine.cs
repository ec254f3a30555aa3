namespace Rodwright.Joinery.Steps;

/// <summary>A line squared across a riser that will be bent.</summary>
/// <param name="X">From the board's left end, seen on its face, mm.</param>
/// <param name="What">What it tells: "the bend begins".</param>
public sealed record FlatRiserLine(double X, string What);
