using System.Globalization;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Machining;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Tests.Machining;

/// <summary>
/// A part as its machining file alone tells it: outlines and cuts carried back to its faces. Of the part itself only where it stands is taken (frames, corner and grain of the blank, thickness), never a shape.
/// </summary>
internal sealed class ReadPart
{
    /// <summary>A recess or hole read from the file, in the frame of its face.</summary>
    public sealed record ReadCut(int Face, string Operation, double Depth, Path2 Shape);

    public ReadPart(Part part, DxfReader.Drawing file, StairPlan plan)
    {
        Stands = part;
        foreach (var (layer, path) in file.Paths)
        {
            var inEnd = part.Kind == PartKind.WallString && layer.StartsWith("END-", StringComparison.Ordinal);
            var face = inEnd || (layer == "TOP-EDGE" && part.Kind != PartKind.BentRiser) ? 1 : part.Kind.IsPost() ? Enumerable.Range(0, part.Faces.Length).First(i => layer.StartsWith(Prefix(part, i), StringComparison.Ordinal)) : 0;
            var name = inEnd ? layer[4..] : part.Kind.IsPost() ? layer[Prefix(part, face).Length..] : layer;
            var shape = path.Moved(p => Back(face, p));
            if (part.Kind == PartKind.BentRiser)
            {
                var bounds = part.FaceSide.Outline.Bounds;
                var shift = plan.RoundedEnds[0].Out.X > 0 ? bounds.MinX : bounds.MaxX - part.Blank.Length;
                shape = path.Moved(p => new(p.X + shift, p.Y - (name == "TOP-EDGE" ? part.Blank.Width + MachiningFrame.Gap : 0)));
            }
            if (name is "OUTLINE") Outlines[face] = shape;
            else if (name is "TOP-EDGE") TopEdge = shape;
            else if (name is not ("BLANK" or "JOINTED" or "MARKING" or "TOOL-RADIUS"))
            {
                var dash = name.LastIndexOf('-');
                Cuts.Add(new(face, name[..dash], double.Parse(name[(dash + 1)..].Replace('_', '.'), CultureInfo.InvariantCulture), shape));
            }
            else if (name is "MARKING" && shape.Closed) Seats.Add((face, shape));
        }
    }

    /// <summary>Where it stands; its shapes are not read.</summary>
    public Part Stands { get; }

    public Dictionary<int, Path2> Outlines { get; } = [];

    public Path2? TopEdge { get; }

    public List<ReadCut> Cuts { get; } = [];

    public List<(int Face, Path2 Shape)> Seats { get; } = [];

    public Frame3 Frame(int face) => Stands.Faces[face].Frame;

    /// <summary>Outline in plan of a tread, nosing piece, block or riser.</summary>
    public List<Point2> Plan => [.. (TopEdge ?? Outlines[0]).Flattened().Select(p => Frame(TopEdge is null ? 0 : Stands.Faces.Length - 1).ToWorld(p).Plan)];

    public double Top => TopEdge is null || Stands.Kind == PartKind.BentRiser ? Frame(0).Origin.Z : Frame(0).Origin.Z + Outlines[0].Bounds.MaxY;

    public double Bottom => TopEdge is null ? Top - Stands.FaceSide.Thickness : Top - Outlines[0].Bounds.Height;

    /// <summary>Underside and top at a place of the plan; a round along the nosing draws them together.</summary>
    public (double Low, double High) HeightsAt(Point2 p)
    {
        if (Cuts.FirstOrDefault(c => c.Operation == "ROUND") is not { } round) return (Bottom, Top);
        var line = round.Shape.Moved(q => Frame(0).ToWorld(q).Plan);
        var behind = line.DistanceTo(p);
        if (round.Shape.EdgeCount == 1)
        {
            var (a, b, _) = line.Edge(0);
            behind = Math.Abs((b - a).Unit.Cross(p - a));
        }
        if (behind >= round.Depth) return (Bottom, Top);
        var half = Math.Sqrt(round.Depth * round.Depth - (round.Depth - behind) * (round.Depth - behind));
        return (Bottom + round.Depth - half, Top - round.Depth + half);
    }

    private static string Prefix(Part post, int face) => post.Faces[face].Looks.ToUpperInvariant().Replace(' ', '-') + "-";

    private Point2 Back(int face, Point2 p)
    {
        var blank = Stands.Blank;
        if (Stands.Kind.IsPost()) return p - new Vector2(MachiningFrame.OffsetOf(Stands, face), 0);
        // The end of a wall string stands beside its board; where it stands in the room is the frame's.
        if (face == 1 && Stands.Kind == PartKind.WallString) return p + new Vector2(Stands.Faces[1].Outline.Bounds.MinX - blank.Length - MachiningFrame.Gap, Stands.Faces[1].Outline.Bounds.MinY);
        return face == 0 ? blank.Corner + p.X * blank.Grain + p.Y * blank.Grain.Left : new(p.X + blank.Corner.X, p.Y - blank.Width - MachiningFrame.Gap);
    }
}
