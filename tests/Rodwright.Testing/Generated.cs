using System.Collections.Immutable;
using CsCheck;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Testing;

/// <summary>Jobs made up at random, all of which the reader accepts.</summary>
public static class Generated
{
    private static readonly Gen<Hand> Hands = Gen.OneOf(Hand.Left, Hand.Right);

    /// <summary>Whole tenths of a millimetre: lengths as somebody would write them.</summary>
    private static Gen<double> Lengths(double least, double most) => Gen.Int[(int)(least * 10), (int)(most * 10)].Select(tenths => tenths / 10.0);

    private static readonly Gen<ImmutableArray<LayoutItem>> Straight =
        Gen.Int[2, 16].Select(n => ImmutableArray.Create<LayoutItem>(new Flight(n)));

    private static readonly Gen<Turn> Winders =
        from steps in Gen.Int[2, 6]
        from method in Gen.OneOf("equal-goings", "equal-goings", "equal-goings", "equal-arcs", "radiating")
        from isFixed in Gen.Int[0, 4]
        from e in Gen.Int[0, 20]
        select new Turn(TurnKind.Winders, steps, isFixed == 0 ? e : null, isFixed == 0 ? e : null, method);

    private static readonly Gen<Turn> Landing = Gen.Const(new Turn(TurnKind.Landing, 1, null, null, ""));

    private static Gen<ImmutableArray<LayoutItem>> Turned(Gen<Turn> turns) =>
        from turn in turns
        from before in Gen.Int[0, 9]
        from after in Gen.Int[before == 0 ? 1 : 0, 9]
        select ImmutableArray.Create<LayoutItem>(new Flight(before), turn, new Flight(after));

    private static readonly Gen<Turn> HalfWinders =
        from steps in Gen.Int[4, 8]
        from method in Gen.OneOf("equal-goings", "equal-arcs")
        select new Turn(TurnKind.Winders, steps, null, null, method) { Quarters = 2 };

    private static readonly Gen<Turn> HalfLanding =
        from well in Gen.OneOf<double?>(null, null, 200, 300)
        select new Turn(TurnKind.Landing, 1, null, null, "") { Quarters = 2, Well = well };

    private static readonly Gen<Turn> BalancedWinders =
        from steps in Gen.Int[3, 4]
        from method in Gen.OneOf("balanced-progression", "balanced-harrow", "balanced-angle", "balanced-scale", "balanced-equal")
        from before in Gen.Int[0, 3]
        from after in Gen.Int[before == 0 ? 1 : 0, 3]
        select new Turn(TurnKind.Winders, steps, null, null, method) { SharedBefore = before, SharedAfter = after };

    /// <summary>A single half turn, or a quarter turn whose taper the flights share.</summary>
    private static readonly Gen<ImmutableArray<LayoutItem>> HalfOrShared =
        from turn in Gen.OneOf(HalfWinders, HalfLanding, BalancedWinders)
        from before in Gen.Int[3, 7]
        from after in Gen.Int[3, 7]
        select ImmutableArray.Create<LayoutItem>(new Flight(before), turn, new Flight(after));

    /// <summary>Two or three quarter turns, each to its own hand, with flights between.</summary>
    private static readonly Gen<ImmutableArray<LayoutItem>> SeveralTurns =
        from count in Gen.Int[2, 3]
        from turns in Gen.OneOf(Winders.Where(t => t.Tapered <= 4 && t.FirstRiser is null), Landing).Array[count]
        from hands in Gen.OneOf<Hand?>(null, null, Hand.Left, Hand.Right).Array[count]
        from goings in Gen.Int[1, 4].Array[count + 1]
        select Enumerable.Range(0, count).SelectMany(i => new LayoutItem[] { new Flight(goings[i]), turns[i] with { Hand = hands[i] } }).Append(new Flight(goings[count])).ToImmutableArray();

    private static readonly Gen<Practice> Practices =
        from newel in Gen.Int[70, 140]
        from wall in Gen.OneOf(27.0, 32, 35, 40)
        from outer in Gen.OneOf(28.0, 32, 35, 40)
        from wallWidth in Gen.Int[255, 320]
        from outerWidth in Gen.Int[255, 320]
        from tread in Gen.OneOf(20.0, 22, 25, 28)
        from riser in Gen.OneOf(9.0, 12, 14)
        from nosing in Gen.OneOf(16.0, 18, 20, 22, 25)
        from margin in Gen.OneOf(45.0, 50, 55)
        from housing in Gen.OneOf(10.0, 12, 13)
        from cover in Gen.OneOf(8.0, 10, 12)
        from onTread in Gen.Bool
        select new Practice
        {
            Newel = newel, WallString = new(wall, wallWidth), NewelString = new(outer, outerWidth), Tread = tread, Riser = riser,
            Nosing = nosing, Margin = margin, Housing = housing, Cover = cover, RiserOnTread = onTread,
        };

    /// <summary>Straight flights, tapered turns and landings, either hand, every allowed pair of sides, in common sizes.</summary>
    public static Gen<Job> Jobs { get; } = Any(Gen.OneOf<ImmutableArray<LayoutItem>>(Straight, Turned(Winders), Turned(Winders), Turned(Landing)));

    /// <summary>Stairs of several turns, half turns and balanced turns.</summary>
    public static Gen<Job> Courses { get; } = Any(Gen.OneOf(SeveralTurns, SeveralTurns, HalfOrShared));

    /// <summary>Of every layout: three in five as <see cref="Jobs"/>, the rest as <see cref="Courses"/>.</summary>
    public static Gen<Job> All { get; } = Gen.OneOf(Jobs, Jobs, Jobs, Courses, Courses);

    /// <summary>Only jobs with tapered steps.</summary>
    public static Gen<Job> Tapered { get; } = Any(Turned(Winders));

    /// <summary>Only straight flights.</summary>
    public static Gen<Job> Flights { get; } = Any(Straight);

    /// <summary>Only landings.</summary>
    public static Gen<Job> Landings { get; } = Any(Turned(Landing));

    private static Gen<Job> Any(Gen<ImmutableArray<LayoutItem>> sequences) =>
        from sequence in sequences
        from hand in Hands
        from innerOpen in Gen.Int[0, 3]
        from outerOpen in Gen.Bool
        from width in Lengths(700, 1200)
        from going in Lengths(215, 280)
        from rise in Lengths(150, 220)
        from regulation in Gen.OneOf("england-2013-private", "scotland-private", "usa-irc-2021", "bs-5395-1-2010")
        from practice in Practices
        let layout = new Layout(hand, sequence)
        let inner = innerOpen > 0 ? SideKind.Open : SideKind.Wall
        // The outside of a turn is walled.
        let outer = layout.Turn is null && outerOpen ? SideKind.Open : SideKind.Wall
        select new Job
        {
            Title = "Made up", Regulation = regulation, Going = going, Width = width, Layout = layout, Practice = practice,
            Sides = hand == Hand.Left ? new(inner, outer) : new(outer, inner),
            Survey = new() { FloorToFloor = [Math.Round(rise * layout.Risers, 1)] },
        };
}
