using System.CommandLine;
using Rodwright.Output;

namespace Rodwright.Commands;

/// <summary>rodwright check JOB: the regulation clause by clause.</summary>
internal static class CheckCommand
{
    public static Command Make(Surroundings around)
    {
        var job = JobArgument.Make();
        var regulations = RegulationFolder.Option();
        var command = new Command("check", "Judge a job by its regulation, clause by clause") { job, regulations };
        command.SetAction(parsed =>
        {
            var path = parsed.GetValue(job)!;
            if (JobArgument.SetOut(path, parsed.GetValue(regulations), around) is not { } stair) return Exit.Errors;
            RegulationText.Write(around.Out, stair.Regulation);
            // A practice limit not kept is a breach too, and says so beside the regulation's.
            var breaches = stair.Findings.Where(f => f.Severity >= Stairs.Findings.Severity.Breach).ToList();
            FindingText.Write(around.Out, path, breaches);
            return stair.Regulation.Passes && breaches.Count == 0 ? Exit.Done : Exit.Errors;
        });
        return command;
    }
}
