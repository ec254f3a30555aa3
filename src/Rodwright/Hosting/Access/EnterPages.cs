using System.Security.Claims;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Rodwright.Hosting.Access;

/// <summary>The page that asks for the access code, and the answer to it. The only pages served to who has not given it.</summary>
internal static class EnterPages
{
    /// <summary>Name of the cookie's scheme.</summary>
    public const string Scheme = CookieAuthenticationDefaults.AuthenticationScheme;

    private static readonly HashSet<string> Open = new(["/enter", "/css/enter.css", "/js/enter.js", "/fonts/DejaVuSansCondensed.ttf", "/fonts/DejaVuSansCondensed-Bold.ttf", "/favicon.svg"], StringComparer.Ordinal);

    /// <summary>Whether a path may be seen without the code.</summary>
    public static bool Serves(PathString path) => Open.Contains(path.Value ?? "");

    public static void Map(IEndpointRouteBuilder pages)
    {
        pages.MapGet("/enter", () => Page(""));
        pages.MapPost("/enter", Enter).RequireRateLimiting(Limits.Enter);
    }

    private static RazorComponentResult<EnterPage> Page(string words) => new(new { Words = words });

    private static async Task<IResult> Enter(HttpContext context, IAntiforgery antiforgery, AccessCode code)
    {
        if (!await antiforgery.IsRequestValidAsync(context)) return Again("The page was too old. Try once more.");
        var form = await context.Request.ReadFormAsync();
        if (!code.Is(form["code"])) return Again("That is not the code.");
        var person = new ClaimsPrincipal(new ClaimsIdentity([new(ClaimTypes.Name, "workshop")], Scheme));
        await context.SignInAsync(Scheme, person, new() { IsPersistent = true });
        return Results.Redirect("/");

        IResult Again(string words)
        {
            context.Response.StatusCode = StatusCodes.Status401Unauthorized;
            return Page(words);
        }
    }
}
