namespace Rodwright.Geometry.Solids;

/// <summary>Half-edges by the corner they leave, without hashing: corners are numbered in order, and few half-edges leave one.</summary>
internal sealed class Leaving
{
    private readonly int[] first;
    private readonly int[] after;

    public Leaving(int corners, int halves)
    {
        first = new int[corners];
        after = new int[halves];
        Array.Fill(first, -1);
    }

    /// <summary>Notes a half-edge.</summary>
    public void Add(int corner, int half) => (after[half], first[corner]) = (first[corner], half);

    /// <summary>One that leaves a corner; -1 for none.</summary>
    public int First(int corner) => first[corner];

    /// <summary>Another that leaves the same corner as this one; -1 for none.</summary>
    public int After(int half) => after[half];
}
