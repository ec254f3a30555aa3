using System.Collections.Frozen;
using System.Collections.Immutable;
using Rodwright.Joinery;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Things;

/// <summary>
/// What belongs together: both sides of a joint, a piece and its cuts, a riser with its nosing. What a screen lights up when one of them is picked.
/// </summary>
public sealed class Relations
{
    private readonly FrozenDictionary<string, ImmutableArray<string>> related;

    private Relations(Dictionary<string, List<string>> related) =>
        this.related = related.ToFrozenDictionary(r => r.Key, r => r.Value.Distinct().ToImmutableArray());

    /// <summary>Every id that can be picked on this stair's rod.</summary>
    public IEnumerable<string> Ids => related.Keys;

    /// <summary>
    /// The id itself, then what belongs to the same joint or thing, each once; the id alone when it is not known. A piece has its cuts, and the cuts it enters,
    /// with it; a cut does not have its piece (see <see cref="ThingId.PartOf"/>), or picking a mortice would light up the whole newel.
    /// </summary>
    public ImmutableArray<string> With(string id) => related.TryGetValue(id, out var found) ? found : [id];

    /// <summary>The relations of a stair.</summary>
    public static Relations Of(Stair stair)
    {
        var found = new Dictionary<string, List<string>>();
        var (plan, kit) = (stair.Plan, stair.Kit);
        foreach (var id in (string[])[ThingId.Plan, ThingId.WalkingLine, ThingId.CentreLine, ThingId.MarginLine, ThingId.Corner, ThingId.WallOuter, ThingId.WallInner,
            ThingId.Floor, ThingId.Landing, ThingId.UpperFloor, ThingId.Width, ThingId.ClearWidth]) Of(id);
        foreach (var part in kit.Parts) Add(part.Id, part.Cuts.Select(c => ThingId.Of(part, c)));
        foreach (var part in kit.Parts) foreach (var cut in part.Cuts) Of(ThingId.Of(part, cut));
        foreach (var joint in kit.Joints) Joined(joint);
        for (var k = 1; k <= plan.Risers; k++) Step(k);
        foreach (var site in plan.Strings)
        {
            if (site.IsWall) Both(site.Inner ? ThingId.WallInner : ThingId.WallOuter, site.Id);
            else Add(ThingId.CentreLine, [site.Id]);
        }
        Add(ThingId.CentreLine, plan.Newels.Select(n => n.Id));
        return new(found);

        List<string> Of(string id)
        {
            if (!found.TryGetValue(id, out var list)) found.Add(id, list = [id]);
            return list;
        }

        void Add(string id, IEnumerable<string> others) => Of(id).AddRange(others);

        void Both(string a, string b)
        {
            Of(a).Add(b);
            Of(b).Add(a);
        }

        void Joined(Joint joint)
        {
            var (male, female) = (kit.Find(joint.Male), kit.Find(joint.Female));
            List<string> cuts = [.. Cuts(female), .. Cuts(male)];
            foreach (var cut in cuts) Add(cut, cuts);
            Add(male.Id, Cuts(female));
            // A housing takes the end of a piece that is not itself cut for it: the piece belongs to it whole.
            if (joint.Kind is JointKind.TreadHousing or JointKind.RiserHousing or JointKind.Corner) foreach (var cut in Cuts(female)) Add(cut, [male.Id]);
            if (joint.Kind is JointKind.Corner)
            {
                foreach (var cut in Cuts(female)) Both(ThingId.Corner, cut);
                Add(ThingId.Corner, [male.Id, female.Id]);
            }

            IEnumerable<string> Cuts(Part part) => part.Cuts.Where(c => c.Joint == joint.Id).Select(c => ThingId.Of(part, c));
        }

        void Step(int k)
        {
            Both(ThingId.Riser(k), ThingId.Nosing(k));
            if (plan.Steps[k - 1] is StepKind.Straight or StepKind.Tapered)
            {
                Both(ThingId.Nosing(k), ThingId.Tread(k));
                Both(ThingId.Going(k), ThingId.Tread(k));
                Both(ThingId.Going(k), ThingId.WalkingLine);
            }
            else Both(ThingId.Level(plan, k), ThingId.Nosing(k));
        }
    }
}
