using Microsoft.Playwright;

namespace Rodwright.Browser.Tests.Pages;

[Collection("workshop")]
public sealed class RestartTests(Workshop workshop)
{
    [Fact]
    public async Task A_server_killed_and_started_again_in_the_middle_loses_nothing()
    {
        var bench = await BenchProcess.Start();
        await using var visit = await Visit.Begin(workshop.Browser, bench.Address, name: "Ada");
        var address = await visit.Sample("Larkmoor");
        for (var i = 1; i <= 5; i++)
        {
            await visit.Set("going", $"{225 + i}");
            await visit.Kept(i + 1);
        }
        await bench.Kill();
        await visit.Page.Locator("#components-reconnect-modal[open]").WaitForAsync();
        await using var again = await BenchProcess.Start(bench.Data, bench.Port);
        // The page finds the server again by itself and loads what was kept.
        await visit.Page.GetByText("kept, revision 6", new() { Exact = true }).WaitForAsync(new() { Timeout = 60_000 });
        Assert.Equal(address, visit.Page.Url);
        Assert.Equal("230", await visit.Value("going"));
        await visit.Page.ClickAsync("#undo");
        await visit.Kept(7);
        Assert.Equal("229", await visit.Value("going"));
        await bench.DisposeAsync();
    }
}
