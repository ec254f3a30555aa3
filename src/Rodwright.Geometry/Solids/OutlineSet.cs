namespace Rodwright.Geometry.Solids;

/// <summary>A set of outlines by number, as bits.</summary>
internal readonly struct OutlineSet(int size)
{
    private readonly ulong[] words = new ulong[(size + 63) / 64];

    /// <summary>Whether an outline is in the set.</summary>
    public bool Has(int i) => (words[i >> 6] >> (i & 63) & 1) != 0;

    /// <summary>Takes an outline in, or out.</summary>
    public void Flip(int i) => words[i >> 6] ^= 1UL << (i & 63);

    /// <summary>A new set: what is in one of the two but not in both.</summary>
    public OutlineSet With(OutlineSet other)
    {
        var sum = new OutlineSet(words.Length * 64);
        for (var i = 0; i < words.Length; i++) sum.words[i] = words[i] ^ other.words[i];
        return sum;
    }
}
