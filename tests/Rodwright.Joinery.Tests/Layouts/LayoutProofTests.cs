using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Xunit;

namespace Rodwright.Joinery.Tests.Layouts;

/// <summary>Every kind of layout goes together: the proof closes on each.</summary>
public class LayoutProofTests
{
    private const string Kite = """{ "turn": "winders", "steps": 3 }""";

    public static TheoryData<string, string> Layouts { get; } = new()
    {
        { "two quarter turns with a flight between", $$"""[ { "flight": 3 }, {{Kite}}, { "flight": 3 }, {{Kite}}, { "flight": 2 } ]""" },
        { "double kite half turn", $$"""[ { "flight": 4 }, {{Kite}}, {{Kite}}, { "flight": 4 } ]""" },
        { "half turn of six", """[ { "flight": 4 }, { "turn": "half-winders", "steps": 6 }, { "flight": 4 } ]""" },
        { "half turn of five", """[ { "flight": 4 }, { "turn": "half-winders", "steps": 5 }, { "flight": 5 } ]""" },
        { "dog-leg", """[ { "flight": 6 }, { "turn": "half-landing" }, { "flight": 6 } ]""" },
        { "open well half landing", """[ { "flight": 6 }, { "turn": "half-landing", "well": 300 }, { "flight": 6 } ]""" },
        { "three flights with landings", """[ { "flight": 4 }, { "turn": "landing" }, { "flight": 3 }, { "turn": "landing" }, { "flight": 4 } ]""" },
        { "left then right", $$"""[ { "flight": 3 }, {{Kite}}, { "flight": 4 }, { "turn": "winders", "steps": 3, "hand": "right" }, { "flight": 2 } ]""" },
        { "left then right with landings", """[ { "flight": 3 }, { "turn": "landing" }, { "flight": 4 }, { "turn": "landing", "hand": "right" }, { "flight": 3 } ]""" },
        { "a turn first and a turn last", $$"""[ {{Kite}}, { "flight": 7 }, {{Kite}} ]""" },
        { "landing then winders", $$"""[ { "flight": 3 }, { "turn": "landing" }, { "flight": 3 }, {{Kite}}, { "flight": 3 } ]""" },
        { "three turns", $$"""[ { "flight": 2 }, {{Kite}}, { "flight": 2 }, {{Kite}}, { "flight": 2 }, { "turn": "landing" }, { "flight": 2 } ]""" },
        { "balanced quarter turn", """[ { "flight": 4 }, { "turn": "winders", "steps": 3, "method": "balanced-progression", "sharedBefore": 2, "sharedAfter": 2 }, { "flight": 5 } ]""" },
        { "balanced by the harrow", """[ { "flight": 4 }, { "turn": "winders", "steps": 4, "method": "balanced-harrow", "sharedBefore": 3, "sharedAfter": 3 }, { "flight": 4 } ]""" },
        { "balanced half turn", """[ { "flight": 4 }, { "turn": "half-winders", "steps": 5, "method": "balanced-progression", "sharedBefore": 3, "sharedAfter": 3, "well": 36 }, { "flight": 4 } ]""" },
        { "an open outer corner", $$"""[ { "flight": 4, "right": "open", "left": "open" }, {{Kite}}, { "flight": 5, "right": "open", "left": "open" } ]""" },
        { "open first, walled after", $$"""[ { "flight": 4, "right": "open", "left": "open" }, {{Kite}}, { "flight": 5 } ]""" },
        { "a half turn in the middle of a room", """[ { "flight": 4, "right": "open", "left": "open" }, { "turn": "half-landing", "well": 300 }, { "flight": 5, "right": "open", "left": "open" } ]""" },
        { "walled on both sides", $$"""[ { "flight": 4, "left": "wall", "right": "wall" }, {{Kite}}, { "flight": 5, "left": "wall", "right": "wall" } ]""" },
        { "one flight open on both sides", """[ { "flight": 12, "left": "open", "right": "open" } ]""" },
        { "right then left at once", """[ { "flight": 4 }, { "turn": "landing", "hand": "right" }, { "turn": "landing", "hand": "left" }, { "flight": 5 } ]""" },
    };

    [Theory, MemberData(nameof(Layouts))]
    public void The_proof_closes(string what, string sequence)
    {
        foreach (var hand in new[] { "left", "right" })
        {
            var job = JobFile.Read($$"""
                { "rodwright": 1, "title": "{{what}}", "regulation": "england-2013-private", "survey": { "floorToFloor": [2600] },
                  "layout": { "hand": "{{hand}}", "sequence": {{sequence}} }, "going": 225, "width": 860 }
                """);
            Assert.True(job.Value is not null, string.Join("\n", job.Findings));
            var outcome = Stair.SetOut(job.Value!);
            Assert.True(outcome.Value is not null, string.Join("\n", outcome.Findings));
            var proof = outcome.Value!.Prove();

            Assert.True(proof.Holds, string.Join("\n", proof.Joints.Where(j => !j.Holds).Select(j => j.ToString()).Concat(proof.Clashes.Select(c => c.ToString()))
                .Concat(proof.NewelCuts.Select(c => c.ToString()!)).Concat(proof.Blanks.Where(b => !b.Holds).Select(b => b.ToString())).Take(12)));
        }
    }

    [Fact]
    public void Strings_that_meet_at_the_newel_of_a_half_turn_are_a_breach_with_a_remedy_that_holds()
    {
        var job = Set("""[ { "flight": 5 }, { "turn": "half-winders", "steps": 4, "method": "balanced-progression", "sharedBefore": 3, "sharedAfter": 3 }, { "flight": 5 } ]""");
        var finding = Stair.SetOut(job).Findings.First(f => f.Code == "RW4014");
        var remedied = JobChanges.Apply(job, RemedyTrial.For(job, finding)[0].Changes).Value!;

        Assert.DoesNotContain(Stair.SetOut(remedied).Findings, f => f.Code == "RW4014");
        Assert.Equal(36, remedied.Layout.Turn!.Well);
    }

    private static Job Set(string sequence) => JobFile.Read($$"""
        { "rodwright": 1, "title": "layout", "regulation": "england-2013-private", "survey": { "floorToFloor": [2800] },
          "layout": { "hand": "left", "sequence": {{sequence}} }, "going": 225, "width": 860 }
        """).Value!;
}
