using Rodwright.Geometry;

namespace Rodwright.Stairs.Jobs;

/// <summary>A job file before a layout has been chosen: survey, regulation, practice and wishes. Made by <see cref="BriefFile"/>.</summary>
public sealed record Brief
{
    /// <summary>What the job is called.</summary>
    public required string Title { get; init; }

    /// <summary>Id of the regulation table.</summary>
    public required string Regulation { get; init; }

    /// <summary>The unit its lengths are typed and read in.</summary>
    public Units Units { get; init; } = Units.Millimetres;

    /// <summary>What was measured.</summary>
    public required Survey Survey { get; init; }

    /// <summary>The shop's sizes and habits; its newel is the one wished for first.</summary>
    public Practice Practice { get; init; } = new();

    /// <summary>1 for a stair, less for a teaching model.</summary>
    public double ModelScale { get; init; } = 1;

    /// <summary>The width over the strings the file fixes, mm; null when it is free.</summary>
    public double? Width { get; init; }

    /// <summary>Sides the file fixes; null for the usual: the inside of the turn open, the other side walled.</summary>
    public Sides? Sides { get; init; }

    /// <summary>What open sides end in.</summary>
    public Ends Ends { get; init; } = Ends.Usual;

    /// <summary>The bottom step, as it is wanted whatever the layout.</summary>
    public BottomStep BottomStep { get; init; } = new();

    /// <summary>What is wished for; null for nothing in particular.</summary>
    public Wishes? Wishes { get; init; }

    /// <summary>The brief of a job that has a layout already: what would have to be chosen again.</summary>
    public static Brief Of(Job job) => new()
    {
        Title = job.Title, Units = job.Units, Regulation = job.Regulation, Survey = job.Survey, Practice = job.Practice, ModelScale = job.ModelScale, Width = job.Width,
        Sides = job.Sides == Jobs.Sides.For(job.Layout.Hand) ? null : job.Sides, Wishes = job.Wishes, BottomStep = job.BottomStep, Ends = job.Ends,
    };

    /// <summary>The job of one layout.</summary>
    /// <param name="layout">Hand, flights and turns.</param>
    /// <param name="going">Going of the straight steps, mm.</param>
    /// <param name="width">Width over the strings, mm.</param>
    /// <param name="newel">Side of the newels, mm.</param>
    public Job With(Layout layout, double going, double width, double newel) => new()
    {
        Title = Title, Units = Units, Regulation = Regulation, Survey = Survey, Layout = layout, Sides = Sides ?? Jobs.Sides.For(layout.Hand), Going = going, Width = width,
        ModelScale = ModelScale, Practice = Practice with { Newel = newel }, Wishes = Wishes, BottomStep = BottomStep, Ends = Ends,
    };
}
