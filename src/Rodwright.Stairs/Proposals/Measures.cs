using Rodwright.Geometry;

namespace Rodwright.Stairs.Proposals;

/// <summary>What proposals are compared by.</summary>
/// <param name="Comfort">Twice the rise and the going of the straight steps, mm.</param>
/// <param name="ComfortOff">How far that lies from its ideal, mm.</param>
/// <param name="PitchDegrees">Pitch of the straight steps.</param>
/// <param name="Headroom">Least clearance, mm; null when nothing above was measured.</param>
/// <param name="FloorArea">Floor taken over the strings, square metres.</param>
/// <param name="Narrowest">Narrowest end along the faces, mm; null when no step tapers.</param>
/// <param name="Timber">Estimate of strings, steps and newels, cubic metres, without waste.</param>
/// <param name="TaperedSteps">How many steps taper.</param>
public sealed record Measures(
    double Comfort, double ComfortOff, double PitchDegrees, double? Headroom, double FloorArea, double? Narrowest, double Timber, int TaperedSteps)
{
    /// <summary>Differences smaller than this are none: mm, degrees, tenths of a litre of timber.</summary>
    private const double Same = 1e-6;

    internal static Measures Of(QuickMeasures quick, double ideal, double? headroom, double? narrowest) => new(
        quick.Comfort, Math.Abs(quick.Comfort - ideal), Angle.OfPitch(quick.Rise, quick.Going).Degrees, headroom, quick.FloorArea, narrowest, quick.Timber, quick.TaperedSteps);

    /// <summary>Each measure as a number that is better when it is smaller; where there is nothing to measure, as good as can be.</summary>
    private double[] Burdens => [ComfortOff, PitchDegrees, -(Headroom ?? double.PositiveInfinity), FloorArea, -(Narrowest ?? double.PositiveInfinity), Timber, TaperedSteps];

    /// <summary>Whether this is at least as good in every measure and better in one.</summary>
    public bool Beats(Measures other)
    {
        var (own, theirs) = (Burdens, other.Burdens);
        var better = false;
        for (var i = 0; i < own.Length; i++)
        {
            if (own[i] > theirs[i] + Same) return false;
            better |= own[i] < theirs[i] - Same;
        }
        return better;
    }
}
