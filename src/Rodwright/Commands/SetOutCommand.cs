using System.CommandLine;
using Rodwright.Output;

namespace Rodwright.Commands;

/// <summary>rodwright setout JOB: a readable summary with findings, or the whole numeric result as JSON.</summary>
internal static class SetOutCommand
{
    public static Command Make(Surroundings around)
    {
        var job = JobArgument.Make();
        var regulations = RegulationFolder.Option();
        var json = new Option<bool>("--json") { Description = "Print the whole numeric result as JSON" };
        var command = new Command("setout", "Set a job out: sizes, turn, strings, newels and findings") { job, json, regulations };
        command.SetAction(parsed =>
        {
            var path = parsed.GetValue(job)!;
            if (JobArgument.SetOut(path, parsed.GetValue(regulations), around) is not { } stair) return Exit.Errors;
            if (parsed.GetValue(json)) around.Out.WriteLine(StairJson.Write(stair, stair.Prove()));
            else SummaryText.Write(around.Out, path, stair);
            return Exit.Done;
        });
        return command;
    }
}
