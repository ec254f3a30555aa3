using System.Globalization;
using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Rod.Tests.Machining;

/// <summary>Joints closed in the world from parts as their files tell them: how far each is from closing, mm.</summary>
internal static class ReadJoints
{
    // What passes a recess by more than this belongs to the next face round a corner or arris.
    private const double Past = 1;

    public static double Gap(Joint joint, ReadPart male, ReadPart female, Practice practice) => joint.Kind switch
    {
        JointKind.TreadHousing or JointKind.RiserHousing => female.Stands.Cuts.Where(c => c.Joint == joint.Id).Select(c => c.Face).Distinct()
            .Max(face => Housed(male, female, face, joint.Kind == JointKind.RiserHousing, joint.Depth)),
        JointKind.Tenon => Tenoned(male, female, female.Stands.Cuts.First(c => c.Joint == joint.Id).Face, practice.Tenon),
        JointKind.Corner => Corner(male, female),
        JointKind.RiserToTread => practice.RiserOnTread ? Math.Abs(male.Bottom - female.Top) : FaceOnBack(male, female),
        JointKind.TreadOnRiser => Math.Abs(male.Bottom - female.Top),
        _ => double.NaN,
    };

    private static double Housed(ReadPart male, ReadPart female, int face, bool isRiser, double depth)
    {
        var frame = female.Frame(face);
        var recesses = female.Cuts.Where(c => c.Face == face && c.Operation == "HOUSING").ToList();
        var outline = female.Outlines[face];
        var local = male.Plan.Select(p => frame.ToLocal(new(p.X, p.Y, frame.Origin.Z))).ToList();
        var best = double.PositiveInfinity;
        foreach (var stretch in Stretches(local, -0.001))
        {
            foreach (var recess in recesses)
            {
                var (from, to) = (Math.Max(stretch.From, recess.Shape.Bounds.MinX - Past), Math.Min(stretch.To, recess.Shape.Bounds.MaxX + Past));
                if (to - from < 1) continue;
                var samples = Samples(from, to).Select(u => (U: u, H: male.HeightsAt(frame.ToWorld(new(u, 0), -0.001).Plan)))
                    .Select(s => (s.U, Low: s.H.Low - frame.Origin.Z, High: s.H.High - frame.Origin.Z)).ToList();
                // Lying in the recess (or where the carrier ends).
                var past = samples.SelectMany(s => new[] { new Point2(s.U, s.Low), new Point2(s.U, s.High) }).Where(p => outline.Holds(p))
                    .Select(p => recess.Shape.Holds(p) ? 0 : recess.Shape.DistanceTo(p)).DefaultIfEmpty(double.PositiveInfinity).Max();
                // Bearing in it: a tread's top under the recess's upper edge, a riser's face against its front. In a newel, where nothing is
                // wedged, its underside bears too: the riser above may stand on all of a short end.
                var edges = isRiser
                    ? new[] { stretch.From, stretch.To }.Select(u => Enumerable.Range(1, 9).Select(i => new Point2(u, samples[0].Low + (samples[0].High - samples[0].Low) * i / 10)))
                    : female.Stands.Kind == PartKind.Newel ? [samples.Select(s => new Point2(s.U, s.High)), samples.Select(s => new Point2(s.U, s.Low))]
                    : [samples.Select(s => new Point2(s.U, s.High))];
                // An end that lies wholly in its nosing's round may run out of a recess cut square: it bears on its pencilled seat.
                var mayRunOut = isRiser || samples.TrueForAll(s => s.High < male.Top - frame.Origin.Z - 0.05);
                var bears = edges.Min(e => e.Select(p => Touch(female, face, recess.Shape, p, mayRunOut)).Order().ElementAt(2));
                // In to the depth of its layer.
                var reach = -local.Where(p => p.Face.X > from - 1 && p.Face.X < to + 1 && -p.W < recess.Depth + 1).Select(p => p.W).DefaultIfEmpty(0).Min();
                var shy = Math.Abs(reach - Math.Min(depth, recess.Depth));
                best = Math.Min(best, Math.Max(Math.Max(past, bears), shy));
            }
        }
        return best;
    }

