using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Balustrades;

/// <summary>Balusters between a base rail and a handrail, and the fillets between them in both grooves. Every piece is a part in its place; equal ones share a mark.</summary>
internal sealed class BalusterMaker(StairPlan plan, BalustradePlan balustrade)
{
    private readonly ShapeMarks balusters = new("BA"), fillets = new("FL");
    // A fillet shorter than this is left out, mm.
    private const double Shortest = 5;

    private int balusterCount, filletCount;

    /// <summary>The parts, and their joints with the two rails.</summary>
    public void Fill(RailRun rail, BaseRail below, List<Part> parts, List<Joint> joints)
    {
        var practice = plan.Job.Balustrade!;
        var row = balustrade.RowOf(plan, rail);
        var (upright, under) = (Upright.Of(rail), below.Below);
        var (mouth, ceiling) = HandrailMaker.GrooveLines(plan, rail);
        // The handrail's longest point, where it ends under a string.
        var end = under?.Meets(mouth) ?? double.PositiveInfinity;
        for (var i = 0; i <= row.Count; i++)
        {
            var start = rail.From + i * (row.Gap + row.Side);
            if (practice.Groove > 0)
            {
                Fillet(below.GrooveFloor, below.Over, below.Id, rail.Face);
                Fillet(mouth, ceiling, rail.Id, end);
            }
            if (i == row.Count) break;
            var (from, to) = (rail.From + row.Start(i), rail.From + row.Start(i) + row.Side);
            var (foot, head) = (GraphCut.Between(below.GrooveFloor, from, to), GraphCut.Between(ceiling, from, to));
            var isCut = under?.Meets(head) is not null;
            var baluster = Piece(under?.Trim(foot, head) ?? BaseRail.Between(foot, head), PartKind.Baluster, "baluster", ++balusterCount, balusters, new(0, 1));
            parts.Add(baluster);
            joints.Add(new($"{baluster.Id}/{below.Id}", JointKind.InGroove, baluster.Id, below.Id, practice.Groove));
            if (from < end) joints.Add(new($"{baluster.Id}/{rail.Id}", JointKind.InGroove, baluster.Id, rail.Id, isCut ? 0 : practice.Groove));
            if (isCut) joints.Add(new($"{baluster.Id}/{under!.String}", JointKind.UnderString, baluster.Id, under.String, 0));

            void Fillet(Path2 low, Path2 high, string other, double most)
            {
                var stop = Math.Min(start + row.Gap, most);
                if (stop - start < Shortest) return;
                var (left, right) = (GraphCut.Between(low, start, stop), GraphCut.Between(high, start, stop));
                var isShort = under?.Meets(right) is not null;
                if (isShort && under!.Meets(left) is { } ends && ends - start < Shortest) return;
                var fillet = Piece(under?.Trim(left, right) ?? BaseRail.Between(left, right), PartKind.Fillet, "fillet", ++filletCount, fillets, (left.Vertices[^1].At - left.Vertices[0].At).Unit);
                parts.Add(fillet);
                joints.Add(new($"{fillet.Id}/{other}", JointKind.InGroove, fillet.Id, other, isShort ? 0 : practice.Groove));
                if (isShort) joints.Add(new($"{fillet.Id}/{under!.String}", JointKind.UnderString, fillet.Id, under.String, 0));
            }
        }

        Part Piece(Path2 outline, PartKind kind, string name, int number, ShapeMarks marks, Vector2 grain)
        {
            var blank = upright.Around(outline, grain, practice.Baluster);
            var face = upright.On(outline);
            return new()
            {
                Id = $"{name}-{Number.Print(number, 0)}", Name = $"{name} {Number.Print(number, 0)}", Mark = marks.Of(face, blank), Kind = kind, Material = plan.Job.Practice.Timber,
                Blank = blank, Faces = [new("face side", upright.Frame(practice.Baluster), face, practice.Baluster)],
            };
        }
    }
}
