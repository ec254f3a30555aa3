using System.Net;

namespace Rodwright.Browser.Tests.Access;

/// <summary>On a server of its own: what it does shuts the door for a minute.</summary>
[Collection("workshop")]
public sealed class GuessingTests(Shared shared) : IClassFixture<Shared>
{
    [Fact]
    public async Task Ten_guesses_a_minute_and_no_more_are_listened_to_not_even_the_right_one()
    {
        using var client = shared.Stranger();
        for (var i = 0; i < 10; i++)
        {
            using var refused = await Shared.Enter(client, $"AAAAA-AAAA{i}");
            Assert.Equal(HttpStatusCode.Unauthorized, refused.StatusCode);
        }
        using var late = await Shared.Enter(client, shared.Code);
        Assert.Equal(HttpStatusCode.TooManyRequests, late.StatusCode);
    }
}
