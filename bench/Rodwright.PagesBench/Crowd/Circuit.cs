using System.Collections.Concurrent;
using System.Diagnostics;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Http.Connections;
using Microsoft.AspNetCore.SignalR.Client;
using Microsoft.AspNetCore.SignalR.Protocol;
using Microsoft.Extensions.DependencyInjection;

namespace Rodwright.PagesBench.Crowd;

/// <summary>One person at one job, without a browser: speaks to the server as a page does, and draws nothing.</summary>
public sealed partial class Circuit : IAsyncDisposable
{
    // Drawn things say what they are of; nothing else a page is sent does.
    private static readonly byte[] Drawing = "data-of=\"riser-2\""u8.ToArray();
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private readonly HubConnection hub;
    private readonly ConcurrentQueue<string> errors = [];
    private readonly TaskCompletionSource<long> board = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private TaskCompletionSource<long>? waiting;
    private int objects;
    private int calls;
    private int batches;

    private Circuit(string address)
    {
        var builder = new HubConnectionBuilder().WithUrl(address + "/_blazor", o =>
        {
            o.Transports = HttpTransportType.WebSockets;
            o.SkipNegotiation = true;
        });
        builder.Services.AddSingleton<IHubProtocol>(new BlazorPack());
        hub = builder.Build();
        hub.On<long, string, string?, int, long, int>("JS.BeginInvokeJS", Answer);
        hub.On<long, byte[]>("JS.RenderBatch", Take);
        hub.On<int, string>("JS.AttachComponent", (_, _) => { });
        hub.On<string, bool, string?>("JS.EndInvokeDotNet", (_, good, words) =>
        {
            if (!good) errors.Enqueue(words ?? "a call failed");
        });
        hub.On<string>("JS.EndUpdateRootComponents", _ => { });
        hub.On<string>("JS.Error", errors.Enqueue);
        hub.Closed += fault =>
        {
            if (fault is not null) errors.Enqueue(fault.Message);
            return Task.CompletedTask;
        };
    }

    /// <summary>What went wrong so far.</summary>
    public IReadOnlyCollection<string> Errors => errors;

    /// <summary>Bytes of what was sent to be drawn so far.</summary>
    public long Received { get; private set; }

    /// <summary>Opens a job; done when its rod would be drawn.</summary>
    public static async Task<Circuit> Open(HttpClient web, string address, Guid job)
    {
        var page = $"{address}/jobs/{job:D}";
        using var request = new HttpRequestMessage(HttpMethod.Get, page);
        request.Headers.Accept.ParseAdd("text/html");
        using var answer = await web.SendAsync(request);
        var marks = PageMarks.Of(await answer.EnsureSuccessStatusCode().Content.ReadAsStringAsync());
        var circuit = new Circuit(address);
        await circuit.hub.StartAsync();
        var secret = await circuit.hub.InvokeAsync<string?>("StartCircuit", address + "/", page, "[]", marks.State);
        if (secret is null) throw new InvalidOperationException("the server opened no circuit");
        await circuit.hub.SendAsync("UpdateRootComponents", marks.Operations, marks.State);
        try
        {
            await circuit.board.Task.WaitAsync(Patience);
        }
        catch (TimeoutException)
        {
            throw new TimeoutException("the rod did not come: " + string.Join("; ", circuit.errors));
        }
        return circuit;
    }

    /// <summary>Drags the first riser and lets it go; how long until the new drawing came, ms.</summary>
    /// <param name="distance">How far, mm.</param>
    public async Task<double> Drag(double distance)
    {
        var board = await this.board.Task;
        var drawn = new TaskCompletionSource<long>(TaskCreationOptions.RunContinuationsAsynchronously);
        Volatile.Write(ref waiting, drawn);
        var call = Interlocked.Increment(ref calls).ToString(null, null);
        var sent = Stopwatch.GetTimestamp();
        await hub.SendAsync("BeginInvokeDotNetFromJS", call, null, "Dragged", board, JsonSerializer.Serialize(new object[] { "riser-1", distance, true }));
        try
        {
            return Stopwatch.GetElapsedTime(sent, await drawn.Task.WaitAsync(Patience)).TotalMilliseconds;
        }
        catch (TimeoutException)
        {
            throw new TimeoutException($"no drawing came after a change; {batches} batches so far; {hub.State}: " + string.Join("; ", errors));
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync() => await hub.DisposeAsync();

    private async Task Take(long number, byte[] batch)
    {
        var now = Stopwatch.GetTimestamp();
        Received += batch.Length;
        batches++;
        if (batch.AsSpan().IndexOf(Drawing) >= 0) Interlocked.Exchange(ref waiting, null)?.TrySetResult(now);
        await hub.SendAsync("OnRenderCompleted", number, null);
    }

    /// <summary>Answers what the page's scripts would: things by a number, words by what a fresh browser remembers, all else by nothing.</summary>
    private async Task Answer(long task, string name, string? with, int kind, long target, int call)
    {
        if (name == "attach" && with is not null && Reference().Matches(with) is [.., var reference]) board.TrySetResult(long.Parse(reference.Groups[1].ValueSpan, null));
        if (task == 0) return;
        const int thing = 1; // JSCallResultType.JSObjectReference
        var result = kind == thing ? $$"""{"__jsObjectId":{{Interlocked.Increment(ref objects)}}}""" : name switch
        {
            "person" => "\"\"",
            "ground" => "\"paper\"",
            _ => "null",
        };
        await hub.SendAsync("EndInvokeJSFromDotNet", task, true, $"[{task},true,{result}]");
    }

    [GeneratedRegex("""\{"__dotNetObject":([0-9]+)\}""")]
    private static partial Regex Reference();
}
