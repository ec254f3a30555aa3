using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Rodwright.Pages.Shell;

/// <summary>The little of the page that is done in the browser: lights, dialogs, keys, what the browser remembers.</summary>
public sealed class PageScript(IJSRuntime js) : IAsyncDisposable
{
    private Task<IJSObjectReference>? module;

    /// <summary>Loads a module of the pages.</summary>
    public ValueTask<IJSObjectReference> Load(string name) => js.InvokeAsync<IJSObjectReference>("import", $"./js/{name}.js");

    /// <summary>Lights things up in every drawing: those picked, and fainter what belongs to them.</summary>
    public Task Light(IEnumerable<string> picked, IEnumerable<string> related) => Call("light", picked, related);

    /// <summary>Marks things as wrong in the rod.</summary>
    public Task Wrong(IEnumerable<string> ids) => Call("wrong", ids);

    /// <summary>Brings the first of what a selector finds into sight.</summary>
    public Task Bring(string selector) => Call("bring", selector);

    /// <summary>Shows a dialog or puts it away.</summary>
    public Task Dialog(ElementReference dialog, bool open) => Call("dialog", dialog, open);

    /// <summary>The person's name this browser remembers; empty for none.</summary>
    public async Task<string> Person() => await (await Module()).InvokeAsync<string>("person");

    /// <summary>Remembers the person's name.</summary>
    public Task SetPerson(string name) => Call("setPerson", name);

    /// <summary>"paper" or "dark".</summary>
    public async Task<string> Ground() => await (await Module()).InvokeAsync<string>("ground");

    /// <summary>Changes the ground and remembers it.</summary>
    public Task SetGround(string name) => Call("setGround", name);

    /// <summary>Listens for the keys that work all over the bench; ends when disposed.</summary>
    public async Task<IJSObjectReference> Keys<T>(DotNetObjectReference<T> program) where T : class =>
        await (await Module()).InvokeAsync<IJSObjectReference>("benchKeys", program);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (module is not { IsCompletedSuccessfully: true }) return;
        try
        {
            await (await module).DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The browser is gone and has taken the module with it.
        }
    }

    private Task<IJSObjectReference> Module() => module ??= Load("app").AsTask();

    private async Task Call(string function, params object?[] with) => await (await Module()).InvokeVoidAsync(function, with);
}
