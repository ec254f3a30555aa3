using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Stairs.Proposals;

/// <summary>
/// The room as far as boxes tell: lengths along and out from the wall a stair begins at, and a rectangular well. What they leave out (corners out of square, other wells, sloping
/// ceilings, doors) is judged on the plans of what is proposed. Infinite where nothing was measured.
/// </summary>
internal sealed record QuickRoom
{
    /// <summary>Along the wall from where the stair may begin, mm.</summary>
    public double Length { get; private init; } = double.PositiveInfinity;

    /// <summary>Out from the wall, mm.</summary>
    public double Width { get; private init; } = double.PositiveInfinity;

    /// <summary>Where the first riser is fixed along the wall; null when it follows from the stair.</summary>
    public double? From { get; private init; }

    /// <summary>Whether a wall stands across the end of the first.</summary>
    public bool HasCorner { get; private init; }

    public double Gap { get; private init; }

    /// <summary>Length of a rectangular well; infinite without one.</summary>
    public double WellLength { get; private init; } = double.PositiveInfinity;

    /// <summary>Where it begins along the wall; null when its far end stands where the stair needs it.</summary>
    public double? WellAlong { get; private init; }

    public double WellOut { get; private init; } = double.NegativeInfinity;

    public double WellOutEnd { get; private init; } = double.PositiveInfinity;

    /// <summary>Height of the ceiling round the well above the lower floor; infinite when it was not measured.</summary>
    public double Ceiling { get; private init; } = double.PositiveInfinity;

    public static QuickRoom Of(Survey survey, bool outerIsWalled)
    {
        var (place, walls) = (survey.Place, survey.Walls);
        var room = new QuickRoom { From = place.From, Gap = place.Gap, HasCorner = place.Wall < walls.Count };
        if (place.Wall <= walls.Count && outerIsWalled)
        {
            room = room with { Length = walls[place.Wall - 1].Length.Mean - (place.From ?? 0) };
            if (place.Wall < walls.Count) room = room with { Width = walls[place.Wall].Length.Mean };
        }
        if (place.Wall != 1 || !outerIsWalled || survey.Well is not { IsRectangle: true, Trimmer.IsGiven: true } well) return room;
        return room with
        {
            WellLength = well.Length.Mean, WellAlong = well.Along, WellOut = well.Out, WellOutEnd = well.Out + well.Width.Mean, Ceiling = survey.Height - well.Trimmer.Mean,
        };
    }
}
