namespace Rodwright.Stairs.Proposals;

/// <summary>The few candidates that pass one bound by least.</summary>
internal sealed class Nearest
{
    private const int Kept = 6;
    private readonly List<(double Over, Candidate Candidate)> kept = [];

    /// <summary>Those kept, the nearest first.</summary>
    public IReadOnlyList<(double Over, Candidate Candidate)> All => kept;

    /// <summary>The nearest.</summary>
    public (double Over, Candidate Candidate) Least => kept[0];

    /// <summary>Whether one that is off by so much would be kept.</summary>
    public bool Takes(double over) => kept.Count < Kept || over < kept[^1].Over - 1e-9;

    /// <summary>Keeps a candidate; of one layout only the nearest.</summary>
    public void Add(double over, Candidate candidate)
    {
        var same = kept.FindIndex(k => k.Candidate.Risers == candidate.Risers && k.Candidate.Goings.SequenceEqual(candidate.Goings));
        if (same >= 0)
        {
            if (kept[same].Over <= over) return;
            kept.RemoveAt(same);
        }
        var at = kept.FindIndex(k => k.Over > over);
        kept.Insert(at < 0 ? kept.Count : at, (over, candidate));
        if (kept.Count > Kept) kept.RemoveAt(Kept);
    }
}
