using Rodwright.Joinery;
using Rodwright.Stairs.Jobs;
using Xunit;

namespace Rodwright.Workshop.Tests;

/// <summary>Samples set out.</summary>
internal static class Set
{
    public static TheoryData<string> Samples => [.. Testing.Samples.Names];

    public static Stair Out(Job job) => Stair.SetOut(job) is { Value: { } stair } ? stair : throw new InvalidOperationException("the job cannot be set out");

    public static Stair Sample(string name) => Out(Testing.Samples.Job(name));
}