    /// <summary>Distance to the recess's edge; where the recess runs out through an arris, to the pencilled seat in it.</summary>
    private static double Touch(ReadPart female, int face, Path2 recess, Point2 p, bool mayRunOut)
    {
        var own = recess.DistanceTo(p);
        var runsOut = mayRunOut && recess.Vertices.Any(v => female.Outlines[face].DistanceTo(v.At) < 0.05);
        return runsOut ? female.Seats.Where(s => s.Face == face).Select(s => s.Shape.DistanceTo(p)).Append(own).Min() : own;
    }

    private static double Tenoned(ReadPart male, ReadPart female, int face, TenonPractice practice)
    {
        var (own, plane) = (male.Frame(0), female.Frame(face));
        var shoulder = own.ToLocal(plane.Origin).Face.X;
        var points = own.U.Dot(plane.W) < 0 ? 1 : -1;
        var ring = male.Outlines[0].Vertices.Select(v => v.At).ToList();
        var gap = ring.Min(p => Math.Abs(p.X - shoulder));
        var reach = ring.Max(p => points * (p.X - shoulder));
        var cheek = male.Cuts.Where(c => c.Operation == "CHEEK").MinBy(c => c.Shape.Vertices.Min(v => Math.Abs(v.At.X - shoulder)))!;
        var found = 0;
        foreach (var mortice in female.Cuts.Where(c => c.Face == face && c.Operation is "MORTICE" or "HAUNCH" && c.Face == face))
        {
            var corners = mortice.Shape.Vertices.Select(v => own.ToLocal(plane.ToWorld(v.At))).ToList();
            if (corners.Min(c => Math.Abs(c.W + male.Stands.FaceSide.Thickness)) > 1) continue;
            var (low, high) = (corners.Min(c => c.Face.Y), corners.Max(c => c.Face.Y));
            // The tenon's own edges lie on both cheeks of the mortice, and its end as far short of the bottom as it is meant to.
            gap = Math.Max(gap, new[] { low, high }.Max(z => ring.Where(p => points * (p.X - shoulder) > -1).Min(p => Math.Abs(p.Y - z))));
            gap = Math.Max(gap, Math.Max(Math.Abs(corners.Min(c => c.W) + male.Stands.FaceSide.Thickness), Math.Abs(corners.Max(c => c.W) + cheek.Depth)));
            var end = mortice.Operation == "MORTICE" ? reach : ring.Where(p => points * (p.X - shoulder) > 1 && p.Y > low - 0.1 && p.Y < high + 0.1).Min(p => points * (p.X - shoulder));
            gap = Math.Max(gap, Math.Abs(mortice.Depth - practice.MorticeClearance - end));
            found++;
        }
        if (found != 3) return double.PositiveInfinity;
        // The pegs' holes: level with one another, drawn towards the shoulder.
        foreach (var hole in male.Cuts.Where(c => c.Operation == "BORE" && Math.Abs(c.Shape.Bounds.Centre.X - shoulder) < reach).Select(c => c.Shape.Bounds.Centre))
        {
            gap = Math.Max(gap, female.Cuts.Where(c => c.Operation == "BORE")
                .Where(c => Math.Abs(female.Frame(c.Face).W.Dot(own.W)) > 0.9)
                .Select(c => own.ToLocal(female.Frame(c.Face).ToWorld(c.Shape.Bounds.Centre)).Face)
                .Select(p => Math.Max(Math.Abs(points * (p.X - hole.X) - practice.Draw), Math.Abs(p.Y - hole.Y))).DefaultIfEmpty(double.PositiveInfinity).Min());
        }
        return gap;
    }

