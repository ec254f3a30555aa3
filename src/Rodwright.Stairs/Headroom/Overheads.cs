using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Stairs.Headroom;

/// <summary>Everything over a stair that was measured.</summary>
public static class Overheads
{
    /// <summary>The trimmer first, then the ceilings in their order.</summary>
    public static ImmutableArray<Overhead> Of(StairPlan plan, RoomFrame frame)
    {
        var survey = plan.Job.Survey;
        var found = ImmutableArray.CreateBuilder<Overhead>();
        ImmutableArray<Point2>? ring = survey.Well is { } well ? [.. Ring.Anticlockwise([.. WellShape.Of(well, plan, frame).Select(frame.ToWorld)])] : null;
        if (survey.Well is { } opening) found.Add(new("the trimmer", -1, frame.ToWorld(Point2.Origin), survey.Height - opening.Trimmer.Mean, default, ring, false, false));
        for (var i = 0; i < survey.Ceilings.Count; i++)
        {
            var ceiling = survey.Ceilings[i];
            var upper = ceiling.Storey == Storey.Upper;
            var gradient = ceiling.Slope * (frame.ToWorld(ceiling.Second.At) - frame.ToWorld(ceiling.First.At)).Unit;
            found.Add(new(ceiling.Words(i), i, frame.ToWorld(ceiling.First.At), (upper ? survey.Height : 0) + ceiling.First.Height.Mean, gradient, upper ? ring : null, true, upper));
        }
        return found.ToImmutable();
    }
}
