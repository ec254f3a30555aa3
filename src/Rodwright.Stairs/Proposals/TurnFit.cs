namespace Rodwright.Stairs.Proposals;

/// <summary>Where the risers of a turn stand for one going of the flights.</summary>
/// <param name="Offset">Of the first and of the last riser outside the newel's centre, mm.</param>
/// <param name="Fixed">Whether the job has to fix it, because the solver alone would stop short of it.</param>
/// <param name="Past">Whether the risers stand past the newel, in the strings.</param>
/// <param name="Measure">What its steps measure there.</param>
/// <param name="NarrowShort">By how much the narrow ends fall short, mm; 0 when they do not.</param>
/// <param name="GoingShort">By how much the goings do, mm.</param>
internal readonly record struct TurnFit(double Offset, bool Fixed, bool Past, TurnMeasure Measure, double NarrowShort, double GoingShort);
