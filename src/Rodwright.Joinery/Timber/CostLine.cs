namespace Rodwright.Joinery.Timber;

/// <summary>One line of a costing: never a number without how it came about.</summary>
/// <param name="Group">timber, sheets, fixings, work or total.</param>
/// <param name="What">What is paid for.</param>
/// <param name="Formula">How the amount is worked out, figures put in: "6 boards x £12.40".</param>
/// <param name="Amount">In the shop's currency.</param>
public sealed record CostLine(string Group, string What, string Formula, double Amount);
