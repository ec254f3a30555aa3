namespace Rodwright.PagesBench.Speed;

/// <summary>One change of a number, ms.</summary>
/// <param name="Out">From the field's change to what goes out to the server.</param>
/// <param name="Server">Until the answer has come: what the server does, and the way there and back.</param>
/// <param name="Apply">Until the page has taken the new drawing in.</param>
/// <param name="Paint">Until it is painted.</param>
/// <param name="Whole">All of it.</param>
/// <param name="Size">Of the answer, bytes.</param>
internal sealed record ChangeTimes(double Out, double Server, double Apply, double Paint, double Whole, double Size);
