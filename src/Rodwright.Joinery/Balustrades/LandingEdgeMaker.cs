using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Steps;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Balustrades;

/// <summary>
/// Makes the nosing and the apron lining at the open edge of a landing, under its base rail (trade-practice.md 4c): the apron's face half a baluster in front of the balusters' middle, so that both are flush, the nosing in
/// front of it as a tread's is in front of its riser; both from newel to newel, or on to the wall.
/// </summary>
internal static class LandingEdgeMaker
{
    /// <summary>Adds the pieces of one rail's edge to the parts, and their joints.</summary>
    public static void Add(StairPlan plan, RailRun rail, string baseRail, List<Part> parts, List<Joint> joints)
    {
        if (plan.Job.LandingEdge is not { } edge || rail.Well is not { } well) return;
        var (practice, balustrade, number) = (plan.Job.Practice, plan.Job.Balustrade!, rail.Mark[2..]);
        var upright = new Upright(rail.Centre, rail.Centre.Along.Left.Dot(well) > 0);
        var isToWall = rail.Upper == BalustradePlan.WallNewel;
        var (from, to) = (rail.From, isToWall ? rail.To + practice.Newel / 2 : rail.To);
        // The base rail stands wholly on it.
        var front = Math.Max(balustrade.Baluster / 2 + practice.Nosing, balustrade.BaseRail.Width / 2);
        var (wide, under) = (Math.Max(practice.NosingPiece, front + balustrade.BaseRail.Width / 2), rail.Floor - practice.Tread);
        var apron = Path2.Rectangle(from, under - edge.DepthOf(plan.Job, Tolerance.IsSame(rail.Floor, plan.Risers * plan.Rise)), to, under);
        parts.Add(new()
        {
            Id = "apron-" + number, Name = Of("apron lining"), Mark = "AP" + number, Kind = PartKind.Apron, Material = edge.Material,
            Blank = upright.Around(apron, new(1, 0), edge.Apron), Faces = [new("face side", upright.FrameAt(front - practice.Nosing), upright.On(apron), edge.Apron)],
        });
        // Straight on it lies beside the nosing piece of the last step, whose end reaches behind the newel as far as it is housed there.
        if (isToWall && balustrade.UpperLanding.Way == LandingWay.On) wide = Math.Min(wide, front + practice.Newel / 2 - practice.NewelHousing);
        var (lip, section) = (upright.FrameAt(front), upright.On(Path2.Rectangle(from, 0, to, 1)));
        var level = new Frame3(new(lip.Origin.X, lip.Origin.Y, rail.Floor), lip.U, -lip.W);
        var top = Path2.Rectangle(section.Bounds.MinX, 0, section.Bounds.MaxX, wide);
        parts.Add(new()
        {
            Id = "landing-nosing-" + number, Name = Of("nosing"), Mark = "LN" + number, Kind = PartKind.LandingNosing, Material = practice.Timber,
            Blank = Blank.Around(top.Bounds, practice.Tread),
            Faces = [new("face side (top)", level, top, practice.Tread)],
            Cuts = [new("nosing", CutKind.RoundedEdge, 0, Path2.Polyline(new Point2(top.Bounds.MinX, 0), new(top.Bounds.MaxX, 0)), TreadMaker.NosingRadius(practice))],
        });
        joints.Add(new($"{baseRail}/landing-nosing-{number}", JointKind.RailOnNosing, baseRail, "landing-nosing-" + number, 0));
        joints.Add(new($"landing-nosing-{number}/apron-{number}", JointKind.NosingOnApron, "landing-nosing-" + number, "apron-" + number, 0));
        foreach (var piece in new[] { "apron-" + number, "landing-nosing-" + number })
            foreach (var newel in new[] { rail.Lower, isToWall ? "" : rail.Upper }.Where(n => n.Length > 0)) joints.Add(new($"{piece}/{newel}", JointKind.RailToNewel, piece, newel, 0));

        string Of(string what) => rail.Name.Replace("handrail", what, StringComparison.Ordinal);
    }
}
