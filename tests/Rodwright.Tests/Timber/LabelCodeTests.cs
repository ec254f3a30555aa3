using System.Globalization;
using Rodwright.Joinery;
using Rodwright.Joinery.Timber;
using Rodwright.Stairs.Shops;
using Rodwright.Testing;
using Rodwright.Tests.Commands;
using UglyToad.PdfPig;
using Xunit;

namespace Rodwright.Tests.Timber;

/// <summary>Labels as they come out of a printer: drawn at 300 dots to the inch in black and white, as a printer prints by Poppler, their codes read by ZBar.</summary>
public sealed class LabelCodeTests
{
    [Theory]
    [InlineData("left-kite-low", "a4-24")]
    [InlineData("balustrade", "a4-24")]
    [InlineData("feet-and-inches", "letter-30")]
    public void Every_label_leads_to_a_sheet_that_speaks_of_its_piece(string name, string stock)
    {
        using var at = new CommandLine();
        Assert.Equal(Exit.Done, CommandLine.Run("timber", Samples.PathOf(name), "--out", at.PathOf("timber"), "--labels", stock, "--link", "../pack/").Exit);
        Assert.Equal(Exit.Done, CommandLine.Run("pack", Samples.PathOf(name), "--out", at.PathOf("pack")).Exit);
        OtherProgram.Run("poppler-utils", at.PathOf("timber"), "pdftoppm", "-r", "300", "-aa", "no", "-aaVector", "no", "-gray", "-png", "labels.pdf", "label");
        var codes = Directory.GetFiles(at.PathOf("timber"), "label-*.png").SelectMany(png =>
            OtherProgram.Run("zbar-tools", at.PathOf("timber"), "zbarimg", "--nodbus", "--quiet", "--raw", png).Split('\n', StringSplitOptions.RemoveEmptyEntries)).ToList();
        var stair = Stair.SetOut(Samples.Job(name)).Value!;
        var pieces = CuttingList.Of(stair.Kit, UsualShop.For(stair.Job)).Pieces;
        Assert.Equal(pieces.Length, codes.Count);
        Assert.All(codes, c => Assert.StartsWith("../pack/set.pdf#page=", c, StringComparison.Ordinal));
        // As many lead to each page as pieces are drawn or listed there, and each page names one of them.
        using var set = PdfDocument.Open(at.PathOf("pack/set.pdf"));
        foreach (var page in codes.Select(c => int.Parse(c[(c.IndexOf('=', StringComparison.Ordinal) + 1)..], CultureInfo.InvariantCulture)).Distinct())
        {
            var words = set.GetPage(page).GetWords().SelectMany(w => w.Text.Split(',', ':', ';')).ToHashSet();
            Assert.Contains(pieces, p => words.Contains(p.Part.Mark));
        }
    }
}
