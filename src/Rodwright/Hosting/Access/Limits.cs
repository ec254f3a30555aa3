using System.Threading.RateLimiting;
using Microsoft.AspNetCore.RateLimiting;

namespace Rodwright.Hosting.Access;

/// <summary>How often things may be tried.</summary>
internal static class Limits
{
    /// <summary>Name of the limit on tries of the access code.</summary>
    public const string Enter = "enter";

    public static void Add(RateLimiterOptions options)
    {
        options.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        // One bucket an address: a learner who mistypes does not lock the shop out.
        options.AddPolicy(Enter, context => RateLimitPartition.GetFixedWindowLimiter(
            context.Connection.RemoteIpAddress?.ToString() ?? "", _ => new() { PermitLimit = 10, Window = TimeSpan.FromMinutes(1), QueueLimit = 0 }));
    }
}
