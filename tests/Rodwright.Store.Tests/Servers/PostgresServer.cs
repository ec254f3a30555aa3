using System.Diagnostics;
using Npgsql;

namespace Rodwright.Store.Tests.Servers;

/// <summary>
/// A PostgreSQL server of the tests' own, reached through a socket in a folder of its own, so that it meets no other. It lives as long as the tests hold its
/// standard input: however they end, it goes, and its folder with it. A server that is not installed is a failure, never a reason to skip.
/// </summary>
internal sealed class PostgresServer : IAsyncDisposable
{
    // Whatever user runs it; {0} is the folder of the programs. It does not wait for the disk: it is not the server's promises that are tested here.
    private const string Script = """
        set -eu
        bin=$1
        home=$(mktemp -d "${TMPDIR:-/tmp}/rodwright-store.XXXXXX")
        say() { printf '%s\n' "$1"; }
        stop() { "$bin/pg_ctl" -D "$home/data" -m immediate stop >/dev/null 2>&1 || true; rm -rf "$home"; }
        trap stop EXIT
        "$bin/initdb" -D "$home/data" -U joiner -A trust -E UTF8 --locale=C --no-sync >"$home/log" 2>&1 || { cat "$home/log" >&2; exit 1; }
        options="-k $home -c listen_addresses= -c fsync=off -c max_connections=200"
        "$bin/pg_ctl" -D "$home/data" -l "$home/log" -o "$options" -w start >/dev/null || { cat "$home/log" >&2; exit 1; }
        say "$home"
        while read -r word; do
            "$bin/pg_ctl" -D "$home/data" -l "$home/log" -o "$options" -w -m immediate restart >/dev/null || { cat "$home/log" >&2; exit 1; }
            say restarted
        done
        """;

    private static readonly Lock Gate = new();
    private static Task<PostgresServer>? running;
    private readonly Process process;
    private readonly string home;
    private int databases;

    private PostgresServer(Process process, string home)
    {
        this.process = process;
        this.home = home;
    }

    /// <summary>The one server of this run, started when first asked for.</summary>
    public static Task<PostgresServer> Running()
    {
        lock (Gate) return running ??= Start();
    }

    /// <summary>Makes an empty database.</summary>
    /// <returns>The connection string to it.</returns>
    public async Task<string> NewDatabase(string encoding = "UTF8")
    {
        var name = $"store{Interlocked.Increment(ref databases)}";
        await Say($"CREATE DATABASE {name} ENCODING '{encoding}' TEMPLATE template0");
        return ConnectionTo(name);
    }

    /// <summary>Drops a database, whoever is still connected.</summary>
    public Task Drop(string connectionString) => Say($"DROP DATABASE {new NpgsqlConnectionStringBuilder(connectionString).Database} WITH (FORCE)");

    /// <summary>Kills every process of the server and starts it again.</summary>
    public async Task Crash()
    {
        await process.StandardInput.WriteLineAsync("again");
        await process.StandardInput.FlushAsync();
        if (await process.StandardOutput.ReadLineAsync() != "restarted") throw new InvalidOperationException(await process.StandardError.ReadToEndAsync());
    }

    /// <summary>Stops the server of this run, if it was ever started, and waits until its folder is gone.</summary>
    public static async Task StopRunning()
    {
        if (running is not null) await (await running).DisposeAsync();
    }

    public async ValueTask DisposeAsync()
    {
        process.StandardInput.Close();
        await process.WaitForExitAsync();
        process.Dispose();
    }

    private string ConnectionTo(string database) =>
        new NpgsqlConnectionStringBuilder { Host = home, Database = database, Username = "joiner", MaxPoolSize = 40 }.ToString();

    private async Task Say(string sql)
    {
        await using var connection = new NpgsqlConnection(ConnectionTo("postgres") + ";Pooling=false");
        await connection.OpenAsync();
        await using var command = new NpgsqlCommand(sql, connection);
        await command.ExecuteNonQueryAsync();
    }

    /// <summary>Starts a server for one test alone.</summary>
    public static async Task<PostgresServer> Start()
    {
        var start = new ProcessStartInfo { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = "/" };
        // The server refuses to run as root.
        List<string> words = Environment.IsPrivilegedProcess ? ["setpriv", "--reuid=postgres", "--regid=postgres", "--init-groups", "bash"] : ["bash"];
        start.FileName = words[0];
        foreach (var word in words.Skip(1).Concat(["-c", Script, "server", Programs()])) start.ArgumentList.Add(word);
        var process = Process.Start(start)!;
        var home = await process.StandardOutput.ReadLineAsync();
        return home is null
            ? throw new InvalidOperationException("The PostgreSQL server of the tests does not start: " + await process.StandardError.ReadToEndAsync())
            : new(process, home);
    }

    private static string Programs()
    {
        var path = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(':').Where(folder => folder.Length > 0);
        var debian = Directory.Exists("/usr/lib/postgresql")
            ? Directory.GetDirectories("/usr/lib/postgresql").OrderByDescending(f => int.TryParse(Path.GetFileName(f), out var version) ? version : 0).Select(f => Path.Combine(f, "bin"))
            : [];
        return path.Concat(debian).FirstOrDefault(folder => File.Exists(Path.Combine(folder, "initdb")))
            ?? throw new InvalidOperationException("The tests start a PostgreSQL server and find no initdb. Install PostgreSQL (Debian: postgresql); ./test does.");
    }
}
