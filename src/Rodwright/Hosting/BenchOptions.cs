using System.Net;

namespace Rodwright.Hosting;

/// <summary>How the workshop pages are to be served.</summary>
/// <param name="Port">TCP port; 0 for any that is free.</param>
/// <param name="Data">Folder for the store and the keys of the access cookie.</param>
/// <param name="Share">Whether the workshop's network is let in, with the access code.</param>
/// <param name="Open">Whether to open the pages in this machine's browser.</param>
/// <param name="Database">Connection string of a PostgreSQL server; null for SQLite in the data folder.</param>
internal sealed record BenchOptions(int Port, string Data, bool Share, bool Open, string? Database)
{
    /// <summary>The port when none is given.</summary>
    public const int UsualPort = 8421;

    /// <summary>The environment's variable with the connection string: a command line would show it to everybody on the machine.</summary>
    public const string DatabaseVariable = "RODWRIGHT_DATABASE";

    /// <summary>Where data is kept when no folder is given: the user's own.</summary>
    public static string UsualData => Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify) is { Length: > 0 } folder
            ? folder : Path.Combine(Path.GetTempPath()), "rodwright");

    /// <summary>Where to listen: this machine alone unless shared.</summary>
    public IPAddress Address => Share ? IPAddress.Any : IPAddress.Loopback;
}
