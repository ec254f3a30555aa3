using System.CommandLine;

namespace Rodwright.Commands;

/// <summary>rodwright pack JOB --out DIR: everything to make the stair from.</summary>
internal static class PackCommand
{
    public static Command Make(Surroundings around)
    {
        var job = JobArgument.Make();
        var command = new Command("pack", "Write the pack: sheets, true-size templates, DXF per part, ordinates and lists") { job };
        command.SetAction(parsed => JobArgument.SetOut(parsed.GetValue(job)!, around) is null ? Exit.Errors : Exit.Done);
        return command;
    }
}
