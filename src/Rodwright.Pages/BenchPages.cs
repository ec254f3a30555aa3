using Microsoft.Extensions.DependencyInjection;
using Rodwright.Pages.Shell;

namespace Rodwright.Pages;

/// <summary>What the pages need of whatever hosts them, beside a shelf, notices and the clock.</summary>
public static class BenchPages
{
    /// <summary>Adds the services of one person's page.</summary>
    public static IServiceCollection AddBenchPages(this IServiceCollection services) => services.AddScoped<Person>().AddScoped<PageScript>();
}
