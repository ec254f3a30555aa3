using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Properties;
using Rodwright.Rod.Board;
using Rodwright.Rod.Stages;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Jobs.Fields;
using Rodwright.Testing;
using Rodwright.Workshop.Picks;
using Made = Rodwright.Workshop.Picks.Picks;

namespace Rodwright.Workshop.Tests.Picks;

public sealed class PicksTests
{
    private static readonly string[] Always =
    [
        "rise", "clear width", "pitch of the straight steps", "length between the faces", "taper", "height of its head", "highest pitch line or floor at its centre", "band of the tenons",
        "thickness along the face, outer end", "thickness along the face, inner end", "height of the board", "going along the walking line", "length of the walking line", "narrow end as width of the tread",
        "height of its surface", "height of its tread", "wedge space at its thick end", "least width that would do", "tenon's length", "from pitch point to pitch point, straight steps",
    ];

    public static TheoryData<string> Samples => Set.Samples;

    [Theory, MemberData(nameof(Samples))]
    public void Everything_on_the_rod_can_be_picked_and_is_explained(string sample)
    {
        var bench = new Picked(Set.Sample(sample));
        var ids = RodBoard.Of(bench.Stair).Pieces.SelectMany(p => p.Marks.Concat(p.Lines.SelectMany(l => l.Marks)).SelectMany(OfMark)).Concat(bench.Stages.Lines.Select(l => l.Of)).Distinct().ToList();

        var unknown = ids.Where(id => bench.Of(id) is not { Facts.Length: > 0 }).ToList();

        Assert.True(ids.Count > 50);
        Assert.Empty(unknown);
        Assert.Empty(ids.Except(bench.Ids));
    }

    [Theory, MemberData(nameof(Samples))]
    public void Every_id_has_a_pick_of_its_own_name_with_whole_facts(string sample)
    {
        var bench = new Picked(Set.Sample(sample));

        Assert.Equal(bench.Ids.Length, bench.Ids.Distinct().Count());
        foreach (var id in bench.Ids)
        {
            var pick = bench.Of(id);
            Assert.NotNull(pick);
            Assert.Equal(id, pick.Id);
            Assert.NotEmpty(pick.Facts);
            Assert.True(char.IsUpper(pick.Title[0]) || char.IsDigit(pick.Title[0]), pick.Title);
            Assert.All(pick.Facts, f => Assert.False(f.Label.Length == 0 || f.Value.Length == 0 || f.Source.Length == 0, $"{id}: {f}"));
            Assert.All(pick.Facts, f => Assert.False(f.Value.Contains("NaN", StringComparison.Ordinal) || f.Value.Contains('∞', StringComparison.Ordinal), $"{id}: {f}"));
        }
    }

    [Theory, MemberData(nameof(Samples))]
    public void Every_formula_comes_to_the_value_it_explains_to_the_last_digit_printed(string sample)
    {
        var bench = new Picked(Set.Sample(sample));

        var formulas = bench.All.SelectMany(p => p.Facts.Select(f => (p.Id, Fact: f))).Where(f => f.Fact.Formula.Length > 0).ToList();

        Assert.True(formulas.Count > 300, $"{formulas.Count}");
        Assert.All(formulas, f => Reads(f.Id, f.Fact));
    }

    [Theory, MemberData(nameof(Samples))]
    public void What_lights_up_can_be_picked_and_cuts_of_one_joint_light_up_each_other(string sample)
    {
        var bench = new Picked(Set.Sample(sample));

        foreach (var pick in bench.All)
        {
            Assert.DoesNotContain(pick.Id, pick.Related);
            Assert.Empty(pick.Related.Except(bench.Ids));
            if (!pick.Id.Contains('/', StringComparison.Ordinal)) continue;
            foreach (var other in pick.Related.Where(r => r.Contains('/', StringComparison.Ordinal))) Assert.Contains(pick.Id, bench.Of(other)!.Related);
        }
    }

    [Theory, MemberData(nameof(Samples))]
    public void A_mortice_lights_up_its_tenons_pegs_and_haunch_and_both_parts(string sample)
    {
        var bench = new Picked(Set.Sample(sample));
        foreach (var joint in bench.Stair.Kit.Joints.Where(j => j.Kind == JointKind.Tenon))
        {
            var (male, female) = (bench.Stair.Kit.Find(joint.Male), bench.Stair.Kit.Find(joint.Female));
            var mortice = ThingId.Of(female, female.Cuts.First(c => c.Joint == joint.Id && c.Kind == CutKind.Mortice));

            var related = bench.Of(mortice)!.Related;

            Assert.Contains(male.Id, related);
            Assert.Contains(female.Id, related);
            Assert.Equal(1, related.Count(r => r.StartsWith(male.Id + "/cheek", StringComparison.Ordinal)));
            Assert.Equal(2, related.Count(r => r.StartsWith(male.Id + "/peg", StringComparison.Ordinal)));
            Assert.Equal(2, related.Count(r => r.StartsWith(female.Id + "/peg", StringComparison.Ordinal)));
            Assert.Equal(1, related.Count(r => r.StartsWith(female.Id + "/haunch", StringComparison.Ordinal)));
        }
    }

