using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Rodwright.Pages.Shell;
using Rodwright.Testing;
using Rodwright.Workshop.Sessions;
using Rodwright.Workshop.Shelf;

namespace Rodwright.Pages.Tests;

/// <summary>A page with all that its parts ask for, over a shelf in memory.</summary>
internal static class Bench
{
    public static BunitContext Page(IJobShelf? shelf = null)
    {
        var page = new BunitContext();
        page.JSInterop.Mode = JSRuntimeMode.Loose;
        page.JSInterop.SetupModule("./js/app.js").Mode = JSRuntimeMode.Loose;
        page.Services.AddSingleton(shelf ?? new MemoryShelf(TimeProvider.System));
        page.Services.AddSingleton<JobNotices>();
        page.Services.AddSingleton<Person>();
        page.Services.AddSingleton<PageScript>();
        return page;
    }
}
