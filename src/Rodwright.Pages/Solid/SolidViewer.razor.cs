using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Rodwright.Pages.Solid;

/// <summary>
/// The stair in the round: whole in its room, taken apart, one piece in the hand, cut through. It draws the scene file at <see cref="Source"/>, and tells which thing was pressed.
/// How it is looked at (turned, apart, cut) is its own affair and is kept when the stair changes.
/// </summary>
public sealed partial class SolidViewer : IAsyncDisposable
{
    private const string Keys =
        "Arrow keys turn the stair, with Shift they move it; plus and minus come nearer and go away, Home shows all of it. F front, S side, P plan, T three-quarter view. "
        + "E takes it apart and puts it together, A takes the picked piece alone, R shows or hides the room, H marks where the headroom is least, Z, X and Y cut it level or upright, W shows it whole again.";

    private readonly string id = Guid.NewGuid().ToString("N");
    private ElementReference host;
    private IJSObjectReference? module;
    private IJSObjectReference? view;
    private DotNetObjectReference<SolidViewer>? self;
    private Shown shown = new("", "", "", null, null);
    private bool disposed;

    /// <summary>Address of the scene file (StairScene). When it changes the new stair is shown from where the eye is.</summary>
    [Parameter, EditorRequired]
    public string Source { get; set; } = "";

    /// <summary>The word of the unit lengths are told in.</summary>
    [Parameter]
    public string Units { get; set; } = "mm";

    /// <summary>Address of the model to take away, where that is not <see cref="Source"/>.</summary>
    [Parameter]
    public string? Download { get; set; }

    /// <summary>Ids of the things picked: parts and cuts light up, others are passed over. "This piece alone" takes the last.</summary>
    [Parameter]
    public IReadOnlyCollection<string> Picked { get; set; } = [];

    /// <summary>Ids of parts at which something is wrong.</summary>
    [Parameter]
    public IReadOnlyCollection<string> Wrong { get; set; } = [];

    /// <summary>The volume of a cut to lay over the stair, as CutShapes writes it; null for none.</summary>
    [Parameter]
    public string? Cut { get; set; }

    /// <summary>Where the headroom is least, as LeastHeadroom writes it; null where nothing over the stair was measured.</summary>
    [Parameter]
    public string? Least { get; set; }

    /// <summary>A thing was pressed: the id of a cut where the face pressed belongs to one, else of the part; empty where there is nothing.</summary>
    [Parameter]
    public EventCallback<string> OnPick { get; set; }

    [Inject]
    private IJSRuntime Browser { get; set; } = null!;

    private string LeastWords => Least is null ? "" : System.Text.Json.Nodes.JsonNode.Parse(Least)!["words"]!.GetValue<string>();

    private string KeysId => $"solid-keys-{id}";

    /// <summary>Called by the view.</summary>
    /// <param name="id">As <see cref="OnPick"/> gives it.</param>
    [JSInvokable("Picked")]
    public Task PickedInView(string id) => InvokeAsync(() => OnPick.InvokeAsync(id));

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        disposed = true;
        try
        {
            if (view is not null)
            {
                await view.InvokeVoidAsync("dispose");
                await view.DisposeAsync();
            }
            if (module is not null) await module.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and the view with it.
        }
        self?.Dispose();
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        try
        {
            if (firstRender)
            {
                self = DotNetObjectReference.Create(this);
                module = await Browser.InvokeAsync<IJSObjectReference>("import", "./js/solid.js");
                if (!disposed) view = await module.InvokeAsync<IJSObjectReference>("attach", host, self);
            }
            if (view is not null && !disposed) await Send(view);
        }
        catch (JSDisconnectedException)
        {
            // The page went away while it was being shown.
        }
    }

    /// <summary>Tells the view what has changed; the stair last, because it takes longest.</summary>
    private async Task Send(IJSObjectReference to)
    {
        var (now, before) = (new Shown(Source, string.Join('\n', Picked), string.Join('\n', Wrong), Cut, Least), shown);
        shown = now;
        if (now.Picked != before.Picked || now.Wrong != before.Wrong) await to.InvokeVoidAsync("pick", Picked, Wrong);
        if (now.Cut != before.Cut) await to.InvokeVoidAsync("cut", Cut);
        if (now.Least != before.Least) await to.InvokeVoidAsync("least", Least);
        if (now.Source != before.Source) await to.InvokeVoidAsync("show", Source);
    }

    /// <summary>What the view was told last.</summary>
    private sealed record Shown(string Source, string Picked, string Wrong, string? Cut, string? Least);
}
