using CsCheck;
using Rodwright.Joinery.Proof;
using Rodwright.Properties;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Proof;

/// <summary>What must hold of every stair, over generated jobs.</summary>
public class ProverPropertyTests
{
    [Fact]
    public void Every_joint_closes_nothing_clashes_and_every_part_lies_in_its_blank_or_a_finding_says_why_not()
    {
        var failed = 0;
        Generated.All.Holds(job =>
        {
            if (Stair.SetOut(job).Value is not { } stair) return;
            var proof = stair.Prove();
            var pinched = stair.Kit.Findings.Where(f => f.Code is "RW4015" or "RW4016" or "RW4017").Select(f => f.ToString()).ToList();
            // Nor is anything called pinched that goes together.
            if (proof.Holds) Assert.True(pinched.Count == 0, string.Join("\n", pinched) + Describe(job, proof));
            else Interlocked.Increment(ref failed);
            Assert.True(!Explanations.Missing(stair, proof).Any(), string.Join("\n", Explanations.Missing(stair, proof)) + "\n" + Describe(job, proof));
        }, iter: 5000);
        Assert.InRange(failed, 1, 120);
    }

    private static string Describe(Job job, ProofReport proof) => string.Join("\n",
        proof.Joints.Where(j => !j.Holds).Take(4).Select(j => j.ToString())
            .Concat(proof.Clashes.Take(4).Select(c => c.ToString()))
            .Concat(proof.NewelCuts.Take(4).Select(c => c.ToString()))
            .Concat(proof.Blanks.Where(b => !b.Holds).Take(4).Select(c => c.ToString()))
            .Append(JobFile.Write(job)));
}
