using CsCheck;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Testing;

/// <summary>Rooms made up at random round made-up jobs.</summary>
public static class Rooms
{
    private static Gen<double> Mm(int least, int most) => Gen.Int[least * 10, most * 10].Select(t => t / 10.0);

    private static readonly Gen<Well> Rectangles =
        from length in Mm(900, 3600)
        from width in Mm(700, 2400)
        from trimmer in Mm(180, 340)
        select new Well { Length = Readings.Of(length), Width = Readings.Of(width), Trimmer = Readings.Of(trimmer) };

    private static readonly Gen<Well> Shapes =
        from a in Mm(-200, 900)
        from b in Mm(2200, 4200)
        from c in Mm(500, 1200)
        from d in Mm(1300, 2600)
        from notch in Mm(1000, 2000)
        from skew in Mm(0, 180)
        from trimmer in Mm(180, 340)
        select new Well { Corners = [new(a, -skew), new(b, skew), new(b - skew, d), new(notch, d + skew / 2), new(notch + skew / 3, c), new(a + skew, c)], Trimmer = Readings.Of(trimmer) };

    private static readonly Gen<SlopingCeiling> Slopes =
        from storey in Gen.OneOf(Storey.Upper, Storey.Lower)
        from along in Mm(-500, 4000)
        from off in Mm(-300, 2500)
        from turn in Mm(0, 360)
        from height in Mm(1400, 2600)
        from drop in Mm(-900, 900)
        let second = new Point2(along, off) + 1200 * Vector2.At(Angle.FromDegrees(turn).Radians)
        select new SlopingCeiling
        {
            Storey = storey, First = new() { Along = along, Out = off, Height = Readings.Of(storey == Storey.Lower ? height + 2400 : height) },
            Second = new() { Along = second.X, Out = second.Y, Height = Readings.Of(Math.Max(0, height + drop + (storey == Storey.Lower ? 2400 : 0))) },
        };

    private static readonly Gen<ListOf<WallRun>> Walls =
        from lengths in Gen.Select(Mm(2500, 5200), Mm(1500, 4000), Mm(2500, 5200))
        from corners in Gen.Select(Mm(86, 94), Mm(86, 94))
        from lean in Mm(-12, 12)
        select (ListOf<WallRun>)
        [
            new WallRun { Length = Readings.Of(lengths.Item1), Corner = new() { Angle = corners.Item1 }, Plumb = new(lean, 2000) },
            new WallRun { Length = Readings.Of(lengths.Item2), Corner = new() { Angle = corners.Item2 }, Plumb = new(-lean / 2, 1500) },
            new WallRun { Length = Readings.Of(lengths.Item3) },
        ];

    /// <summary>Made-up jobs in made-up rooms: a well, up to two slopes, perhaps walls.</summary>
    public static Gen<Job> Jobs { get; } = Round(Generated.Jobs);

    /// <summary>The same round jobs of every layout.</summary>
    public static Gen<Job> All { get; } = Round(Generated.All);

    private static Gen<Job> Round(Gen<Job> jobs) =>
        from job in jobs
        from well in Gen.OneOf(Rectangles, Shapes)
        from slopes in Slopes.List[0, 2]
        from walls in Gen.OneOf(Gen.Const<ListOf<WallRun>>([]), Walls)
        select job with { Survey = job.Survey with { Well = well, Ceilings = [.. slopes], Walls = walls } };
}
