using Rodwright.Geometry;

namespace Rodwright.Stairs.Proposals;

/// <summary>
/// The steps sizes are chosen in, counted so that a search goes through whole numbers: whole millimetres, or in a job in inches so many eighths or sixteenths. A length is the same
/// double that reading it from a job file gives.
/// </summary>
/// <param name="Over">Millimetres in so many steps, together with <paramref name="Steps"/>: a fraction of whole numbers.</param>
/// <param name="Steps">The steps they are.</param>
internal readonly record struct Pace(double Over, double Steps)
{
    // 25.4 is 127 fifths.
    private static readonly Pace Millimetre = new(1, 1);
    private static readonly Pace Eighth = new(127, 40);
    private static readonly Pace Sixteenth = new(127, 80);

    /// <summary>The steps goings, and lengths of the house, are tried in: a joiner's rule is read to the eighth with ease.</summary>
    public static Pace OfGoings(Units units) => units.IsInches ? Eighth : Millimetre;

    /// <summary>The steps the risers of a turn are set in.</summary>
    public static Pace OfRisers(Units units) => units.IsInches ? Sixteenth : Millimetre;

    /// <summary>So many steps, mm.</summary>
    public double At(int count) => count * Over / Steps;

    /// <summary>The first count of steps that is no less than a length, by a hair.</summary>
    public int Up(double length, double hair) => (int)Math.Ceiling(length * Steps / Over - hair);

    /// <summary>The last count of steps that is no more than a length, by a hair.</summary>
    public int Down(double length, double hair) => (int)Math.Floor(length * Steps / Over + hair);
}
