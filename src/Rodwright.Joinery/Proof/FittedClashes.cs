using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Proof;

/// <summary>Looks for pieces fitted to the stair (rails, balusters, caps and the like) that fill one place with anything they have no joint with.</summary>
internal static class FittedClashes
{
    public static IEnumerable<Clash> Of(Kit kit, IReadOnlyList<Prism> prisms)
    {
        var fitted = kit.Parts.Where(p => !p.Kind.IsOfStep() && !p.Kind.IsCarrier()).Select(UprightBody.Of).ToList();
        if (fitted.Count == 0) yield break;
        var joined = kit.Joints.SelectMany(j => new[] { (j.Male, j.Female), (j.Female, j.Male) }).ToHashSet();
        List<UprightBody> others = [.. fitted, .. kit.Parts.Where(p => p.Kind.IsCarrier()).Select(UprightBody.Of)];
        for (var i = 0; i < fitted.Count; i++)
        {
            for (var j = i + 1; j < others.Count; j++)
            {
                var area = UprightBody.Shared(fitted[i], others[j]);
                if (area > 0 && !joined.Contains((fitted[i].Part.Id, others[j].Part.Id))) yield return new(fitted[i].Part.Id, others[j].Part.Id, "in one plane", area, true);
            }
            foreach (var prism in prisms)
            {
                var area = fitted[i].Shared(prism);
                if (area > 0 && !joined.Contains((fitted[i].Part.Id, prism.Part.Id))) yield return new(fitted[i].Part.Id, prism.Part.Id, "in plan", area, true);
            }
        }
    }
}
