using System.Net;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting.StaticWebAssets;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Rodwright.Hosting.Access;
using Rodwright.Hosting.Files;
using Rodwright.Pages;
using Rodwright.Workshop.Sessions;
using Rodwright.Workshop.Shelf;

namespace Rodwright.Hosting;

/// <summary>The server of the workshop pages: store, gate, pages and files put together.</summary>
internal static class BenchServer
{
    // A job file is some kilobytes; nothing larger than this is read from anybody.
    private const long LargestBody = 2_000_000;

    /// <summary>A server ready to start.</summary>
    public static WebApplication Build(BenchOptions options, IJobShelf shelf, AccessCode? code, TimeProvider time)
    {
        var builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions { ApplicationName = "rodwright", ContentRootPath = AppContext.BaseDirectory });
        StaticWebAssetsLoader.UseStaticWebAssets(builder.Environment, builder.Configuration);
        builder.WebHost.ConfigureKestrel(k => Listen(k, options));
        builder.Logging.ClearProviders().AddJsonConsole(o => o.UseUtcTimestamp = true).SetMinimumLevel(LogLevel.Warning).AddFilter("Rodwright", LogLevel.Information);
        builder.Services.Configure<Microsoft.Extensions.Logging.Console.ConsoleLoggerOptions>(o => o.LogToStandardErrorThreshold = LogLevel.Trace);
        AddServices(builder.Services, options, shelf, code, time);
        var app = builder.Build();
        app.Use((context, next) => SecurityHeaders.Add(context, next));
        app.UseMiddleware<AccessGate>();
        app.UseRateLimiter();
        app.UseAntiforgery();
        app.MapStaticAssets();
        EnterPages.Map(app);
        JobFiles.Map(app);
        Health.Map(app);
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode(o => o.ContentSecurityFrameAncestorsPolicy = null).AddAdditionalAssemblies(typeof(Routes).Assembly);
        return app;
    }

    private static void Listen(KestrelServerOptions kestrel, BenchOptions options)
    {
        kestrel.AddServerHeader = false;
        kestrel.Limits.MaxRequestBodySize = LargestBody;
        kestrel.Listen(options.Address, options.Port);
    }

    private static void AddServices(IServiceCollection services, BenchOptions options, IJobShelf shelf, AccessCode? code, TimeProvider time)
    {
        services.AddRazorComponents().AddInteractiveServerComponents(o =>
        {
            // A tablet that sleeps through the tea break finds its bench as it was.
            o.DisconnectedCircuitRetentionPeriod = TimeSpan.FromMinutes(30);
            o.DisconnectedCircuitMaxRetained = 200;
        });
        services.AddRoutingCore();
        services.AddDataProtection().SetApplicationName("rodwright").PersistKeysToFileSystem(new DirectoryInfo(Path.Combine(options.Data, "keys")));
        services.AddAntiforgery(o => o.Cookie.Name = "rodwright-form");
        services.AddAuthentication(EnterPages.Scheme).AddCookie(o =>
        {
            o.Cookie.Name = "rodwright-bench";
            o.Cookie.HttpOnly = true;
            o.Cookie.SameSite = SameSiteMode.Strict;
            o.ExpireTimeSpan = TimeSpan.FromDays(30);
            o.SlidingExpiration = true;
        });
        services.AddRateLimiter(Limits.Add);
        services.AddSingleton(options);
        services.AddSingleton(new HostNames(options.Share));
        if (code is not null) services.AddSingleton(code);
        services.AddSingleton(time);
        services.AddSingleton(shelf);
        services.AddSingleton<JobNotices>();
        services.AddSingleton<StairCache>();
        services.AddSingleton<SheetCache>();
        services.AddSingleton<TimberCache>();
        services.AddBenchPages();
    }
}
