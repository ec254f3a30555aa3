using System.Collections.Immutable;
using Rodwright.Stairs.Jobs.Changes;

namespace Rodwright.Stairs.Jobs.Checks;

/// <summary>Sizes of the balustrade against one another and against the newel.</summary>
internal static class BalustradeChecks
{
    // Wood beside a groove, above it and at a peg's hole, mm (common practice).
    private const double BesideGroove = 5, AboveGroove = 10, BesidePeg = 1;

    public static ImmutableArray<JobCheck> All { get; } =
    [
        new(JobCodes.BalusterWide, "balustrade.baluster", ["balustrade.baluster", "balustrade.rail.width", "balustrade.baseRail.width"], Baluster),
        new(JobCodes.GrooveDeep, "balustrade.groove", ["balustrade.groove", "balustrade.rail.height", "balustrade.baseRail.height"], Groove),
        new(JobCodes.RailTenonThick, "balustrade.tenon.thickness", ["balustrade.tenon.thickness", "balustrade.rail.width"], Thickness),
        new(JobCodes.RailMortice, "balustrade.tenon.length", ["balustrade.tenon.length", "practice.newel", "practice.tenon.morticeClearance"], Mortice),
        new(JobCodes.RailPeg, "balustrade.tenon.peg", ["balustrade.tenon.peg", "balustrade.tenon.pegBack", "balustrade.tenon.length", "practice.tenon.draw"], Peg),
        new(JobCodes.CapRecess, "balustrade.cap.recess", ["balustrade.cap.recess", "balustrade.cap.edge", "balustrade.cap.shape"], Recess),
    ];

    private static Pinch? Baluster(Job job)
    {
        if (job.Balustrade is not { } b) return null;
        var (name, width) = b.Rail.Width < b.BaseRail.Width ? ("handrail", b.Rail.Width) : ("base rail", b.BaseRail.Width);
        return b.Baluster + 2 * BesideGroove <= width ? null : new(
            $"balusters of {job.Units.With(b.Baluster)} leave no wood beside their groove in a {name} {job.Units.With(width)} wide", $"balusters of {job.Units.With(job.Units.Down(width - 2 * BesideGroove))} at most, or wider rails",
            Remedied.Size(job.Units, "balustrade.baluster", "balusters of", 41, 32, 25, 20, 10));
    }

    private static Pinch? Groove(Job job)
    {
        if (job.Balustrade is not { } b) return null;
        var (name, height) = b.Rail.Height < b.BaseRail.Height ? ("handrail", b.Rail.Height) : ("base rail", b.BaseRail.Height);
        return b.Groove + AboveGroove <= height ? null : new(
            $"grooves {job.Units.With(b.Groove)} deep leave less than {job.Units.With(AboveGroove)} of a {name} {job.Units.With(height)} high", $"grooves of {job.Units.Range(6, 10, 1)} are usual",
            Remedied.Size(job.Units, "balustrade.groove", "grooves of", 8, 6, 4, 2));
    }

    private static Pinch? Thickness(Job job) => job.Balustrade is not { } b || b.Tenon.Thickness + 2 * BesideGroove <= b.Rail.Width ? null : new(
        $"a tenon {job.Units.With(b.Tenon.Thickness)} thick leaves no shoulders on a handrail {job.Units.With(b.Rail.Width)} wide", "about a third of the rail is usual",
        Remedied.Size(job.Units, "balustrade.tenon.thickness", "a rail's tenon of", 20, 16, 12, 8, 6));

    private static Pinch? Mortice(Job job) => job.Balustrade is not { } b || b.Tenon.Length + job.Practice.Tenon.MorticeClearance <= job.Practice.Newel / 2 ? null : new(
        $"the rails' mortices, {job.Units.With(b.Tenon.Length + job.Practice.Tenon.MorticeClearance)} deep, go past the middle of a newel of {job.Units.With(job.Practice.Newel)}",
        $"tenons of {job.Units.With(job.Units.Down(job.Practice.Newel / 2 - job.Practice.Tenon.MorticeClearance))} at most",
        Remedied.Size(job.Units, "balustrade.tenon.length", "rails' tenons of", 30, 25, 20, 15, 10));

    private static Pinch? Peg(Job job)
    {
        if (job.Balustrade is not { Tenon: var t }) return null;
        var back = Math.Min(t.PegBack, t.Length / 2);
        return back - job.Practice.Tenon.Draw - t.Peg / 2 >= BesidePeg ? null : new(
            $"the hole of a rail's peg of {job.Units.With(t.Peg)}, {job.Units.With(back)} from the shoulder and drawn {job.Units.With(job.Practice.Tenon.Draw)}, breaks out at the shoulder", "a smaller peg, a longer tenon, or less draw",
            Remedied.Size(job.Units, "balustrade.tenon.peg", "rails' pegs of", 9, 8, 6, 5, 4, 3));
    }

    private static Pinch? Recess(Job job) => job.Balustrade is not { Cap: { Shape: not CapShape.None } c } || c.Recess + AboveGroove / 2 <= c.Edge ? null : new(
        $"the recess in a cap, {job.Units.With(c.Recess)} deep, leaves less than {job.Units.With(AboveGroove / 2)} of its edge of {job.Units.With(c.Edge)}", $"a recess of {job.Units.Range(6, 10, 1)} in an edge of {job.Units.Range(20, 30, 1)} is usual",
        Remedied.Size(job.Units, "balustrade.cap.recess", "recesses of", 8, 6, 4, 2, 0));
}
