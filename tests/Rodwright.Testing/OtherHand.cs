using Rodwright.Stairs.Jobs;

namespace Rodwright.Testing;

/// <summary>The mirror image of a job.</summary>
public static class OtherHand
{
    /// <summary>Every turn to the other hand, every side on the other side.</summary>
    public static Job Of(Job job) => job with
    {
        Sides = new(job.Sides.Right, job.Sides.Left),
        Layout = new(Of(job.Layout.Hand),
            [.. job.Layout.Sequence.Select(i => i switch { Turn { Hand: { } hand } turn => turn with { Hand = Of(hand) }, Flight flight => flight with { Left = flight.Right, Right = flight.Left }, _ => i })]),
    };

    private static Hand Of(Hand hand) => hand == Hand.Left ? Hand.Right : Hand.Left;
}
