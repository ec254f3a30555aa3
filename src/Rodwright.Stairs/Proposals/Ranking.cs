using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Stairs.Proposals;

/// <summary>The stated measures with their weights, added up: the smaller the sum, the better.</summary>
/// <param name="Weights">How much each counts.</param>
/// <param name="Ideal">Twice the rise and the going, as it walks best, mm.</param>
/// <param name="HeadroomAsked">The most the regulation asks for, mm.</param>
public sealed record Ranking(RankingWeights Weights, double Ideal, double HeadroomAsked)
{
    /// <summary>The sum for one proposal.</summary>
    public double Of(Measures m) => Sum(m.ComfortOff, m.PitchDegrees, m.Headroom, m.FloorArea, m.Narrowest, m.Timber, m.TaperedSteps);

    internal double Of(in QuickMeasures m) => Sum(
        Math.Abs(m.Comfort - Ideal), Angle.OfPitch(m.Rise, m.Going).Degrees, double.IsFinite(m.Headroom) ? m.Headroom : null, m.FloorArea,
        double.IsFinite(m.Narrowest) ? m.Narrowest : null, m.Timber, m.TaperedSteps);

    private double Sum(double off, double pitch, double? headroom, double area, double? narrowest, double timber, int tapered) =>
        Weights.Comfort * off / 60 + Weights.Pitch * Math.Max(0, pitch - 30) / 10
        + Weights.Headroom * (headroom is { } h ? Math.Clamp((HeadroomAsked + 300 - h) / 300, 0, 1) : 0)
        + Weights.FloorArea * area / 2 + Weights.Narrowest * (narrowest is { } n ? Math.Clamp((100 - n) / 100, 0, 1) : 0)
        + Weights.Timber * timber * 10 + Weights.TaperedSteps * tapered;
}
