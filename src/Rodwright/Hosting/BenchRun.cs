using System.Diagnostics;
using System.Net.Sockets;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Rodwright.Hosting.Access;
using Rodwright.Store.Postgres;
using Rodwright.Store.Sqlite;
using Rodwright.Workshop.Shelf;

namespace Rodwright.Hosting;

/// <summary>Opens the store, starts the server, tells people where it is, and waits to be stopped.</summary>
internal static class BenchRun
{
    public static async Task<int> Serve(BenchOptions options, Surroundings around, CancellationToken stop)
    {
        AccessCode? code;
        IJobShelf shelf;
        try
        {
            Directory.CreateDirectory(options.Data);
            code = options.Share ? AccessCode.In(options.Data) : null;
            shelf = await ShelfOf(options, around.Time, stop);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException or InvalidOperationException or System.Data.Common.DbException)
        {
            around.Error.WriteLine($"rodwright: error RW6004: the store cannot be opened: {e.Message}");
            around.Error.WriteLine(options.Database is null
                ? $"rodwright: is {options.Data} a folder that can be written to? --data names another"
                : $"rodwright: is the server of {BenchOptions.DatabaseVariable} running and reachable?");
            return Exit.Errors;
        }
        // Closed after the server: what is still being kept is kept.
        using var open = shelf as IDisposable;
        await using var server = BenchServer.Build(options, shelf, code, around.Time);
        try
        {
            await server.StartAsync(stop);
        }
        catch (Exception e) when (e is IOException or SocketException)
        {
            around.Error.WriteLine($"rodwright: error RW6005: port {options.Port} cannot be used: {e.Message}");
            around.Error.WriteLine("rodwright: --port names another; --port 0 takes any that is free");
            return Exit.Errors;
        }
        Tell(server, options, code, around);
        await server.WaitForShutdownAsync(stop);
        return Exit.Done;
    }

    private static void Tell(WebApplication server, BenchOptions options, AccessCode? code, Surroundings around)
    {
        var bound = server.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        var port = new Uri(bound).Port;
        around.Out.WriteLine($"The workshop is open at http://localhost:{port}/   (Ctrl+C closes it)");
        if (code is not null)
        {
            foreach (var address in ShareWords.Addresses(port)) around.Out.WriteLine($"On the workshop's network: {address}");
            around.Out.WriteLine($"Access code: {code.Text}");
            if (ShareWords.Addresses(port) is [var first, ..]) around.Out.WriteLine(ShareWords.ForTerminal(ShareWords.Link(first, code)));
        }
        around.Out.Flush();
        if (options.Open) OpenBrowser($"http://localhost:{port}/");
    }

    /// <summary>As a double click would; on a machine without a screen nothing happens, and the address stands on the terminal.</summary>
    private static void OpenBrowser(string address)
    {
        try
        {
            using var started = Process.Start(new ProcessStartInfo(address) { UseShellExecute = true });
        }
        catch (Exception e) when (e is System.ComponentModel.Win32Exception or InvalidOperationException or FileNotFoundException)
        {
            // No browser to open.
        }
    }

    private static async Task<IJobShelf> ShelfOf(BenchOptions options, TimeProvider time, CancellationToken stop) => options.Database is { } connection
        ? await PostgresShelf.Open(connection, time, stop)
        : await SqliteShelf.Open(Path.Combine(options.Data, "jobs.db"), time, stop);
}