    private static double Corner(ReadPart male, ReadPart female)
    {
        if (female.Cuts.Any(c => c.Operation == "DOVETAIL")) return Dovetailed(male, female);
        var frame = female.Frame(0);
        // A tongue is what two cheeks leave of the end.
        var cheeks = male.Cuts.Where(c => c.Operation.StartsWith("TENON-CHEEK", StringComparison.Ordinal)).ToList();
        var (near, far) = cheeks.Count == 0 ? (0, male.Stands.FaceSide.Thickness) : (cheeks.Min(c => c.Depth), Beneath(cheeks.MaxBy(c => c.Depth)!));
        var ends = male.Outlines[0].Vertices.SelectMany(v => new[] { -near, -far }.Select(w => frame.ToLocal(male.Frame(0).ToWorld(v.At, w)))).ToList();
        var reach = -ends.Min(e => e.W);
        var end = Box2.Of(ends.Where(e => -e.W > reach - 0.05).Select(e => e.Face));
        return female.Cuts.Where(c => c.Operation == "CORNER-HOUSING").Min(c => new[]
        {
            reach - c.Depth, end.MinX - c.Shape.Bounds.MinX, end.MaxX - c.Shape.Bounds.MaxX, end.MinY - c.Shape.Bounds.MinY, end.MaxY - c.Shape.Bounds.MaxY,
        }.Max(Math.Abs));
    }

    /// <summary>TENON-CHEEK-18-TO-27: what is taken off begins so far below the face.</summary>
    private static double Beneath(ReadPart.ReadCut cheek) => cheek.Operation.Split('-') is [_, _, var from, "TO"] ? double.Parse(from.Replace('_', '.'), CultureInfo.InvariantCulture) : double.NaN;

    /// <summary>Every socket's corners are corners of the tails, from the board's end as deep as the other board is thick; every tail has one.</summary>
    private static double Dovetailed(ReadPart male, ReadPart female)
    {
        var (own, plane) = (male.Frame(0), female.Frame(0));
        var ring = male.Outlines[0].Vertices.Select(v => v.At).ToList();
        var behind = ring.ToDictionary(p => p, p => -plane.ToLocal(own.ToWorld(p)).W);
        var tips = behind.Where(b => b.Value > behind.Values.Max() - 0.05).Select(b => b.Key).ToList();
        var sockets = female.Cuts.Where(c => c.Operation == "DOVETAIL").ToList();
        var gap = sockets.Count * 2 == tips.Count ? 0 : double.PositiveInfinity;
        foreach (var socket in sockets)
        {
            foreach (var v in socket.Shape.Vertices)
            {
                var (near, far) = (own.ToLocal(female.Frame(1).ToWorld(v.At)), own.ToLocal(female.Frame(1).ToWorld(v.At, -socket.Depth)));
                gap = new[] { gap, ring.Min(p => p.DistanceTo(near.Face)), Math.Abs(Math.Max(near.W, far.W)), Math.Abs(Math.Min(near.W, far.W) + male.Stands.FaceSide.Thickness) }.Max();
            }
        }
        return gap;
    }

    private static double FaceOnBack(ReadPart riser, ReadPart tread)
    {
        var face = riser.Frame(0);
        return tread.Plan.Select(p => Math.Abs(face.ToLocal(new(p.X, p.Y, 0)).W)).Order().ElementAt(1);
    }

    private static IEnumerable<double> Samples(double from, double to) => Enumerable.Range(0, 41).Select(i => from + (to - from) * i / 40);

    private static IEnumerable<(double From, double To)> Stretches(List<(Point2 Face, double W)> ring, double level)
    {
        var crossings = new List<double>();
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            if (a.W >= level != b.W >= level) crossings.Add(a.Face.X + (b.Face.X - a.Face.X) * (a.W - level) / (a.W - b.W));
        }
        crossings.Sort();
        for (var i = 0; i + 1 < crossings.Count; i += 2) yield return (crossings[i], crossings[i + 1]);
    }
}
