using CsCheck;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Testing;

/// <summary>Surveys for which a stair is to be chosen.</summary>
public static class Briefs
{
    /// <summary>A brief in a room of two walls with a rectangular well.</summary>
    public static Brief Of(double height, double along, double @out, double wellLength, double wellWidth, double trimmer = 235, string regulation = "england-2013-private") => new()
    {
        Title = "Made up", Regulation = regulation,
        Survey = new()
        {
            FloorToFloor = [height],
            Walls = [new WallRun { Length = Readings.Of(along) }, new WallRun { Length = Readings.Of(@out) }],
            Well = new() { Length = Readings.Of(wellLength), Width = Readings.Of(wellWidth), Trimmer = Readings.Of(trimmer) },
        },
    };

    /// <summary>Rooms from too small to generous, under three regulations.</summary>
    public static Gen<Brief> Any { get; } =
        from height in Gen.Int[2350, 2950]
        from along in Gen.Int[2300, 4400]
        from @out in Gen.Int[1500, 3200]
        from wellLength in Gen.Int[1900, 3300]
        from wellWidth in Gen.Int[900, 2600]
        from trimmer in Gen.Int[180, 300]
        from regulation in Gen.OneOf("england-2013-private", "england-2013-private", "scotland-private", "bs-5395-1-2010")
        select Of(height, along, @out, wellLength, wellWidth, trimmer, regulation);
}
