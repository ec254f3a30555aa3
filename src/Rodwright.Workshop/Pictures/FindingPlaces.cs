using System.Collections.Immutable;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;
using Rodwright.Workshop.Pictures.Clauses;

namespace Rodwright.Workshop.Pictures;

/// <summary>What to mark on the rod for a finding.</summary>
public static class FindingPlaces
{
    /// <summary>
    /// Ids of the parts and risers a finding speaks of, in the stair's order; none for what is not a place on the stair (readings of the survey, the
    /// file itself).
    /// </summary>
    /// <param name="stair">The stair it was found on.</param>
    /// <param name="finding">The finding.</param>
    public static ImmutableArray<string> Of(Stair stair, Finding finding)
    {
        var named = stair.Kit.Parts.Where(p => p.Name == finding.Where || p.Mark == finding.Where).Select(p => p.Id).ToList();
        var ids = named.Count > 0 ? named : IsField(finding.Where) ? OfField(stair, finding) : OfWords(stair, finding);
        var known = Known(stair);
        return [.. ids.Where(known.Contains).Distinct()];
    }

    private static bool IsField(string where) => where.Contains('.', StringComparison.Ordinal) || PlacesOfFields.Knows(where);

    /// <summary>Everything that can be marked: parts, and riser lines even where they have no board.</summary>
    private static HashSet<string> Known(Stair stair) =>
        [.. stair.Kit.Parts.Select(p => p.Id), .. stair.Plan.RiserLines.Select(r => ThingId.Riser(r.Number))];

    private static IEnumerable<string> OfField(Stair stair, Finding finding)
    {
        var ids = PlacesOfFields.Of(stair, finding.Where);
        // A finding of several strings begins with their marks.
        var colon = finding.Message.IndexOf(':', StringComparison.Ordinal);
        var marks = colon < 0 ? [] : finding.Message[..colon].Split(", ");
        var told = stair.Kit.Parts.Where(p => p.Kind is PartKind.WallString or PartKind.NewelString && marks.Contains(p.Mark)).Select(p => p.Id).ToList();
        return told.Count > 0 ? told : ids;
    }

    private static IEnumerable<string> OfWords(Stair stair, Finding finding)
    {
        var (plan, where) = (stair.Plan, finding.Where);
        if (Places.Number(where, "riser") is { } riser) return [ThingId.Riser(riser)];
        if (Places.Number(where, "step") is { } step) return Step(step);
        return where switch
        {
            "straight steps" => Step(Places.StraightStep(plan)),
            "tapered steps" => PlacesOfFields.Turn(stair),
            "every step" or "all steps" => Step(1),
            "flight" or "lower flight" or "upper flight" => Flight(),
            "stair" when finding.Code == Stairs.Rules.StraightRunRule.Instance.Code => Flight(),
            "stair" => stair.Kit.Parts.Where(p => p.Kind is PartKind.WallString or PartKind.NewelString).Select(p => p.Id),
            _ when where.StartsWith("flight ", StringComparison.Ordinal) => Flight(),
            _ when LandingPicture.Of(plan, where) is { } landing => Step(landing.WayIn ? landing.Turn.FirstLine : landing.Turn.LastLine),
            _ => [],
        };

        IEnumerable<string> Step(int k) => [ThingId.Tread(k), ThingId.Nosing(k), ThingId.Riser(k)];

        IEnumerable<string> Flight()
        {
            var (first, last) = FlightPictures.Risers(plan, where);
            return Enumerable.Range(first, Math.Max(0, last - first + 1)).Select(ThingId.Riser);
        }
    }
}
