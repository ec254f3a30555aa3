using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;

namespace Rodwright.Browser.Tests;

/// <summary>The program serving its pages, as a user starts it: a process of its own, on a port and in a folder of its own.</summary>
public sealed partial class BenchProcess : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private readonly Process process;
    private readonly StringBuilder told;

    private BenchProcess(Process process, StringBuilder told, int port, string data)
    {
        (this.process, this.told, Port, Data) = (process, told, port, data);
    }

    /// <summary>Where it serves.</summary>
    public int Port { get; }

    /// <summary>Its data folder.</summary>
    public string Data { get; }

    /// <summary>Its address on this machine.</summary>
    public string Address => $"http://localhost:{Port}";

    /// <summary>What it has told people so far.</summary>
    public string Told
    {
        get { lock (told) return told.ToString(); }
    }

    /// <summary>Starts the program and waits until it says where it is.</summary>
    public static async Task<BenchProcess> Start(string? data = null, int port = 0, params string[] more)
    {
        data ??= Directory.CreateTempSubdirectory("rodwright-bench-").FullName;
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        foreach (var word in new[] { Program, "bench", "--port", port.ToString(null, null), "--data", data }.Concat(more)) start.ArgumentList.Add(word);
        var process = Process.Start(start)!;
        var told = new StringBuilder();
        var found = new TaskCompletionSource<int>(TaskCreationOptions.RunContinuationsAsynchronously);
        process.OutputDataReceived += (_, line) => Take(line.Data);
        process.ErrorDataReceived += (_, line) => Take(line.Data);
        process.EnableRaisingEvents = true;
        process.Exited += (_, _) => found.TrySetException(new InvalidOperationException("the program has stopped: " + told));
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        return new(process, told, await found.Task.WaitAsync(Patience), data);

        void Take(string? line)
        {
            if (line is null) return;
            lock (told) told.AppendLine(line);
            if (Address_().Match(line) is { Success: true } match) found.TrySetResult(int.Parse(match.Groups[1].ValueSpan, null));
        }
    }

    /// <summary>Stops it as a power cut would.</summary>
    public async Task Kill()
    {
        process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
    }

    /// <summary>Memory it holds, bytes.</summary>
    public long Memory
    {
        get
        {
            process.Refresh();
            return process.WorkingSet64;
        }
    }

    /// <summary>How long it has kept processors busy so far.</summary>
    public TimeSpan Worked
    {
        get
        {
            process.Refresh();
            return process.TotalProcessorTime;
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (!process.HasExited) await Kill();
        process.Dispose();
    }

    private static string Program
    {
        get
        {
            // artifacts/bin/<this>/<configuration>/ stands beside artifacts/bin/Rodwright/<configuration>/.
            var here = new DirectoryInfo(AppContext.BaseDirectory);
            var program = Path.Combine(here.Parent!.Parent!.FullName, "Rodwright", here.Name, "rodwright.dll");
            return File.Exists(program) ? program : throw new FileNotFoundException("the program is not built", program);
        }
    }

    [GeneratedRegex("open at http://localhost:([0-9]+)/")]
    private static partial Regex Address_();
}