    [Theory, MemberData(nameof(Samples))]
    public void Every_field_named_is_a_field_of_the_job(string sample)
    {
        var known = JobFields.Descriptions.Select(d => d.Path).Append(FieldChange.SequencePath).ToHashSet();

        Assert.Empty(new Picked(Set.Sample(sample)).All.SelectMany(p => p.Facts).Select(f => f.Path).Where(p => p.Length > 0 && !known.Contains(p)).Distinct());
    }

    [Theory, MemberData(nameof(Samples))]
    public void A_figure_explained_once_is_explained_wherever_the_same_thing_is_measured(string sample)
    {
        var bench = new Picked(Set.Sample(sample));
        var facts = bench.All.SelectMany(p => p.Facts.Select(f => (p.Id, Fact: f))).ToList();

        Assert.Empty(facts.Where(f => Always.Contains(f.Fact.Label) && f.Fact.Formula.Length == 0).Select(f => $"{f.Id}: {f.Fact}"));
    }

    [Fact]
    public void Any_stair_is_explained_in_figures_that_come_out() => IsExplained(Generated.Jobs);

    [Fact]
    public void Any_stair_of_several_turns_is_explained_in_figures_that_come_out() => IsExplained(Generated.Courses);

    private static void IsExplained(Gen<Job> jobs)
    {
        var explained = 0;
        jobs.Holds(
            job =>
            {
                if (Stair.SetOut(job).Value is not { } stair) return;
                explained++;
                var bench = new Picked(stair);
                foreach (var pick in bench.All)
                {
                    Assert.NotEmpty(pick.Facts);
                    Assert.Empty(pick.Related.Except(bench.Ids));
                    foreach (var fact in pick.Facts)
                    {
                        Assert.False(fact.Value.Contains("NaN", StringComparison.Ordinal) || fact.Value.Contains('∞', StringComparison.Ordinal) || fact.Source.Length == 0, $"{pick.Id}: {fact}");
                        if (fact.Formula.Length > 0) Reads(pick.Id, fact);
                        else Assert.False(Always.Contains(fact.Label), $"{pick.Id}: {fact} is not explained");
                    }
                }
            },
            iter: 40, threads: 1);
        Assert.True(explained > 20, $"{explained}");
    }

    [Fact]
    public void An_unknown_id_picks_nothing()
    {
        var bench = new Picked(Set.Sample("left-kite-low"));

        Assert.All(["", "nothing", "riser-0", "riser-99", "riser-04", "tread-99", "going-13", "newel-turn/none", "tread-", "wall-inner"], id => Assert.Null(bench.Of(id)));
    }

    private static void Reads(string id, Fact fact)
    {
        var sides = fact.Formula.Split(" = ");
        Assert.Equal(2, sides.Length);
        if (sides[1].EndsWith('"'))
        {
            // In inches the formula comes out in thousandths; the value is the sixteenth it lies nearest to.
            var inches = double.Parse(sides[1].TrimEnd('"').Replace('−', '-'), CultureInfo.InvariantCulture);
            Assert.True(Number.Print(Arithmetic.Of(sides[0]), 3) == Number.Print(inches, 3), $"{id}: {fact} comes to {Arithmetic.Of(sides[0])}");
            Assert.True(Units.Inches.TryRead(fact.Value.Replace(" heavy", "", StringComparison.Ordinal).Replace(" light", "", StringComparison.Ordinal), out var told), $"{id}: {fact}");
            Assert.True(Math.Abs(told / Units.Inch - inches) <= 1 / 32.0 + 0.0006, $"{id}: {fact}");
            return;
        }
        var shown = sides[1].TrimEnd('°');
        var decimals = shown.Contains('.', StringComparison.Ordinal) ? 2 : 0;
        Assert.StartsWith(shown, fact.Value, StringComparison.Ordinal);
        Assert.False(fact.Value.Length > shown.Length && (char.IsAsciiDigit(fact.Value[shown.Length]) || fact.Value[shown.Length] == '.'), $"{id}: {fact}");
        var value = double.Parse(shown.Replace('−', '-'), CultureInfo.InvariantCulture);
        Assert.True(Number.Print(Arithmetic.Of(sides[0]), Math.Max(decimals, 2)) == Number.Print(value, 2), $"{id}: {fact} comes to {Arithmetic.Of(sides[0])}");
    }

    private static IEnumerable<string> OfMark(Mark mark) => mark switch
    {
        GroupMark g => g.Marks.SelectMany(OfMark),
        ClipMark c => c.Marks.SelectMany(OfMark),
        _ => mark.Of is { Length: > 0 } of ? [of] : [],
    };

    /// <summary>A stair with its proof and stages, ready to be picked from.</summary>
    internal sealed class Picked(Stair stair)
    {
        private readonly Joinery.Proof.ProofReport proof = stair.Prove();

        public Stair Stair => stair;

        public RodStageList Stages { get; } = RodStages.Of(stair);

        public ImmutableArray<string> Ids => Known.Value;

        public ImmutableArray<Pick> All => Every.Value;

        private Lazy<ImmutableArray<string>> Known => field ??= new(() => Made.Ids(stair, Stages));

        private Lazy<ImmutableArray<Pick>> Every => field ??= new(() => [.. Ids.Select(id => Of(id)!)]);

        public Pick? Of(string id) => Made.Of(stair, proof, Stages, id);
    }
}
