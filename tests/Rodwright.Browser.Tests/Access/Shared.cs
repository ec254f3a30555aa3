using System.Text.RegularExpressions;

namespace Rodwright.Browser.Tests.Access;

/// <summary>A server that shares its pages, and a stranger's way to it.</summary>
public sealed partial class Shared : IAsyncLifetime
{
    /// <summary>The server.</summary>
    public BenchProcess Bench { get; private set; } = null!;

    /// <summary>The way in from the network.</summary>
    public Relay Network { get; private set; } = null!;

    /// <summary>The access code, read from what the program tells.</summary>
    public string Code => CodeLine().Match(Bench.Told) is { Success: true } match ? match.Groups[1].Value : throw new InvalidOperationException("no code was told: " + Bench.Told);

    public async ValueTask InitializeAsync()
    {
        Bench = await BenchProcess.Start(more: "--share");
        Network = new(Bench.Port);
        for (var i = 0; i < 100 && !CodeLine().IsMatch(Bench.Told); i++) await Task.Delay(50);
    }

    public async ValueTask DisposeAsync()
    {
        Network.Dispose();
        await Bench.DisposeAsync();
        Directory.Delete(Bench.Data, recursive: true);
    }

    /// <summary>A client from the network, with a cookie jar of its own and no redirects followed.</summary>
    public HttpClient Stranger() => new(new HttpClientHandler { AllowAutoRedirect = false, UseProxy = false }) { BaseAddress = new(Network.Address) };

    /// <summary>Fills the form of the access page in.</summary>
    public static async Task<HttpResponseMessage> Enter(HttpClient client, string code)
    {
        var page = await client.GetStringAsync("/enter");
        var token = Token().Match(page).Groups[1].Value;
        return await client.PostAsync("/enter", new FormUrlEncodedContent(new Dictionary<string, string> { ["code"] = code, ["__RequestVerificationToken"] = token }));
    }

    [GeneratedRegex("Access code: ([A-Z0-9]{5}-[A-Z0-9]{5})")]
    private static partial Regex CodeLine();

    [GeneratedRegex("name=\"__RequestVerificationToken\" value=\"([^\"]+)\"")]
    private static partial Regex Token();
}
