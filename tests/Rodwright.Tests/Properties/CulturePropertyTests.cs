using System.Globalization;
using CsCheck;
using Rodwright.Drawings.Formats.Dxf;
using Rodwright.Drawings.Formats.Svg;
using Rodwright.Drawings.Paper;
using Rodwright.Joinery;
using Rodwright.Output;
using Rodwright.Properties;
using Rodwright.Rod;
using Rodwright.Rod.Machining;
using Rodwright.Rod.Pieces;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Tables;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Tests.Properties;

/// <summary>
/// The same bytes whatever the machine's language: over 2,000 generated jobs, each written whole as JSON and CSV and in turn as one family of sheets or
/// one part's DXF, under the invariant culture, German and Turkish.
/// </summary>
public class CulturePropertyTests
{
    [Fact]
    public void Json_svg_dxf_and_csv_are_the_same_bytes_under_german_and_turkish()
    {
        var turn = 0;
        Generated.Jobs.Holds(job =>
        {
            var family = Interlocked.Increment(ref turn) % 5;
            var before = CultureInfo.CurrentCulture;
            try
            {
                CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
                if (Written(job, family) is not { } usual) return;
                foreach (var culture in new[] { "de-DE", "tr-TR" })
                {
                    CultureInfo.CurrentCulture = new CultureInfo(culture);
                    Assert.Equal(usual, Written(job, family));
                }
            }
            finally
            {
                CultureInfo.CurrentCulture = before;
            }
        }, iter: 2000);
    }

    private static List<string>? Written(Stairs.Jobs.Job job, int family)
    {
        if (Stair.SetOut(job).Value is not { } stair) return null;
        var proof = stair.Prove();
        var rod = new RodJob(stair, proof, new RodStyle(PaperStock.Of(PaperSize.A2.Landscape), null, "2026-03-02"));
        var part = stair.Kit.Parts[job.Layout.Risers % stair.Kit.Parts.Length];
        return
        [
            StairJson.Write(stair, proof),
            Text(OrdinateList.File(stair.Kit).Bytes.Span),
            Text(PartsList.File(stair).Bytes.Span),
            .. family switch
            {
                0 => PlanSheets.Make(rod).Select(SvgWriter.Write),
                1 => StringSheets.Walls(rod).Concat(StringSheets.Newels(rod)).Select(SvgWriter.Write),
                2 => PieceSheets.Make(rod).Select(SvgWriter.Write),
                3 => RodSheets.Make(rod).Concat(Cover.Make(rod, [])).Select(SvgWriter.Write),
                _ => [Text(DxfWriter.Write(PartDxf.Of(part, stair.Kit, CutterCorners.Of(part, 10))))],
            },
        ];
    }

    private static string Text(ReadOnlySpan<byte> bytes) => System.Text.Encoding.Latin1.GetString(bytes);
}
