using System.Globalization;
using Microsoft.VisualBasic.FileIO;
using Rodwright.Joinery;
using Rodwright.Joinery.Timber;
using Rodwright.Stairs.Shops;
using Rodwright.Testing;
using Rodwright.Tests.Commands;
using Xunit;

namespace Rodwright.Tests.Timber;

/// <summary>The workbook opened by an office program, Gnumeric, and written by it as plain tables again.</summary>
public sealed class OfficeProgramTests
{
    [Theory]
    [InlineData("left-kite-low")]
    [InlineData("balustrade")]
    [InlineData("feet-and-inches")]
    public void An_office_program_reads_every_table_of_the_workbook_as_it_was_listed(string name)
    {
        using var at = new CommandLine();
        Assert.Equal(Exit.Done, CommandLine.Run("timber", Samples.PathOf(name), "--out", at.PathOf("timber")).Exit);
        OtherProgram.Run("gnumeric", at.PathOf("timber"), "ssconvert", "-S", "timber.xlsx", "opened-%s.csv");
        foreach (var (sheet, file) in new[] { ("Cutting list", "cutting-list"), ("Board plan", "board-plan"), ("Fixings", "fixings"), ("Costing", "costing") })
        {
            var (opened, listed) = (Rows(at.PathOf($"timber/opened-{sheet}.csv")), Rows(at.PathOf($"timber/{file}.csv")));
            Assert.Equal(listed.Count, opened.Count);
            foreach (var (ours, theirs) in listed.Zip(opened))
            {
                Assert.Equal(ours.Length, theirs.Length);
                Assert.All(ours.Zip(theirs), cell => Assert.True(Same(cell.First, cell.Second), $"{file}: '{cell.First}' became '{cell.Second}'"));
            }
        }
    }

    [Theory]
    [InlineData("left-kite-low")]
    [InlineData("balustrade")]
    public void As_many_pieces_are_counted_in_the_workbook_as_the_stair_has(string name)
    {
        using var at = new CommandLine();
        Assert.Equal(Exit.Done, CommandLine.Run("timber", Samples.PathOf(name), "--out", at.PathOf("timber")).Exit);
        OtherProgram.Run("gnumeric", at.PathOf("timber"), "ssconvert", "-S", "timber.xlsx", "opened-%s.csv");
        var rows = Rows(at.PathOf("timber/opened-Cutting list.csv"));
        var number = Array.IndexOf(rows[0], "No.");
        var stair = Stair.SetOut(Samples.Job(name)).Value!;
        var list = CuttingList.Of(stair.Kit, UsualShop.For(stair.Job));
        Assert.Equal(list.Pieces.Length, rows.Skip(1).Where(r => r[0].Length > 0).Sum(r => int.Parse(r[number], CultureInfo.InvariantCulture)));
    }

    /// <summary>An amount is a number in the workbook, without the sign of its currency.</summary>
    private static bool Same(string ours, string theirs) => ours.Trim() == theirs.Trim()
        || double.TryParse(theirs, CultureInfo.InvariantCulture, out var b) && double.TryParse(ours.TrimStart('£', '$', '€'), CultureInfo.InvariantCulture, out var a) && Math.Abs(a - b) < 1e-9;

    private static List<string[]> Rows(string path)
    {
        using var parser = new TextFieldParser(path) { TextFieldType = FieldType.Delimited, Delimiters = [","], HasFieldsEnclosedInQuotes = true, TrimWhiteSpace = false };
        var rows = new List<string[]>();
        while (!parser.EndOfData) rows.Add(parser.ReadFields()!);
        return rows;
    }
}
