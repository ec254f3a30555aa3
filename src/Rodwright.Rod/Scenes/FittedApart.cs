using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Scenes;

/// <summary>
/// How a balustrade comes apart: with the strings, newels and rails it stands on or between; when those are drawn apart, upwards off one another: base rail, its fillets, balusters, the rail's fillets, the rail, caps.
/// </summary>
internal static class FittedApart
{
    /// <summary>How far each layer is lifted off the one below it: clear of the grooves, mm.</summary>
    private const double Layer = 65;

    /// <summary>How far glue blocks drop: clear of the risers they stand behind, mm.</summary>
    private const double Dropped = 260;

    /// <summary>Gives every fitted piece the way of what holds it, and lifts it.</summary>
    public static void Follow(Kit kit, Dictionary<string, ImmutableArray<Leg>> ways)
    {
        foreach (var part in kit.Parts.Where(p => p.Kind.IsFitted() && p.Kind is not (PartKind.Handrail or PartKind.WallNewel or PartKind.Wedge or PartKind.GlueBlock or PartKind.Peg or PartKind.Carriage or PartKind.CarriageBracket)))
        {
            var held = HeldBy(kit, part);
            ways[part.Id] = [.. held is null ? [] : ways[held.Id].Where(l => l.From < 0.7), new(LayerOf(part, held) * Layer * Vector3.Up, 0.7, 1)];
        }
        // A carriage comes away below, and its brackets off its side.
        foreach (var carriage in kit.Parts.Where(p => p.Kind is PartKind.Carriage or PartKind.CarriageBracket))
            ways[carriage.Id] = carriage.Kind == PartKind.Carriage ? [new(-Dropped * Vector3.Up, 0, 0.35)] : [new(-Dropped * Vector3.Up, 0, 0.35), new(2 * Layer * carriage.FaceSide.Frame.W, 0.4, 0.7)];
        foreach (var small in kit.Parts.Where(p => p.Kind is PartKind.Wedge or PartKind.GlueBlock or PartKind.Peg)) ways[small.Id] = Small(kit, small, ways);
        foreach (var rail in kit.Parts.Where(p => p.Kind == PartKind.Handrail)) ways[rail.Id] = [.. ways[rail.Id], new(5 * Layer * Vector3.Up, 0.7, 1)];
    }

    /// <summary>Pegs are drawn first; wedges stay in their strings until those are off the steps; blocks drop away below.</summary>
    private static ImmutableArray<Leg> Small(Kit kit, Part part, Dictionary<string, ImmutableArray<Leg>> ways)
    {
        var joint = kit.Joints.First(j => j.Male == part.Id);
        return part.Kind switch
        {
            PartKind.Peg => [new((joint.Depth + Layer) * part.FaceSide.Frame.W, 0, 0.3), .. ways[joint.Female]],
            PartKind.Wedge => [.. ways[joint.Female], new((joint.Depth + Layer) * part.FaceSide.Frame.W, 0.7, 1)],
            // Off the steps with the rest of its own where the strings stand.
            _ => [.. ways[joint.Female].Where(l => l.From == 0), new(-Dropped * Vector3.Up, 0, 0.35)],
        };
    }

    /// <summary>A base rail by its string, or by the newel it butts against; a baluster by its base rail; a cap by its newel.</summary>
    private static Part? HeldBy(Kit kit, Part part)
    {
        foreach (var joint in kit.Joints)
        {
            if (joint.Male == part.Id && joint.Kind is JointKind.RailOnString or JointKind.InGroove) return Root(kit, kit.Find(joint.Female));
            if (joint.Female == part.Id && joint.Kind == JointKind.CapOnNewel) return kit.Find(joint.Male);
        }
        // Along a landing: with the handrail over it.
        return part.Kind is PartKind.BaseRail or PartKind.LandingNosing or PartKind.Apron
            ? kit.Parts.FirstOrDefault(p => p.Id == part.Id.Replace("landing-base", "landing-rail", StringComparison.Ordinal).Replace("landing-nosing", "landing-rail", StringComparison.Ordinal).Replace("apron", "landing-rail", StringComparison.Ordinal))
            : null;
    }

    private static Part Root(Kit kit, Part part) => part.Kind == PartKind.BaseRail ? HeldBy(kit, part) ?? part : part;

    private static double LayerOf(Part part, Part? held) => part.Kind switch
    {
        PartKind.BaseRail => 1,
        PartKind.LandingNosing => 0,
        PartKind.Apron => -2,
        PartKind.Fillet => held?.Kind == PartKind.Handrail ? 4 : 2,
        PartKind.Baluster or PartKind.Bracket => 3,
        PartKind.WallRail => 5,
        _ => 6,
    };
}
