using System.CommandLine;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Commands;

/// <summary>rodwright schema: the JSON schema of a job file.</summary>
internal static class SchemaCommand
{
    public static Command Make(Surroundings around)
    {
        var command = new Command("schema", "Print the JSON schema of a job file");
        command.SetAction(_ =>
        {
            around.Out.WriteLine(JobSchema.Text());
            return Exit.Done;
        });
        return command;
    }
}
