namespace Rodwright.Hosting;

/// <summary>What /health says.</summary>
/// <param name="Version">Of the program.</param>
/// <param name="Store">"SQLite" or "PostgreSQL".</param>
/// <param name="State">"reached" or "not reached".</param>
/// <param name="Jobs">On the shelf, those put away not counted; null when the store is not reached.</param>
internal sealed record HealthReport(string Version, string Store, string State, int? Jobs);
