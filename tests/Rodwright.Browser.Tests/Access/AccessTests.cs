using System.Net;

namespace Rodwright.Browser.Tests.Access;

[Collection("workshop")]
public sealed class AccessTests(Shared shared) : IClassFixture<Shared>
{
    public static TheoryData<string> Everything =>
    [
        "/", "/jobs/01a21493-f83b-76b5-8188-a3407f744588", "/jobs/01a21493-f83b-76b5-8188-a3407f744588/r/1/job.stair.json", "/health", "/js/app.js", "/js/rod.js", "/js/solid.js",
        "/css/bench.css", "/_framework/blazor.web.js", "/share/code.svg", "/_blazor/negotiate", "/print.css?w=420&h=297", "/enter/../health", "/ENTER/x", "/enter?x=/health", "//health",
    ];

    [Theory]
    [MemberData(nameof(Everything))]
    public async Task Without_the_code_nothing_is_readable_but_the_page_that_asks_for_it(string path)
    {
        using var client = shared.Stranger();
        using var answer = await client.GetAsync(shared.Network.Address + path);
        var body = await answer.Content.ReadAsStringAsync();
        if (answer.StatusCode == HttpStatusCode.OK) Assert.Contains("ask for the access code", body);
        else Assert.Contains(answer.StatusCode, new[] { HttpStatusCode.Unauthorized, HttpStatusCode.Found, HttpStatusCode.NotFound });
        Assert.DoesNotContain("store", body);
        Assert.DoesNotContain("Blazor", body);
    }

    [Fact]
    public async Task A_socket_does_not_open_without_the_code()
    {
        using var client = shared.Stranger();
        using var answer = await client.PostAsync("/_blazor/negotiate?negotiateVersion=1", null);
        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
    }

    [Fact]
    public async Task A_browser_without_the_code_is_sent_to_the_page_that_asks_for_it()
    {
        using var client = shared.Stranger();
        client.DefaultRequestHeaders.Accept.ParseAdd("text/html");
        using var answer = await client.GetAsync("/");
        Assert.Equal("/enter", answer.Headers.Location?.OriginalString);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task The_code_lets_in_in_any_case_with_or_without_its_stroke(bool bare)
    {
        using var client = shared.Stranger();
        using var entered = await Shared.Enter(client, bare ? shared.Code.Replace("-", " ").ToLowerInvariant() : shared.Code);
        Assert.Equal(HttpStatusCode.Found, entered.StatusCode);
        Assert.Contains("\"store\":\"SQLite\"", await client.GetStringAsync("/health"));
    }

    [Fact]
    public async Task A_wrong_code_lets_nobody_in()
    {
        using var client = shared.Stranger();
        using var refused = await Shared.Enter(client, "AAAAA-AAAAA");
        Assert.Equal(HttpStatusCode.Unauthorized, refused.StatusCode);
        Assert.Contains("That is not the code", await refused.Content.ReadAsStringAsync());
        using var answer = await client.GetAsync("/health");
        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
    }

    [Fact]
    public async Task A_form_without_its_token_is_refused_even_with_the_code()
    {
        using var client = shared.Stranger();
        using var refused = await client.PostAsync("/enter", new FormUrlEncodedContent(new Dictionary<string, string> { ["code"] = shared.Code }));
        Assert.Equal(HttpStatusCode.Unauthorized, refused.StatusCode);
    }

    [Fact]
    public async Task A_cookie_made_up_lets_nobody_in()
    {
        using var client = shared.Stranger();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/health");
        request.Headers.Add("Cookie", "rodwright-bench=CfDJ8Fn_7Gc9PshCge0mb__XZAG3bU32");
        using var answer = await client.SendAsync(request);
        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
    }

    [Fact]
    public async Task The_machine_itself_needs_no_code()
    {
        using var client = new HttpClient();
        Assert.Contains("\"state\":\"reached\"", await client.GetStringAsync(shared.Bench.Address + "/health"));
    }

    [Theory]
    [InlineData("evil.example")]
    [InlineData("localhost.evil.example")]
    [InlineData("127.0.0.1.evil.example:80")]
    public async Task A_name_that_is_not_this_machines_gets_no_answer(string host)
    {
        using var client = new HttpClient();
        using var request = new HttpRequestMessage(HttpMethod.Get, shared.Bench.Address + "/health") { Headers = { Host = host } };
        using var answer = await client.SendAsync(request);
        Assert.Equal(HttpStatusCode.MisdirectedRequest, answer.StatusCode);
    }

    [Theory]
    [InlineData("http://evil.example")]
    [InlineData("http://localhost:1")]
    [InlineData("null")]
    public async Task What_another_site_has_a_browser_send_is_refused(string origin)
    {
        using var client = new HttpClient();
        using var request = new HttpRequestMessage(HttpMethod.Post, shared.Bench.Address + "/_blazor/negotiate?negotiateVersion=1");
        request.Headers.Add("Origin", origin);
        using var answer = await client.SendAsync(request);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Fact]
    public void The_address_for_the_network_and_its_code_are_told_in_text_and_as_a_picture()
    {
        Assert.Contains("Access code: ", shared.Bench.Told);
        Assert.Matches("[▀▄█]{10}", shared.Bench.Told);
    }
}
