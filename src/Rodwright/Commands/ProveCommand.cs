using System.CommandLine;
using Rodwright.Output;

namespace Rodwright.Commands;

/// <summary>rodwright prove JOB: does it go together?</summary>
internal static class ProveCommand
{
    public static Command Make(Surroundings around)
    {
        var job = JobArgument.Make();
        var regulations = RegulationFolder.Option();
        var all = new Option<bool>("--all") { Description = "List every joint, not only those that do not close" };
        var command = new Command("prove", "Prove that every joint closes and every part fits") { job, all, regulations };
        command.SetAction(parsed =>
        {
            var path = parsed.GetValue(job)!;
            if (JobArgument.SetOut(path, parsed.GetValue(regulations), around) is not { } stair) return Exit.Errors;
            var proof = stair.Prove();
            ProofText.Write(around.Out, stair.Units, proof, parsed.GetValue(all));
            var breaches = stair.Kit.Findings.Where(f => f.Severity == Stairs.Findings.Severity.Breach).ToList();
            FindingText.Write(around.Out, path, breaches);
            return proof.Holds && breaches.Count == 0 ? Exit.Done : Exit.Errors;
        });
        return command;
    }
}
