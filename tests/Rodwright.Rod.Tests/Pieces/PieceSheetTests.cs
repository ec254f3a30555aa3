using Rodwright.Drawings.Sheets;
using Rodwright.Rod.Pieces;
using Xunit;

namespace Rodwright.Rod.Tests.Pieces;

public sealed class PieceSheetTests
{
    public static TheoryData<string, string> All => RodJobs.Everything("A4", "A3", "A1");

    [Theory]
    [MemberData(nameof(All))]
    public void Nothing_on_a_piece_sheet_overlaps_or_leaves_the_frame(string sample, string paper)
    {
        var sheets = PieceSheets.Make(RodJobs.Of(sample, paper));
        Assert.NotEmpty(sheets);
        var faults = sheets.SelectMany(s => SheetCheck.Overlaps(s).Select(f => $"{s.Name}: {f.Message} at {f.Where}")).ToList();
        Assert.True(faults.Count == 0, $"{faults.Count} faults\n" + string.Join('\n', faults.Take(40)));
    }
}
