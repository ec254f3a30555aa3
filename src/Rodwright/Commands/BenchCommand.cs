using System.CommandLine;
using Rodwright.Hosting;

namespace Rodwright.Commands;

/// <summary>rodwright bench: the workshop pages in a browser.</summary>
internal static class BenchCommand
{
    public static Command Make(Surroundings around)
    {
        var port = new Option<int>("--port") { Description = "Port to serve on; 0 takes any that is free", DefaultValueFactory = _ => BenchOptions.UsualPort };
        var data = new Option<string?>("--data") { Description = $"Folder for the jobs; without it {BenchOptions.UsualData}" };
        var share = new Option<bool>("--share") { Description = "Let the workshop's network in, with an access code" };
        var open = new Option<bool>("--open") { Description = "Open the pages in this machine's browser" };
        port.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is < 0 or > 65535) result.AddError("--port: a number from 0 to 65535");
        });
        var command = new Command("bench", $"Open the workshop pages; jobs are kept in SQLite, or in PostgreSQL when {BenchOptions.DatabaseVariable} holds a connection string") { port, data, share, open };
        command.SetAction((parsed, stop) => BenchRun.Serve(
            new(parsed.GetValue(port), Path.GetFullPath(parsed.GetValue(data) ?? BenchOptions.UsualData), parsed.GetValue(share), parsed.GetValue(open), Environment.GetEnvironmentVariable(BenchOptions.DatabaseVariable)),
            around, stop));
        return command;
    }
}
