using System.Collections.Immutable;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Timber;

/// <summary>
/// Counts what fixings and work are reckoned by. Wedges, glue blocks and pegs that are pieces of the kit are counted as they are; where they are not made as pieces, wedges are counted by the housings that have room for them; glue blocks by the width of the step (two up to 900, one more for each 300 beyond); screws by
/// joints: one for each 150 of a tread's back edge, two for each riser end in a newel.
/// </summary>
internal static class Counting
{
    public static ImmutableSortedDictionary<string, int> Of(Kit kit, ImmutableArray<ListedPiece> pieces)
    {
        var strings = kit.Parts.Where(p => p.Kind is PartKind.WallString or PartKind.NewelString).ToList();
        var newels = kit.Parts.Where(p => p.Kind == PartKind.Newel).ToList();
        var housings = kit.Parts.SelectMany(p => p.Cuts).Where(c => c.Kind is CutKind.Housing or CutKind.CornerHousing).ToList();
        var wedged = strings.SelectMany(s => s.Cuts).Where(c => c.Kind == CutKind.Housing && c.Seat is not null).ToList();
        var steps = kit.Parts.Where(p => p.Kind is PartKind.Tread or PartKind.TaperedTread).ToList();
        return new Dictionary<string, int>
        {
            ["stair"] = 1,
            ["step"] = kit.Plan.Risers,
            ["piece"] = pieces.Sum(p => p.Woods.Length),
            ["glue-joint"] = pieces.Sum(p => p.Woods.Length - 1),
            ["string"] = strings.Count,
            ["newel"] = newels.Count,
            ["housing"] = housings.Count,
            ["mortice"] = Count(CutKind.Mortice),
            ["tenon"] = Count(CutKind.TenonCheek),
            ["nosing"] = Count(CutKind.RoundedEdge),
            ["tread-wedge"] = Made(PartKind.Wedge, "tread") ?? wedged.Count(c => !IsRiser(c)),
            ["riser-wedge"] = Made(PartKind.Wedge, "riser") ?? wedged.Count(IsRiser),
            ["glue-block"] = Made(PartKind.GlueBlock, "") ?? steps.Sum(s => 2 + Math.Max(0, (int)Math.Ceiling((s.Blank.Length - 900) / 300 - 1e-9))),
            ["peg"] = Made(PartKind.Peg, "") ?? strings.SelectMany(s => s.Cuts).Count(c => c.Kind == CutKind.Bore),
            ["screw"] = kit.Joints.Where(j => j.Kind == JointKind.RiserToTread).Sum(j => (int)Math.Ceiling(kit.Find(j.Male).Blank.Length / 150))
                + 2 * kit.Joints.Count(j => j.Kind == JointKind.RiserHousing && newels.Exists(n => n.Id == j.Female)),
        }.ToImmutableSortedDictionary(StringComparer.Ordinal);

        int? Made(PartKind kind, string name) => kit.Parts.Any(p => p.Kind == kind) ? kit.Parts.Count(p => p.Kind == kind && p.Name.Contains(name, StringComparison.Ordinal)) : null;

        int Count(CutKind kind) => kit.Parts.SelectMany(p => p.Cuts).Count(c => c.Kind == kind);
    }

    private static bool IsRiser(Cut cut) => cut.Joint.StartsWith("riser-", StringComparison.Ordinal);
}
