using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Scenes;

/// <summary>
/// How a stair comes apart, read from its joints, in an order in which it could be done: strings and newels leave the steps square to the housings, with the newels
/// still on their strings, or where a frame has steps all round it the steps leave it; then the tenons are drawn along the strings; then the risers come away from the backs of the treads below them, and the treads off their risers.
/// </summary>
public static class TakenApart
{
    /// <summary>How far strings and newels are moved off the steps, mm.</summary>
    private const double Aside = 380;

    /// <summary>How far each tenon is drawn: clear of the longest in a large newel, mm.</summary>
    private const double Drawn = 160;

    /// <summary>How far a riser comes away backwards, mm.</summary>
    private const double Back = 110;

    /// <summary>How far a tread is lifted, mm.</summary>
    private const double Lifted = 140;

    /// <summary>The way of every part, by its id.</summary>
    public static IReadOnlyDictionary<string, ImmutableArray<Leg>> Of(Kit kit)
    {
        var ways = kit.Parts.ToDictionary(p => p.Id, WayOfStep);
        var carriers = kit.Parts.Where(IsFramed).ToDictionary(p => p.Id);
        var tenons = kit.Joints.Where(j => j.Kind is JointKind.Tenon or JointKind.RailTenon).ToList();
        var frames = FramesOf(carriers, tenons);
        var standing = frames.Where(f => IsRound(FacesOf(f))).SelectMany(f => f).Select(p => p.Id).ToHashSet();
        foreach (var part in kit.Parts.Where(p => p.Kind.IsOfStep()))
            if (OffStanding(kit, part, standing) is { Length: > 0 } off) ways[part.Id] = [new(off, 0, 0.5), .. ways[part.Id]];
        foreach (var frame in frames)
        {
            var aside = standing.Contains(frame[0].Id) ? new Vector3(0, 0, 0) : (standing.Count > 0 ? 2 : 1) * AsideOf(frame);
            foreach (var (id, along) in DrawnApart(frame, tenons, carriers))
                ways[id] = along.Length > 0 ? [new(aside, 0, 0.5), new(along, 0.35, 0.7)] : [new(aside, 0, 0.5)];
        }
        FittedApart.Follow(kit, ways);
        return ways;
    }

    /// <summary>What hangs together by tenons.</summary>
    private static bool IsFramed(Part part) => part.Kind.IsCarrier() || part.Kind is PartKind.Handrail or PartKind.WallNewel;

    /// <summary>A bent riser comes off forwards, its wedges and then its block upwards after the tread.</summary>
    private static ImmutableArray<Leg> WayOfStep(Part part) => part.Kind switch
    {
        PartKind.Riser or PartKind.TaperedRiser => [new(-Back * part.FaceSide.Frame.W, 0.4, 0.75)],
        PartKind.BentRiser => [new(-Back * part.FaceSide.Frame.V, 0.4, 0.75)],
        PartKind.Block => [new(Lifted / 7 * Vector3.Up, 0.6, 1)],
        PartKind.Wedges => [new(4 * Lifted / 7 * Vector3.Up, 0.6, 1)],
        _ => [new(Lifted * Vector3.Up, 0.6, 1)],
    };

    /// <summary>Strings and newels that hang together by tenons.</summary>
    private static List<List<Part>> FramesOf(Dictionary<string, Part> carriers, List<Joint> tenons)
    {
        var frames = carriers.Values.Select(p => new List<Part> { p }).ToList();
        foreach (var tenon in tenons)
        {
            var (one, other) = (frames.Find(f => f.Exists(p => p.Id == tenon.Male))!, frames.Find(f => f.Exists(p => p.Id == tenon.Female))!);
            if (ReferenceEquals(one, other)) continue;
            one.AddRange(other);
            frames.Remove(other);
        }
        return frames;
    }

    /// <summary>Away from every face that takes steps: square to all of them at once, each as far.</summary>
    private static Vector3 AsideOf(List<Part> frame) => FacesOf(frame).Aggregate(new Vector3(0, 0, 0), (sum, w) => sum + -Aside * w);

    /// <summary>Whether a frame has steps on opposite sides: the strings round a well, between flights that come back. It cannot leave them; they leave it.</summary>
    private static bool IsRound(List<Vector3> faces) => faces.Exists(a => faces.Exists(b => a.Dot(b) < -0.9));

    /// <summary>How far a tread or riser moves square off the standing faces its step is housed in; nothing where there are none.</summary>
    private static Vector3 OffStanding(Kit kit, Part part, HashSet<string> standing)
    {
        var step = kit.Parts.Where(p => p.Kind.IsOfStep() && p.Step == part.Step).Select(p => p.Id).ToHashSet();
        var ways = new List<Vector3>();
        foreach (var joint in kit.Joints.Where(j => step.Contains(j.Male) && standing.Contains(j.Female)))
        {
            var carrier = kit.Find(joint.Female);
            foreach (var way in carrier.Cuts.Where(c => c.Joint == joint.Id && c.Kind == CutKind.Housing).Select(c => carrier.Faces[c.Face].Frame.W))
                if (!ways.Exists(w => w.Dot(way) > 0.9)) ways.Add(way);
        }
        return ways.Aggregate(new Vector3(0, 0, 0), (sum, w) => sum + Aside * w);
    }

    private static List<Vector3> FacesOf(List<Part> frame)
    {
        var ways = new List<Vector3>();
        foreach (var part in frame)
            foreach (var face in part.Cuts.Where(c => c.Kind == CutKind.Housing).Select(c => c.Face).Distinct())
                if (!ways.Exists(w => w.Dot(part.Faces[face].Frame.W) > 0.9)) ways.Add(part.Faces[face].Frame.W);
        return ways;
    }

    /// <summary>How far each part of a frame moves along the strings, counted from the part with the most tenons.</summary>
    private static Dictionary<string, Vector3> DrawnApart(List<Part> frame, List<Joint> tenons, Dictionary<string, Part> carriers)
    {
        var root = frame.OrderByDescending(p => tenons.Count(t => t.Male == p.Id || t.Female == p.Id)).ThenByDescending(p => p.Kind == PartKind.Newel).First();
        var moved = new Dictionary<string, Vector3> { [root.Id] = new(0, 0, 0) };
        var next = new Queue<string>([root.Id]);
        while (next.TryDequeue(out var id))
        {
            foreach (var tenon in tenons.Where(t => t.Male == id || t.Female == id))
            {
                var other = tenon.Male == id ? tenon.Female : tenon.Male;
                if (moved.ContainsKey(other)) continue;
                var outOfNewel = OutOfNewel(carriers[tenon.Male], carriers[tenon.Female]);
                moved[other] = moved[id] + (other == tenon.Male ? Drawn : -Drawn) * outOfNewel;
                next.Enqueue(other);
            }
        }
        return moved;
    }

    /// <summary>The level direction in which a string's tenon leaves its newel.</summary>
    private static Vector3 OutOfNewel(Part @string, Part newel)
    {
        var face = @string.FaceSide;
        var across = face.Frame.ToLocal(newel.FaceSide.Frame.ToWorld(newel.FaceSide.Outline.Bounds.Centre, -newel.FaceSide.Thickness / 2)).Face.X;
        return (face.Outline.Bounds.Centre.X > across ? 1 : -1) * face.Frame.U;
    }
}
