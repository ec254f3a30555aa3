using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Proof;
using Rodwright.Joinery.Strings;
using Rodwright.Rod.Stages;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>What picks are made from.</summary>
internal sealed record PickBench(Stair Stair, ProofReport Proof, RodStageList Stages)
{
    public StairPlan Plan => Stair.Plan;

    public Job Job => Stair.Job;

    public Practice Practice => Stair.Job.Practice;

    public Kit Kit => Stair.Kit;

    /// <summary>The unit the facts are told in.</summary>
    public Units Units => Stair.Units;

    /// <summary>A length; of the ways to work it out the first that comes out stands.</summary>
    public Fact Mm(string label, double value, string source, string path = "", params ReadOnlySpan<Working> ways) => Facts.Mm(Units, label, value, source, path, ways);

    /// <summary>A length that stands in the job as it is.</summary>
    public Fact Given(string path, double value) => Mm(Why.Label(path), value, Why.Field(path), path);

    /// <summary>A length as a value prints it.</summary>
    public string Length(double value) => Facts.Length(Units, value);

    public Part? Part(string id) => Kit.Parts.FirstOrDefault(p => p.Id == id);

    public Cut? Cut(Part part, string id) => part.Cuts.FirstOrDefault(c => ThingId.Of(part, c) == id);

    public Joint? Joint(string id) => Kit.Joints.FirstOrDefault(j => j.Id == id);

    public StringBoard? Board(string part) => Kit.Strings.FirstOrDefault(s => s.Part.Id == part);

    /// <summary>Joints a part takes part in.</summary>
    public IEnumerable<Joint> JointsOf(string part) => Kit.Joints.Where(j => j.Male == part || j.Female == part);

    /// <summary>Number of a thing named so, 1 to the last riser: 4 for riser-4; null for any other id.</summary>
    public int? Number(string id, string name) =>
        id.StartsWith(name, StringComparison.Ordinal) && int.TryParse(id.AsSpan(name.Length), System.Globalization.CultureInfo.InvariantCulture, out var k)
        && k >= 1 && k <= Plan.Risers && id == name + Geometry.Number.Print(k, 0) ? k : null;

    /// <summary>Height of a level: k rises.</summary>
    public Fact Level(string label, int k) => Mm(label, k * Plan.Rise, Why.Rule("every rise is equal, and heights are counted from the floor"), Why.Height, Working.Of(k) * Plan.Rise);

    public Fact Rise() => Mm("rise", Plan.Rise, Why.Rule("every rise is equal: the height, divided by the number of risers"), Why.Height, Working.Of(Job.Survey.Height) / Plan.Risers);

    public Fact Pitch() => Facts.Degrees("pitch of the straight steps", Plan.Pitch.Degrees, Why.Rule("the pitch is the slope of one rise over one going"), Why.Going, Working.Atan(Working.Of(Plan.Rise) / Plan.Going));

    /// <summary>One development of each string or pair of strings, with the names of its boards.</summary>
    public IEnumerable<ImmutableArray<StringBoard>> Developments()
    {
        for (var i = 0; i < Kit.Strings.Length; i++)
            yield return Kit.Strings[i].Site.Upper.Kind == StringEndKind.CornerThrough ? [Kit.Strings[i], Kit.Strings[++i]] : [Kit.Strings[i]];
    }
}
