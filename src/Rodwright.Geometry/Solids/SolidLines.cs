using System.Collections.Immutable;

namespace Rodwright.Geometry.Solids;

/// <summary>The edges of a solid as a draughtsman sorts them; ends are indices of its vertices.</summary>
/// <param name="Arrises">Edges at which the surface turns sharply: always lined in.</param>
/// <param name="Rounds">Edges within a round: lined in only where the round turns out of sight there.</param>
public sealed record SolidLines(ImmutableArray<(int From, int To)> Arrises, ImmutableArray<SolidLines.Round> Rounds)
{
    /// <summary>An edge within a round, and the unit normals of the faces at either side of it.</summary>
    public readonly record struct Round(int From, int To, Vector3 Left, Vector3 Right);

    /// <summary>The lines of a closed solid, each edge once.</summary>
    /// <exception cref="ArgumentException">An edge has no other side: the solid is open.</exception>
    public static SolidLines Of(Solid solid)
    {
        var faces = new Dictionary<(int, int), SolidFace>();
        foreach (var face in solid.Faces)
            foreach (var loop in face.Loops)
                for (int i = loop.Length - 1, j = 0; j < loop.Length; i = j++) faces[(loop[i], loop[j])] = face;
        var (arrises, rounds) = (ImmutableArray.CreateBuilder<(int, int)>(), ImmutableArray.CreateBuilder<Round>());
        foreach (var ((from, to), left) in faces)
        {
            if (from > to) continue;
            if (!faces.TryGetValue((to, from), out var right)) throw new ArgumentException("the solid is not closed", nameof(solid));
            if (Crease.IsSmooth(left, right)) rounds.Add(new(from, to, left.Normal, right.Normal));
            else arrises.Add((from, to));
        }
        return new(arrises.ToImmutable(), rounds.ToImmutable());
    }
}
