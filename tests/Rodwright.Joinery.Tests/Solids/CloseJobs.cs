using System.Collections.Immutable;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Joinery.Tests.Solids;

/// <summary>Stairs in some part of which two things meet within a hair. Made-up jobs come on one like these once in some hundreds.</summary>
internal static class CloseJobs
{
    private static readonly Practice Bench = new() { Newel = 70, Housing = 10 };

    /// <summary>By what is close about them.</summary>
    public static ImmutableSortedDictionary<string, Job> All { get; } = new Dictionary<string, Job>
    {
        // Newels of 70 leave a tenon of 12 through the post; its peg, 12 across, stands at half of that and so just reaches the face.
        ["a peg hole that just reaches the newel's face"] = Job("scotland-private", Hand.Right, 8, new(TurnKind.Landing, 1, null, null, ""), 4, 237, 783.9, 3067.4, SideKind.Open,
            Bench with { WallString = new(27, 278), NewelString = new(40, 297), Tread = 25, Nosing = 18, RiserOnTread = true }),
        ["a corner housing that ends where its string does but for rounding"] = Job("scotland-private", Hand.Left, 0, new(TurnKind.Winders, 2, null, null, "equal-arcs"), 5, 278.8, 904.1, 1421.6, SideKind.Wall,
            Bench with { Newel = 137, WallString = new(40, 257), NewelString = new(32, 311), Tread = 28, Riser = 14, Nosing = 16, Margin = 45, RiserOnTread = true }),
        ["the same on the other hand"] = Job("usa-irc-2021", Hand.Right, 0, new(TurnKind.Winders, 2, null, null, "equal-goings"), 6, 233.4, 1006, 1608.3, SideKind.Wall,
            Bench with { Newel = 99, WallString = new(40, 305), NewelString = new(32, 273), Tread = 20, Riser = 14, Nosing = 16, Margin = 55, Cover = 8, RiserOnTread = true }),
        ["an easing cut off a third of a millimetre after it begins"] = Job("england-2013-private", Hand.Left, 3, new(TurnKind.Winders, 5, null, null, "equal-arcs"), 1, 278.8, 829.8, 1873, SideKind.Wall,
            Bench with { Newel = 139, WallString = new(27, 280), NewelString = new(32, 310), Nosing = 25, Margin = 45, Housing = 13, Cover = 12 }),
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    private static Job Job(string regulation, Hand hand, int before, Turn turn, int after, double going, double width, double height, SideKind inner, Practice practice) => new()
    {
        Title = "Close", Regulation = regulation, Going = going, Width = width, Practice = practice,
        Layout = new(hand, [new Flight(before), turn, new Flight(after)]),
        Sides = hand == Hand.Left ? new(inner, SideKind.Wall) : new(SideKind.Wall, inner),
        Survey = new() { FloorToFloor = [height] },
    };
}
