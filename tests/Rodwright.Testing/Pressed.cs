using CsCheck;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Testing;

/// <summary>Jobs that pinch somewhere: a few sizes of each taken from far outside common practice, or a turn of another kind, or a height that does not suit the risers.</summary>
public static class Pressed
{
    private static readonly Func<Practice, double, Practice>[] Sizes =
    [
        (p, r) => p with { Newel = Whole(55, 150, r) },
        (p, r) => p with { WallString = p.WallString with { Width = Whole(180, 320, r) } },
        (p, r) => p with { NewelString = p.NewelString with { Width = Whole(180, 320, r) } },
        (p, r) => p with { NewelString = p.NewelString with { Thickness = Whole(20, 55, r) } },
        (p, r) => p with { WallString = p.WallString with { Thickness = Whole(20, 55, r) } },
        (p, r) => p with { Riser = Whole(4, 20, r) },
        (p, r) => p with { Tread = Whole(15, 45, r) },
        (p, r) => p with { Nosing = Whole(0, 45, r) },
        (p, r) => p with { Margin = Whole(15, 90, r) },
        (p, r) => p with { Housing = Whole(6, 20, r) },
        (p, r) => p with { NewelHousing = Whole(6, 30, r) },
        (p, r) => p with { Skirting = Whole(0, 300, r) },
        (p, r) => p with { HeadLevel = Whole(0, 400, r) },
        (p, r) => p with { RiserEnd = Whole(1, 10, r) },
        (p, r) => p with { Packing = Whole(0, 30, r) },
        (p, r) => p with { NosingCover = Whole(10, 60, r) },
        (p, r) => p with { Tenon = p.Tenon with { Peg = Whole(6, 22, r) } },
        (p, r) => p with { Tenon = p.Tenon with { Least = Whole(10, 60, r) } },
    ];

    /// <summary>Such jobs; not all of them can be set out.</summary>
    public static Gen<Job> Jobs { get; } =
        from job in Generated.Jobs
        from first in Gen.Int[0, Sizes.Length - 1]
        from second in Gen.Int[0, 2 * Sizes.Length]
        from a in Gen.Double[0, 1]
        from b in Gen.Double[0, 1]
        from going in Gen.Int[180, 330]
        from width in Gen.Int[560, 1400]
        from height in Gen.Double[0.7, 1.3]
        from which in Gen.Int[0, 5]
        let practice = second < Sizes.Length ? Sizes[second](Sizes[first](job.Practice, a), b) : Sizes[first](job.Practice, a)
        select which switch
        {
            0 => job with { Practice = practice, Going = going },
            1 => job with { Practice = practice, Width = width },
            2 => job with { Going = going, Survey = new() { FloorToFloor = [Math.Round(job.Survey.Height * height)] } },
            3 => job with { Width = width, Going = going },
            _ => job with { Practice = practice },
        };

    private static readonly Func<Job, double, Job>[] Slips =
    [
        (j, r) => j with { Practice = j.Practice with { Housing = Whole(20, 40, r) } },
        (j, r) => j with { Practice = j.Practice with { Margin = Whole(150, 200, r), WallString = j.Practice.WallString with { Width = 140 }, NewelString = j.Practice.NewelString with { Width = 140 } } },
        (j, r) => j with { Practice = j.Practice with { Corner = Whole(20, 40, r) } },
        (j, r) => j with { Practice = j.Practice with { Newel = Whole(15, 60, r) } },
        (j, r) => j with { Practice = j.Practice with { NewelHousing = Whole(20, 60, r) } },
        (j, r) => j with { Practice = j.Practice with { Cover = Whole(30, 60, r) } },
        (j, r) => j with { Practice = j.Practice with { Tread = 75 }, Survey = new() { FloorToFloor = [Math.Round(j.Layout.Risers * Whole(60, 160, r))] } },
        (j, r) => j with { Practice = j.Practice with { Nosing = 60, Riser = 50 }, Going = Whole(40, 240, r) },
        (j, r) => j with { Practice = j.Practice with { TreadWedge = new(Whole(150, 300, r), 4, 14, 25) } },
        (j, r) => j with { Practice = j.Practice with { RiserWedge = new(Whole(100, 300, r), 4, 14, 25) } },
        (j, r) => j with { Practice = j.Practice with { Tenon = j.Practice.Tenon with { Part = Whole(60, 90, r) / 100, MorticeClearance = 10 } } },
        (j, r) => j with { Practice = j.Practice with { Tenon = j.Practice.Tenon with { Thickness = Whole(20, 60, r) } } },
        (j, r) => j with { Practice = j.Practice with { Tenon = j.Practice.Tenon with { Peg = Whole(15, 25, r), PegBack = 10 } } },
        (j, r) => j with { Practice = j.Practice with { Tenon = j.Practice.Tenon with { Draw = 6, Peg = Whole(6, 14, r) } } },
        (j, r) => j with { Practice = j.Practice with { Tenon = j.Practice.Tenon with { Haunch = Whole(30, 60, r) } } },
        (j, r) => j with { Width = Whole(150, 300, r) },
        (j, r) => j with { Survey = new() { FloorToFloor = [Math.Round(j.Survey.Height * (1 + 2 * r))] } },
        (j, _) => j with { Sides = new(SideKind.Open, SideKind.Open) },
        (j, r) => j with { Layout = j.Layout with { Sequence = [.. j.Layout.Sequence.Select(i => i is Turn t ? t with { FirstRiser = Whole(30, 80, r) } : i)] } },
    ];

    /// <summary>Jobs with one slip of the pen in them that the reader, more often than not, refuses.</summary>
    public static Gen<Job> Impossible { get; } =
        from job in Generated.Jobs
        from slip in Gen.Int[0, Slips.Length - 1]
        from r in Gen.Double[0, 1]
        select Slips[slip](job, r);

    private static double Whole(double least, double most, double part) => Math.Round(least + part * (most - least));
}
