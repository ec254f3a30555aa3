using System.CommandLine;
using Rodwright.Commands;

namespace Rodwright;

/// <summary>The program: reads what was asked, calls the engine, prints and writes. Exit 0 done, 1 errors or breaches, 2 wrong usage.</summary>
public static class Program
{
    /// <summary>Runs one command line.</summary>
    public static int Main(string[] args) => Run(args, new Surroundings(Console.Out, Console.Error, TimeProvider.System, !Console.IsErrorRedirected));

    /// <summary>Runs one command line in given surroundings; tests give their own.</summary>
    public static int Run(string[] args, Surroundings around)
    {
        var root = new RootCommand("Rodwright sets out timber stairs: from a job file to a proven stair and the pack to make it from.")
        {
            ProposeCommand.Make(around), SetOutCommand.Make(around), CheckCommand.Make(around), ProveCommand.Make(around), PackCommand.Make(around), TimberCommand.Make(around), QuoteCommand.Make(around), CompareCommand.Make(around), RegulationCommand.Make(around), SchemaCommand.Make(around), BenchCommand.Make(around),
        };
        var parsed = root.Parse(args);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors) around.Error.WriteLine("rodwright: " + error.Message);
            around.Error.WriteLine("rodwright: see `rodwright --help`");
            return Exit.Usage;
        }
        try
        {
            return parsed.Invoke(new InvocationConfiguration { Output = around.Out, Error = around.Error, EnableDefaultExceptionHandler = false });
        }
        catch (Exception fault)
        {
            // A fault of ours, not of the job: said as such, in one line, with what to do. The trace is for who mends it.
            around.Error.WriteLine($"rodwright: fault in the program: {fault.Message} Please report it with the job file; RODWRIGHT_TRACE=1 shows where.");
            if (Environment.GetEnvironmentVariable("RODWRIGHT_TRACE") == "1") around.Error.WriteLine(fault);
            return Exit.Errors;
        }
    }
}
