namespace Rodwright.Joinery.Joints;

/// <summary>A joint between two parts: which cut of the female part takes which end of the male one.</summary>
/// <param name="Id">Stable id, male to female.</param>
/// <param name="Kind">How they meet.</param>
/// <param name="Male">Id of the part that enters.</param>
/// <param name="Female">Id of the part that takes it.</param>
/// <param name="Depth">How far the male part enters, mm; 0 for faces that only meet.</param>
public sealed record Joint(string Id, JointKind Kind, string Male, string Female, double Depth);
