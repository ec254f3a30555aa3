using System.Net;
using Microsoft.AspNetCore.Authentication;

namespace Rodwright.Hosting.Access;

/// <summary>
/// Lets this machine in, and of the network only who has given the code: everybody else sees the page that asks for it, and nothing more. Also turns away
/// requests that another site has made a browser send.
/// </summary>
internal sealed class AccessGate(RequestDelegate next, HostNames names)
{
    public async Task InvokeAsync(HttpContext context)
    {
        var request = context.Request;
        // A name that is not ours leads here only when somebody made it (DNS rebinding): no page of theirs may read ours.
        if (!names.IsOurs(request.Host.Host)) { await Refuse(context, StatusCodes.Status421MisdirectedRequest, "This machine does not answer to that name."); return; }
        if (!IsSameOrigin(request)) { await Refuse(context, StatusCodes.Status403Forbidden, "The request comes from another site."); return; }
        if (IsThisMachine(context) || EnterPages.Serves(request.Path)) { await next(context); return; }
        var person = await context.AuthenticateAsync(EnterPages.Scheme);
        if (person.Succeeded)
        {
            context.User = person.Principal;
            await next(context);
            return;
        }
        if (HttpMethods.IsGet(request.Method) && request.Headers.Accept.Any(a => a?.Contains("text/html", StringComparison.OrdinalIgnoreCase) == true)) context.Response.Redirect("/enter");
        else await Refuse(context, StatusCodes.Status401Unauthorized, "The access code is needed.");
    }

    private static bool IsThisMachine(HttpContext context) =>
        context.Connection.RemoteIpAddress is { } address && (address.Equals(IPAddress.Loopback) || address.Equals(IPAddress.IPv6Loopback));

    /// <summary>Browsers say which site a request that changes something, or opens a socket, comes from.</summary>
    private static bool IsSameOrigin(HttpRequest request)
    {
        var origin = request.Headers.Origin.ToString();
        if (origin.Length == 0) return true;
        return Uri.TryCreate(origin, UriKind.Absolute, out var from) && string.Equals(from.Authority, request.Host.Value, StringComparison.OrdinalIgnoreCase);
    }

    private static Task Refuse(HttpContext context, int status, string words)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync(words + "\n");
    }
}
