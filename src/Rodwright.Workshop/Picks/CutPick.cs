using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Proof;
using Rodwright.Rod.Things;

namespace Rodwright.Workshop.Picks;

/// <summary>A cut of a part: where it lies, how big and deep it is, and the joint it belongs to.</summary>
internal static class CutPick
{
    public static Pick? Of(PickBench bench, string id)
    {
        if (bench.Part(ThingId.PartOf(id)) is not { } part || bench.Cut(part, id) is not { } cut) return null;
        return Draft.Pick(id, CutWords.Title(bench, part, cut), CutWords.Kind(part, cut), Relations.OfCut(bench, part, cut),
            [.. Depth(bench, part, cut), .. Places(bench, part, cut), .. Joint(bench, cut)]);
    }

    private static IEnumerable<Fact> Places(PickBench bench, Part part, Cut cut) => part.Kind switch
    {
        _ when cut.Kind == CutKind.RoundedEdge => [],
        PartKind.Newel => NewelCutFacts.Of(bench, part, cut),
        _ when part.Kind.IsFitted() => PieceFacts.Places(bench, cut),
        _ => StringCutFacts.Of(bench, part, cut),
    };

    private static IEnumerable<Fact> Depth(PickBench bench, Part part, Cut cut)
    {
        var practice = bench.Practice;
        var newel = part.Kind == PartKind.Newel;
        switch (cut.Kind)
        {
            case CutKind.Housing:
                var path = newel ? "practice.newelHousing" : "practice.housing";
                yield return bench.Mm("depth", cut.Depth, Why.Field(path), path);
                break;
            case CutKind.CornerHousing:
                yield return bench.Mm("depth", cut.Depth, Why.Field("practice.corner"), "practice.corner");
                break;
            case CutKind.Dovetail:
                yield return bench.Mm("behind the face", cut.Shape.Bounds.Width, Why.Field("practice.corner"), "practice.corner");
                yield return bench.Mm("from the end", cut.Depth, Why.Rule("as thick as the upper wall string"), "practice.wallString.thickness");
                break;
            case CutKind.Mortice:
                yield return bench.Mm("depth", cut.Depth, Why.Rule("the tenon's length, and clear at its end"), "practice.tenon.morticeClearance", Working.Of(cut.Depth - practice.Tenon.MorticeClearance) + practice.Tenon.MorticeClearance);
                break;
            case CutKind.Haunch:
                yield return bench.Mm("depth", cut.Depth, Why.Rule("the haunch, and clear at its end"), "practice.tenon.haunch", Working.Of(cut.Depth - practice.Tenon.MorticeClearance) + practice.Tenon.MorticeClearance);
                break;
            case CutKind.TenonCheek:
                if (bench.Board(part.Id) is { } board && board.Tenons.FirstOrDefault(t => cut.Joint == $"{part.Id}/{t.Newel}") is { } tenon)
                    foreach (var fact in TenonFacts.Of(bench, board, tenon)) yield return fact;
                break;
            case CutKind.Bore:
                var peg = cut.Joint.Contains("rail", StringComparison.Ordinal) ? "balustrade.tenon.peg" : "practice.tenon.peg";
                yield return bench.Mm("across", cut.Shape.Bounds.Width, Why.Field(peg), peg);
                yield return bench.Mm("depth", cut.Depth, Why.Rule(newel ? "through the tenon and a little beyond, but short of the housings on the far side" : "right through the tenon"));
                break;
            case CutKind.Cheek or CutKind.Groove or CutKind.Recess:
                foreach (var fact in PieceFacts.Sunk(bench, cut)) yield return fact;
                break;
            case CutKind.Split:
                yield return bench.Mm("depth", cut.Depth, Why.Rule("half the newel, whose back stands against the wall"), "practice.newel", Working.Of(practice.Newel) / 2);
                break;
            case CutKind.Notch:
                yield return bench.Mm("depth", cut.Depth, Why.Rule("half the newel, less the riser and the packing, so that it lies on the trimmer"), "practice.packing", Working.Of(practice.Newel) / 2 - practice.Riser - practice.Packing);
                break;
            default:
                yield return bench.Mm("rounded to", cut.Depth, Why.Rule("a full round: half the tread's thickness"), "practice.tread", Working.Of(practice.Tread) / 2);
                yield return bench.Mm("length of the edge", cut.Shape.Length, Why.Rule("along the front of the piece, its ends included"));
                yield return bench.Given("practice.nosing", practice.Nosing);
                break;
        }
        if (cut.Note.Length > 0 && cut.Kind is not (CutKind.Notch or CutKind.Split)) yield return Facts.Words("mind", cut.Note, Why.Rule(cut.Kind == CutKind.Bore ? "the draw pulls the shoulder home" : $"where its edge comes within {bench.Units.Print(practice.Cover)} of the arris"), cut.Kind == CutKind.Bore ? "practice.tenon.draw" : "practice.cover");
    }

    private static IEnumerable<Fact> Joint(PickBench bench, Cut cut)
    {
        if (bench.Joint(cut.Joint) is not { } joint) yield break;
        var rule = Why.Rule("every joint is described on both its parts, and proved as it goes together");
        yield return Facts.Words("joint", $"{bench.Part(joint.Male)?.Name} into {bench.Part(joint.Female)?.Name}", rule);
        if (bench.Proof.Joints.FirstOrDefault(j => j.Id == cut.Joint) is { } proof)
            foreach (var fact in Proved(bench, joint, proof, rule)) yield return fact;
    }

    private static IEnumerable<Fact> Proved(PickBench bench, Joint joint, JointProof proof, string rule)
    {
        yield return Facts.Words("proved", proof.Holds ? "it closes" : "it does not close", rule);
        yield return double.IsFinite(proof.Gap) ? Facts.Words("gap between the two outlines", bench.Units.With(proof.Gap, 4), rule) : Facts.Words("gap between the two outlines", "no joint there", rule);
        if (joint.Kind is JointKind.Corner or JointKind.TreadHousing or JointKind.RiserHousing or JointKind.Tenon)
        {
            yield return bench.Mm("should enter", proof.Wanted, rule);
            yield return double.IsFinite(proof.Reached) ? bench.Mm("enters", proof.Reached, rule) : Facts.Words("enters", "not known", rule);
        }
        if (proof.Stated.Length > 0) yield return Facts.Words("stated difference", proof.Stated, Why.Rule("differences that are meant are stated, and proved as stated"));
    }
}
