using Rodwright.Hosting.Access;

namespace Rodwright.Hosting;

/// <summary>Files that show how to come in from the network: the QR code for the page on sharing. Only this machine and those let in see them.</summary>
internal static class SharePage
{
    public static void Map(IEndpointRouteBuilder pages) => pages.MapGet("/share/code.svg", (HttpContext context, IServiceProvider services) =>
        services.GetService<AccessCode>() is { } code && ShareWords.Addresses(context.Connection.LocalPort) is [var address, ..]
            ? Results.Text(ShareWords.Svg(ShareWords.Link(address, code)), "image/svg+xml")
            : Results.NotFound());
}
