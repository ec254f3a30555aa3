using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Balustrades;

/// <summary>Makes handrails between newels: a straight piece with plumb shoulders and central tenons, grooved underneath for the balusters. Left-hand frame.</summary>
internal static class HandrailMaker
{
    public static Part Make(StairPlan plan, RailRun rail, IReadOnlyCollection<RailEnd> ends, UnderString? under)
    {
        var practice = plan.Job.Balustrade!;
        var upright = Upright.Of(rail);
        var (width, depth) = (practice.Rail.Width, RailEnds.Plumb(rail, practice.Rail.Height));
        var (lower, upper) = (ends.FirstOrDefault(e => !e.IsUpper), ends.FirstOrDefault(e => e.IsUpper));
        Path2 outline;
        if (under is not null)
            outline = new([.. under.Trim(Line(rail, depth), Line(rail, 0)).Vertices, .. (lower?.Outline.Reverse() ?? []).Select(p => new Vertex2(p))], true);
        else
        {
            outline = Path2.Polygon(
            [
                new(rail.From, rail.TopAt(rail.From) - depth), new(rail.To, rail.TopAt(rail.To) - depth), .. upper?.Outline ?? [],
                new(rail.To, rail.TopAt(rail.To)), new(rail.From, rail.TopAt(rail.From)), .. lower?.Outline.Reverse() ?? [],
            ]);
        }
        var cuts = new List<Cut>();
        if (practice.Groove > 0) cuts.Add(Groove(upright, GrooveOf(plan, rail, under), width, practice.Baluster));
        foreach (var end in ends)
        {
            var (tenon, side) = (practice.Tenon.Thickness, end.IsUpper ? "upper" : "lower");
            cuts.Add(new($"cheek-{side}-front", CutKind.Cheek, 0, upright.On(end.Shape), (width - tenon) / 2, end.Joint));
            cuts.Add(new($"cheek-{side}-back", CutKind.Cheek, 0, upright.On(end.Shape), width, end.Joint) { Beneath = (width + tenon) / 2 });
            var s = end.Shoulder + end.Points * (end.PegBack - plan.Job.Practice.Tenon.Draw);
            cuts.Add(new($"peg-{side}", CutKind.Bore, 0, upright.On(Path2.Circle(new(s, end.PegAt), practice.Tenon.Peg / 2)), (width + tenon) / 2, end.Joint,
                Note: $"draw {plan.Units.Print(plan.Job.Practice.Tenon.Draw)} nearer the shoulder") { Beneath = (width - tenon) / 2 });
        }
        return new()
        {
            Id = rail.Id, Name = rail.Name, Mark = rail.Mark, Kind = PartKind.Handrail, Material = plan.Job.Practice.Timber,
            Blank = upright.Around(outline, new Vector2(1, rail.Slope).Unit, width),
            Faces = [new("face side", upright.Frame(width), upright.On(outline), width)],
            Cuts = [.. cuts],
        };
    }

    /// <summary>The groove under a rail, in (s, z), from shoulder to shoulder, or to the string it ends under.</summary>
    public static Path2 GrooveOf(StairPlan plan, RailRun rail, UnderString? under)
    {
        var (mouth, ceiling) = GrooveLines(plan, rail);
        return under?.Trim(mouth, ceiling) ?? BaseRail.Between(mouth, ceiling);
    }

    /// <summary>The groove's mouth and its bottom, as lines from face to face.</summary>
    public static (Path2 Mouth, Path2 Ceiling) GrooveLines(StairPlan plan, RailRun rail)
    {
        var (practice, depth) = (plan.Job.Balustrade!, RailEnds.Plumb(rail, plan.Job.Balustrade!.Rail.Height));
        return (Line(rail, depth), Line(rail, depth - RailEnds.Plumb(rail, practice.Groove)));
    }

    /// <summary>A line so far below the rail's top, plumb, from newel face to newel face.</summary>
    private static Path2 Line(RailRun rail, double below) => Path2.Polyline(new Point2(rail.From, rail.TopAt(rail.From) - below), new(rail.Face, rail.TopAt(rail.Face) - below));

    /// <summary>A groove in the middle of a rail's width.</summary>
    internal static Cut Groove(Upright upright, Path2 shape, double width, double across) =>
        new("groove", CutKind.Groove, 0, upright.On(shape), (width + across) / 2) { Beneath = (width - across) / 2 };
}
