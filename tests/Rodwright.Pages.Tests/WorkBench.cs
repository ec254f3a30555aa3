using Bunit;
using Microsoft.AspNetCore.Components;
using Rodwright.Pages.Shell;
using Rodwright.Pages.Work;
using Rodwright.Testing;
using Rodwright.Workshop.Sessions;
using Rodwright.Workshop.Shelf;

namespace Rodwright.Pages.Tests;

/// <summary>A view of a job made of a sample, drawn again whenever the job's page would be.</summary>
internal sealed class WorkBench : IAsyncDisposable
{
    private WorkBench(BunitContext page, MemoryShelf shelf, WorkModel work) => (Page, Shelf, Work) = (page, shelf, work);

    public BunitContext Page { get; }

    public MemoryShelf Shelf { get; }

    public WorkModel Work { get; }

    public static async Task<WorkBench> Of(string sample)
    {
        var shelf = new MemoryShelf(TimeProvider.System);
        var page = Bench.Page(shelf);
        var card = await shelf.Add(ShelfDrafts.Made(Samples.Job(sample), "made", "Ada"));
        return new(page, shelf, new((await JobSession.Open(shelf, new(), card.Id, () => "Ada"))!, new PageScript(page.JSInterop.JSRuntime)));
    }

    public IRenderedComponent<T> Show<T>() where T : ComponentBase
    {
        var view = Page.Render<T>(p => p.AddCascadingValue(Work));
        Work.Changed += () => view.InvokeAsync(() => view.Render());
        return view;
    }

    public async ValueTask DisposeAsync()
    {
        Work.Dispose();
        await Page.DisposeAsync();
    }
}
