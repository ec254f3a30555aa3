using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Joinery.Proof;

/// <summary>Whether the kit goes together, joint by joint and piece by piece (setting-out.md 10).</summary>
/// <param name="Joints">Every joint, in the kit's order.</param>
/// <param name="Clashes">Parts that would fill the same place outside their joints; empty in a stair that goes together.</param>
/// <param name="NewelCuts">Cuts of one newel that meet and should not; empty likewise.</param>
/// <param name="Blanks">Each part in its blank.</param>
/// <param name="Survey">Whether the stair fits what was measured.</param>
public sealed record ProofReport(
    ImmutableArray<JointProof> Joints, ImmutableArray<Clash> Clashes, ImmutableArray<Clash> NewelCuts, ImmutableArray<BlankProof> Blanks, SurveyProof Survey)
{
    /// <summary>Whether everything holds.</summary>
    public bool Holds => Joints.All(j => j.Holds) && Clashes.IsEmpty && NewelCuts.IsEmpty && Blanks.All(b => b.Holds) && Survey.Holds;

    /// <summary>Largest gap or overlap in any joint's face plane, mm.</summary>
    public double WorstGap => Joints.IsEmpty ? 0 : Joints.Max(j => j.Gap);
}

/// <summary>One joint, both its parts in the world.</summary>
/// <param name="Id">Id of the joint.</param>
/// <param name="Kind">How the parts meet, in words.</param>
/// <param name="Male">The part that enters.</param>
/// <param name="Female">The part that takes it.</param>
/// <param name="Gap">Largest distance between the two outlines in the face plane, mm.</param>
/// <param name="Wanted">How far the male part should enter, mm.</param>
/// <param name="Reached">How far it does, mm.</param>
/// <param name="Stated">Intended differences, proved as stated: wedge space, draw, clearance, eased ends.</param>
/// <param name="Holds">Whether the joint closes within 0.01 mm, stated differences apart.</param>
public sealed record JointProof(string Id, string Kind, string Male, string Female, double Gap, double Wanted, double Reached, string Stated, bool Holds);

/// <summary>Two things in one place.</summary>
/// <param name="First">A part, or a cut of a newel.</param>
/// <param name="Second">The other.</param>
/// <param name="Where">Where, in words.</param>
/// <param name="Size">How much of it, square mm, or mm where it is no area.</param>
/// <param name="IsArea">Whether it is an area.</param>
public sealed record Clash(string First, string Second, string Where, double Size, bool IsArea)
{
    /// <summary>Where and how much, told in the unit of a job.</summary>
    public string Words(Units units) => !IsArea ? $"{Where} by {units.With(Size)}"
        : units.IsInches ? $"{Where}, {Number.Print(Size / (Units.Inch * Units.Inch), 3)} sq in" : $"{Where}, {Number.Print(Size, 2)} square mm";
}

/// <summary>A part in its blank.</summary>
/// <param name="Part">Id of the part.</param>
/// <param name="Outside">How far it sticks out of board and jointed-up pieces, mm.</param>
/// <param name="Holds">Whether it does not.</param>
public sealed record BlankProof(string Part, double Outside, bool Holds);

/// <summary>The stair against the survey.</summary>
/// <param name="Height">Measured height, mm.</param>
/// <param name="Risers">Sum of the rises, mm.</param>
/// <param name="Holds">Whether they are one length.</param>
public sealed record SurveyProof(double Height, double Risers, bool Holds);
