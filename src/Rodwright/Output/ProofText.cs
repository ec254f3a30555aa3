using Rodwright.Geometry;
using Rodwright.Joinery.Proof;

namespace Rodwright.Output;

/// <summary>The proof as text.</summary>
internal static class ProofText
{
    public static void Write(TextWriter to, Units units, ProofReport proof, bool all)
    {
        var shown = proof.Joints.Where(j => all || !j.Holds).ToList();
        if (shown.Count > 0)
        {
            var rows = new List<string[]> { new[] { "joint", "how", "gap", "enters", "of", "stated", "" } };
            rows.AddRange(shown.Select(j => new[] { j.Id, j.Kind, Gap(units, j.Gap), units.Print(j.Reached, 2), units.Print(j.Wanted, 2), j.Stated, j.Holds ? "closes" : "DOES NOT CLOSE" }));
            Columns.Write(to, rows, 2, 3, 4);
        }
        foreach (var c in proof.Clashes) to.WriteLine($"  {c.First} and {c.Second} fill one place: {c.Words(units)}");
        foreach (var c in proof.NewelCuts) to.WriteLine($"  {c.First} and {c.Second}: {c.Words(units)}");
        foreach (var b in proof.Blanks.Where(b => !b.Holds)) to.WriteLine($"  {b.Part} sticks {units.Print(b.Outside, 2)} out of its board");
        if (!proof.Survey.Holds) to.WriteLine($"  the rises add up to {units.Print(proof.Survey.Risers, 2)}, the survey says {units.Print(proof.Survey.Height, 2)}");
        to.WriteLine($"  {proof.Joints.Count(j => j.Holds)} of {proof.Joints.Length} joints close, widest gap {(double.IsInfinity(proof.WorstGap) || units.IsInches ? Gap(units, proof.WorstGap) : Gap(units, proof.WorstGap) + " mm")}; {proof.Clashes.Length} clashes; {proof.NewelCuts.Length} newel cuts that meet; {proof.Blanks.Count(b => b.Holds)} of {proof.Blanks.Length} parts lie in their blanks.");
        to.WriteLine(proof.Holds ? "  It goes together." : "  It does not go together.");
    }

    private static string Gap(Units units, double gap) => double.IsInfinity(gap) ? "no joint" : units.Print(gap, 4);
}
