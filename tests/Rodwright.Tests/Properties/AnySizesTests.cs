using System.Text.Json.Nodes;
using CsCheck;
using Rodwright.Drawings.Paper;
using Rodwright.Joinery;
using Rodwright.Rod;
using Rodwright.Rod.Packs;
using Rodwright.Stairs.Jobs;
using Xunit;

namespace Rodwright.Tests.Properties;

/// <summary>
/// Job files with sizes from all over their ranges, far from anything a joiner would build: each is refused with reasons, or set out, proved and drawn.
/// Never a fault of the program.
/// </summary>
public class AnySizesTests
{
    private static readonly (string Name, double Least, double Most)[] Sizes =
    [
        ("newel", 15, 250), ("tread", 3, 75), ("riser", 2, 50), ("nosing", 0, 60), ("margin", 5, 200), ("housing", 1, 40), ("newelHousing", 1, 60), ("cover", 1, 60),
        ("nosingPastNewel", 0, 60), ("nosingCover", 0, 100), ("coverBelow", 0, 100), ("corner", 0, 40), ("easing", 0, 600), ("skirting", 0, 400), ("headLevel", 0, 600),
        ("floorBoards", 3, 100), ("packing", 0, 60), ("nosingPiece", 10, 300), ("topNewelDrop", 0, 600), ("newelBelowFloor", 0, 600),
    ];

    private static readonly Gen<string> Jobs =
        from kind in Gen.Int[0, 3]
        from before in Gen.Int[0, 9]
        from after in Gen.Int[0, 9]
        from steps in Gen.Int[2, 6]
        from e in Gen.Int[0, 360]
        from hand in Gen.OneOf("left", "right")
        from method in Gen.OneOf("equal-goings", "equal-arcs", "radiating")
        from regulation in Gen.OneOf("england-2013-private", "scotland-private", "usa-irc-2021", "bs-5395-1-2010")
        from rise in Gen.Int[110, 260]
        from going in Gen.Int[150, 350]
        from width in Gen.Int[500, 1400]
        from chosen in Gen.Int[0, 3].Array[Sizes.Length]
        from parts in Gen.Double[0, 1].Array[Sizes.Length]
        from onTread in Gen.Bool
        select Text(kind, before, after, steps, e, hand, method, regulation, rise, going, width, chosen, parts, onTread);

    [Fact]
    public void Any_sizes_are_refused_with_reasons_or_set_out_proved_and_drawn()
    {
        var drawn = 0;
        // The same 600 texts every time, so that a fault found is found again.
        Parallel.For(1, 601, i =>
        {
            var read = JobFile.Read(Jobs.Generate(new PCG((uint)i, 20261125), null, out _));
            Assert.True(read.Value is not null || read.Findings.Length > 0);
            if (read.Value is not { } job) return;
            var set = Stair.SetOut(job, read.Findings);
            Assert.True(set.Value is not null || set.Findings.Length > 0);
            if (set.Value is not { } stair) return;
            var proof = stair.Prove();
            Assert.NotEmpty(proof.Joints);
            Pack.Draw(new RodJob(stair, proof, new RodStyle(PaperStock.Of(PaperSize.A3.Landscape), null, "2026-03-02")));
            Interlocked.Increment(ref drawn);
        });
        Assert.True(drawn > 50, $"only {drawn} of 600 were drawn");
    }

    private static string Text(
        int kind, int before, int after, int steps, int e, string hand, string method, string regulation, int rise, int going, int width, int[] chosen, double[] parts, bool onTread)
    {
        var sequence = new JsonArray(new JsonObject { ["flight"] = kind == 0 ? before + after + 1 : before });
        if (kind > 0)
        {
            var turn = kind == 1 ? new JsonObject { ["turn"] = "landing" } : new JsonObject { ["turn"] = "winders", ["steps"] = steps, ["method"] = method };
            if (e < 90) turn["firstRiser"] = e;
            sequence.Add(turn);
            sequence.Add(new JsonObject { ["flight"] = after });
        }
        var practice = new JsonObject { ["riserOnTread"] = onTread };
        // A few sizes at a time: all of them at once would always contradict one another.
        for (var i = 0; i < Sizes.Length; i++)
            if (chosen[i] == 0 && i % 3 == steps % 3) practice[Sizes[i].Name] = Math.Round(Sizes[i].Least + parts[i] * (Sizes[i].Most - Sizes[i].Least), 1);
        var risers = 1 + (kind == 0 ? before + after + 1 : before + after + (kind == 1 ? 1 : steps));
        return new JsonObject
        {
            ["rodwright"] = 1, ["title"] = "Any sizes", ["regulation"] = regulation, ["survey"] = new JsonObject { ["floorToFloor"] = risers * rise },
            ["layout"] = new JsonObject { ["hand"] = hand, ["sequence"] = sequence }, ["going"] = going, ["width"] = width, ["practice"] = practice,
        }.ToJsonString();
    }
}
