using System.Collections.Immutable;

namespace Rodwright.Geometry.Solids;

/// <summary>The bodies of a solid that do not hang together, each with its own closed boundary: a pair of wedges is two.</summary>
public static class SolidShells
{
    /// <summary>Indices of the faces of each body, in order of their first faces. A hollow within a body counts as one of its own.</summary>
    public static ImmutableArray<ImmutableArray<int>> Of(Solid solid)
    {
        var parent = Enumerable.Range(0, solid.Faces.Length).ToArray();
        var owner = new Dictionary<(int, int), int>();
        for (var f = 0; f < solid.Faces.Length; f++)
            foreach (var loop in solid.Faces[f].Loops)
                for (var i = 0; i < loop.Length; i++)
                {
                    var (a, b) = (loop[i], loop[(i + 1) % loop.Length]);
                    var edge = a < b ? (a, b) : (b, a);
                    if (owner.TryGetValue(edge, out var other)) parent[Root(f)] = Root(other);
                    else owner[edge] = f;
                }
        return [.. Enumerable.Range(0, parent.Length).GroupBy(Root).Select(g => g.ToImmutableArray())];

        int Root(int i)
        {
            while (parent[i] != i) i = parent[i] = parent[parent[i]];
            return i;
        }
    }
}
