using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Balustrades;

/// <summary>Makes handrails on walls, cut plumb at both ends, and the brackets they stand on: as few as the greatest distance allows, equally spaced.</summary>
internal static class WallRailMaker
{
    // Plumb height of a bracket's block, mm (common practice).
    private const double BracketHeight = 60;

    public static void Add(StairPlan plan, RailRun rail, List<Part> parts, List<Joint> joints)
    {
        var practice = plan.Job.Balustrade!.WallRail;
        var (upright, width, depth) = (Upright.Of(rail), practice.Section.Width, RailEnds.Plumb(rail, practice.Section.Height));
        var outline = Path2.Polygon(new Point2(rail.From, Under(rail.From)), new(rail.To, Under(rail.To)), new(rail.To, rail.TopAt(rail.To)), new(rail.From, rail.TopAt(rail.From)));
        parts.Add(new()
        {
            Id = rail.Id, Name = rail.Name, Mark = rail.Mark, Kind = PartKind.WallRail, Material = plan.Job.Practice.Timber,
            Blank = upright.Around(outline, new Vector2(1, rail.Slope).Unit, width),
            Faces = [new("face side", upright.Frame(width), upright.On(outline), width)],
        });
        var n = 0;
        foreach (var s in Places(plan, rail))
        {
            n++;
            var half = practice.Bracket / 2;
            var block = Path2.Polygon(new Point2(s - half, Under(s - half) - BracketHeight), new(s + half, Under(s + half) - BracketHeight), new(s + half, Under(s + half)), new(s - half, Under(s - half)));
            // From the wall to the middle of the rail and a quarter of its width on.
            var deep = practice.Clear + 3 * width / 4;
            var bracket = new Part
            {
                Id = $"bracket-{rail.Mark[2..]}-{Number.Print(n, 0)}", Name = $"bracket {Number.Print(n, 0)} of {rail.Name}", Mark = "BK" + rail.Mark[2..], Kind = PartKind.Bracket, Material = plan.Job.Practice.Timber,
                Blank = upright.Around(block, new(1, 0), deep),
                Faces = [new("face side", upright.FrameAt(width / 4), upright.On(block), deep)],
            };
            parts.Add(bracket);
            joints.Add(new($"{bracket.Id}/{rail.Id}", JointKind.BracketToRail, bracket.Id, rail.Id, 0));
        }

        double Under(double s) => rail.TopAt(s) - depth;
    }

    /// <summary>Stations of the brackets' middles.</summary>
    internal static IEnumerable<double> Places(StairPlan plan, RailRun rail)
    {
        var practice = plan.Job.Balustrade!.WallRail;
        var from = Math.Min(practice.FromEnd * rail.Pitch.Cosine, rail.Clear / 4);
        var between = rail.Clear - 2 * from;
        var spaces = Math.Max(1, (int)Math.Ceiling(between / rail.Pitch.Cosine / practice.Brackets - Tolerance.Same));
        for (var i = 0; i <= spaces; i++) yield return rail.From + from + between * i / spaces;
    }
}
