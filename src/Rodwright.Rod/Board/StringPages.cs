namespace Rodwright.Rod.Board;

/// <summary>What drawing a string at its true size takes.</summary>
/// <param name="PartId">The string.</param>
/// <param name="Mark">Its mark.</param>
/// <param name="Pages">How many pages, the string lying along the paper; strips of a roll count one each.</param>
public sealed record StringPages(string PartId, string Mark, int Pages);
