using System.Collections.Immutable;
using CsCheck;
using Rodwright.Properties;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Proposals;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Stairs.Tests.Proposals;

public sealed class UnbeatenTests
{
    private static readonly Job Any = Samples.Job("straight-flight");

    // Few values, so that ties are common.
    private static readonly Gen<Measures> AnyMeasures =
        from off in Gen.Int[0, 2]
        from pitch in Gen.Int[36, 38]
        from headroom in Gen.Int[0, 2]
        from area in Gen.Int[2, 3]
        from narrow in Gen.Int[0, 2]
        select new Measures(620, off, pitch, headroom == 0 ? null : 2000 + headroom, area, narrow == 0 ? null : 50 + narrow, 0.2, 3);

    [Fact]
    public void The_marked_ones_are_those_a_search_of_all_pairs_leaves() => AnyMeasures.Array[1, 12].Holds(all =>
    {
        var marked = Unbeaten.Mark([.. all.Select(m => new Proposal(FamilyCatalogue.All[0], Any, m, 0, false))]);
        for (var i = 0; i < all.Length; i++) Assert.Equal(!all.Any(other => Better(other, all[i])), marked[i].Unbeaten);
        Assert.Contains(marked, p => p.Unbeaten);
    }, iter: 500);

    [Fact]
    public void Equal_measures_do_not_beat_one_another()
    {
        var m = new Measures(620, 5, 40, 2100, 3, 55, 0.2, 3);
        Assert.False(m.Beats(m));
        Assert.True((m with { FloorArea = 2.9 }).Beats(m));
        Assert.False((m with { FloorArea = 2.9, PitchDegrees = 41 }).Beats(m));
        Assert.True((m with { Headroom = null }).Beats(m));
        Assert.True((m with { Narrowest = null, TaperedSteps = 0 }).Beats(m));
    }

    /// <summary>Written out by itself, measure by measure.</summary>
    private static bool Better(Measures a, Measures b)
    {
        (double A, double B)[] smaller = [(a.ComfortOff, b.ComfortOff), (a.PitchDegrees, b.PitchDegrees), (a.FloorArea, b.FloorArea), (a.Timber, b.Timber), (a.TaperedSteps, b.TaperedSteps)];
        (double A, double B)[] larger = [(a.Headroom ?? 1e9, b.Headroom ?? 1e9), (a.Narrowest ?? 1e9, b.Narrowest ?? 1e9)];
        return smaller.All(s => s.A <= s.B) && larger.All(l => l.A >= l.B) && (smaller.Any(s => s.A < s.B) || larger.Any(l => l.A > l.B));
    }
}
