using System.Net;
using System.Text.Json;

namespace Rodwright.Browser.Tests.Files;

[Collection("workshop")]
public sealed class HealthTests(Workshop workshop)
{
    [Fact]
    public async Task Health_answers_with_version_and_store()
    {
        using var client = new HttpClient();
        using var answer = await client.GetAsync(workshop.Bench.Address + "/health");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("application/json", answer.Content.Headers.ContentType?.MediaType);
        using var json = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());
        Assert.Matches(@"^\d+\.\d+\.\d+", json.RootElement.GetProperty("version").GetString());
        Assert.Equal("SQLite", json.RootElement.GetProperty("store").GetString());
    }

    [Fact]
    public async Task Every_answer_lets_the_browser_run_and_show_only_what_this_machine_serves()
    {
        using var client = new HttpClient();
        foreach (var path in new[] { "/", "/health", "/js/app.js", "/nothing" })
        {
            using var answer = await client.GetAsync(workshop.Bench.Address + path);
            var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
            Assert.Contains("script-src 'self';", policy);
            Assert.Contains("style-src 'self';", policy);
            Assert.DoesNotContain("unsafe", policy);
            Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
            Assert.False(answer.Headers.Contains("Server"));
        }
    }
}
