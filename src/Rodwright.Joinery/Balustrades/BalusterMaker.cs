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
    private int balusterCount, filletCount;

    /// <summary>The parts, and their joints with the two rails.</summary>
    public void Fill(RailRun rail, BaseRail below, List<Part> parts, List<Joint> joints)
    {
        var practice = plan.Job.Balustrade!;
        var row = balustrade.RowOf(plan, rail);
        var (groove, upright) = (HandrailMaker.GrooveOf(plan, rail), Upright.Of(rail));
        // The groove's mouth and its bottom, as lines from end to end.
        var (mouth, ceiling) = (Path2.Polyline(groove.Vertices[0].At, groove.Vertices[1].At), Path2.Polyline(groove.Vertices[3].At, groove.Vertices[2].At));
        for (var i = 0; i <= row.Count; i++)
        {
            var start = rail.From + i * (row.Gap + row.Side);
            if (practice.Groove > 0)
            {
                Fillet(below.GrooveFloor, below.Over, below.Id);
                Fillet(mouth, ceiling, rail.Id);
            }
            if (i == row.Count) break;
            var (from, to) = (rail.From + row.Start(i), rail.From + row.Start(i) + row.Side);
            var baluster = Piece(BaseRail.Between(GraphCut.Between(below.GrooveFloor, from, to), GraphCut.Between(ceiling, from, to)), PartKind.Baluster, "baluster", ++balusterCount, balusters, new(0, 1));
            parts.Add(baluster);
            foreach (var other in new[] { below.Id, rail.Id }) joints.Add(new($"{baluster.Id}/{other}", JointKind.InGroove, baluster.Id, other, practice.Groove));

            void Fillet(Path2 low, Path2 high, string other)
            {
                var (left, right) = (GraphCut.Between(low, start, start + row.Gap), GraphCut.Between(high, start, start + row.Gap));
                var fillet = Piece(BaseRail.Between(left, right), PartKind.Fillet, "fillet", ++filletCount, fillets, (left.Vertices[^1].At - left.Vertices[0].At).Unit);
                parts.Add(fillet);
                joints.Add(new($"{fillet.Id}/{other}", JointKind.InGroove, fillet.Id, other, practice.Groove));
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
