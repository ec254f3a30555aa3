using System.Diagnostics;

namespace Rodwright.Store.Tests;

/// <summary>The saver, running.</summary>
internal sealed class SaverProcess : IDisposable
{
    private readonly Process process;
    private readonly Task<string> error;
    private readonly Task reading;
    private readonly List<int> acknowledged = [];

    private SaverProcess(Process process)
    {
        this.process = process;
        error = process.StandardError.ReadToEndAsync();
        reading = Read();
    }

    /// <summary>Numbers that were acknowledged, in their order; all of them once it has ended.</summary>
    public IReadOnlyList<int> Acknowledged
    {
        get
        {
            lock (acknowledged) return [.. acknowledged];
        }
    }

    /// <summary>How it ended, once it has.</summary>
    public int Exit => process.ExitCode;

    /// <summary>What it had to complain of, once it has ended.</summary>
    public string Error => error.Result;

    public static SaverProcess Start(params string[] words)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var word in words.Prepend(Path.Combine(AppContext.BaseDirectory, "saver", "Rodwright.Store.Saver.dll"))) start.ArgumentList.Add(word);
        return new(Process.Start(start)!);
    }

    /// <summary>Waits until so many numbers were acknowledged, or it has ended.</summary>
    public async Task Saved(int count)
    {
        while (Acknowledged.Count < count && !reading.IsCompleted) await Task.WhenAny(reading, Task.Delay(1));
    }

    /// <summary>Kill -9, at once.</summary>
    /// <returns>Whether it was alive until then.</returns>
    public async Task<bool> Kill()
    {
        var alive = !process.HasExited;
        process.Kill();
        await End();
        return alive;
    }

    /// <summary>Waits until it has ended by itself and all that it said has been read.</summary>
    public async Task End()
    {
        await process.WaitForExitAsync();
        await Task.WhenAll(reading, error);
    }

    public void Dispose() => process.Dispose();

    private async Task Read()
    {
        while (await process.StandardOutput.ReadLineAsync() is { } line)
            lock (acknowledged) acknowledged.Add(int.Parse(line));
    }
}
