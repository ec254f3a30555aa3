using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Proof;

/// <summary>
/// Proves upright faces that only meet: over the whole length that is stated to touch, both pieces have their edge there; and where one piece comes near the other anywhere, it touches it.
/// </summary>
internal static class ContactProof
{
    // Nearer than this they are meant to touch; the clash proof sees to it that they do no more.
    private const double Near = 1;

    // Between places looked at, mm.
    private const double Step = 0.5;

    // So many places from one that is not near.
    private const int Leaving = 4;

    /// <param name="joint">The joint.</param>
    /// <param name="male">One piece.</param>
    /// <param name="female">The other.</param>
    /// <param name="kind">How they meet, in words.</param>
    /// <param name="stated">What ought to touch, in plan.</param>
    public static JointProof Prove(Joint joint, Part male, Part female, string kind, IReadOnlyList<Path2> stated)
    {
        var own = InWorld(male);
        var other = female.Kind == PartKind.Newel ? Path2.Polygon(ClashProof.RingOf(female)) : InWorld(female);
        var (gap, touching) = (0.0, 0);
        var ring = own.Flattened();
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            var n = Math.Max(1, (int)(a.DistanceTo(b) / Step));
            var off = Enumerable.Range(0, n + 1).Select(k => other.DistanceTo(a.Towards(b, (double)k / n))).ToList();
            for (var k = 0; k <= n; k++)
            {
                // Where an edge leaves the other piece, its last places there lie near without being meant to touch.
                if (off[Math.Max(0, k - Leaving)..Math.Min(n + 1, k + Leaving + 1)].Exists(d => d > Near)) continue;
                gap = Math.Max(gap, off[k]);
                touching++;
            }
        }
        foreach (var contact in stated) gap = Math.Max(gap, Off(contact, own, other));
        var (upper, lower) = (Math.Min(Top(male), Top(female)), Math.Max(Bottom(male), Bottom(female)));
        var meets = touching * Step > 1 && upper - lower > Tolerance.Joint;
        // Places are taken on the chords of arcs, which leave them by so much.
        return new(joint.Id, kind, male.Id, female.Id, meets ? gap : double.PositiveInfinity, 0, 0, "", meets && gap <= Tolerance.Joint + Tolerance.Chord);
    }

    /// <summary>How far, at most, either piece's edge lies off a line on which both ought to lie.</summary>
    private static double Off(Path2 contact, Path2 own, Path2 other)
    {
        var worst = 0.0;
        var line = contact.Flattened();
        for (var i = 1; i < line.Count; i++)
        {
            var n = Math.Max(1, (int)(line[i - 1].DistanceTo(line[i]) / Step));
            for (var k = 0; k <= n; k++)
            {
                var p = line[i - 1].Towards(line[i], (double)k / n);
                worst = Math.Max(worst, Math.Max(own.DistanceTo(p), other.DistanceTo(p)));
            }
        }
        return worst;
    }

    private static Path2 InWorld(Part part) => part.FaceSide.Outline.Moved(p => part.FaceSide.Frame.ToWorld(p).Plan);

    private static double Top(Part part) => part.Kind == PartKind.Newel ? part.FaceSide.Frame.Origin.Z + part.FaceSide.Outline.Bounds.MaxY : part.FaceSide.Frame.Origin.Z;

    private static double Bottom(Part part) => part.Kind == PartKind.Newel ? part.FaceSide.Frame.Origin.Z : part.FaceSide.Frame.Origin.Z - part.FaceSide.Thickness;
}
