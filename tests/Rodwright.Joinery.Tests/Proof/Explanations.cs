using System.Globalization;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Proof;
using Rodwright.Stairs.Findings;

namespace Rodwright.Joinery.Tests.Proof;

/// <summary>Whether what a proof finds not to go together has been told: by a breach at the place in question, of a kind that says why.</summary>
internal static class Explanations
{
    /// <summary>The lines of a proof that no finding of the kit explains, as the report prints them.</summary>
    public static IEnumerable<string> Missing(Stair stair, ProofReport proof)
    {
        var kit = stair.Kit;
        return proof.NewelCuts.Where(c => !OfNewel(NewelOf(c.First))).Select(c => c.ToString())
            .Concat(proof.Clashes.Where(c => !OfPieces(c.First, c.Second)).Select(c => c.ToString()))
            .Concat(proof.Joints.Where(j => !j.Holds && !OfPieces(j.Male, j.Female)).Select(j => j.ToString()))
            .Concat(proof.Blanks.Where(b => !b.Holds).Select(b => b.ToString()))
            .Concat(proof.Survey.Holds ? [] : [proof.Survey.ToString()]);

        static string NewelOf(string cut) => cut[..cut.IndexOf(':', StringComparison.Ordinal)];

        bool Told(string code, params IEnumerable<string> places) => kit.Findings.Any(f => f.Severity == Severity.Breach && f.Code == code && places.Contains(f.Where));

        // Too small for the strings that meet in it.
        bool OfNewel(string newel)
        {
            var places = kit.Joints.Where(j => j.Kind == JointKind.Tenon && j.Female == newel).Select(j => kit.Find(j.Male).Name).Append(kit.Find(newel).Name).ToList();
            return new[] { "RW4004", "RW4006", "RW4013" }.Any(code => Told(code, places));
        }

        bool OfPieces(string first, string second)
        {
            var pieces = new[] { first, second }.Select(id => kit.Parts.FirstOrDefault(p => p.Id == id)).OfType<Part>().ToList();
            if (pieces.Where(p => p.Kind == PartKind.Newel).Any(n => Told("RW4015", n.Name) || Told("RW4016", n.Name))) return true;
            var strings = pieces.Where(p => p.Kind is PartKind.NewelString or PartKind.WallString).ToList();
            if (strings.Count == 2) return Told("RW4014", $"{strings[0].Name}, {strings[1].Name}") || Told("RW4014", $"{strings[1].Name}, {strings[0].Name}");
            // One finding for a turn, at the worst of its steps; the board that is spoilt there is spoilt for its neighbours.
            var tight = kit.Findings.Where(f => f.Severity == Severity.Breach && f.Code == "RW4017").Select(f => int.Parse(f.Where["step ".Length..], CultureInfo.InvariantCulture)).ToList();
            if (strings.Count == 1 && tight.Exists(k => kit.Joints.Any(j => j.Female == strings[0].Id && (j.Male == $"tread-{k}" || j.Male == $"riser-{k}")))) return true;
            return tight.Exists(k => stair.Plan.TurnOf(k) is { } turn && pieces.TrueForAll(p => p.Step == 0 || turn.Steps.Any(s => Math.Abs(s.Number - p.Step) <= 1)));
        }
    }
}
