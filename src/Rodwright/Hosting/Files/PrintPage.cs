using System.Net;
using Rodwright.Drawings.Formats.Svg;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;

namespace Rodwright.Hosting.Files;

/// <summary>A sheet as a page of its own that a browser prints at true size: the paper's size stands in its style sheet, and the drawing's in millimetres.</summary>
internal static class PrintPage
{
    /// <summary>The page.</summary>
    public static string Of(string title, Sheet sheet)
    {
        var (width, height) = (Number.Print(sheet.Paper.Width), Number.Print(sheet.Paper.Height));
        var words = WebUtility.HtmlEncode($"{title}: {sheet.Title}");
        // Only what is laid on timber has a bar to be measured.
        var bar = !sheet.TrueSize ? "" : $"; then measure the {(sheet.Units.IsInches ? "4 inch" : "100 mm")} bar before anything is cut";
        return $"""
            <!DOCTYPE html>
            <html lang="en"><head><meta charset="utf-8" /><title>{words}</title><link rel="icon" href="/favicon.svg" />
            <link rel="stylesheet" href="/print.css?w={width}&amp;h={height}" /><script type="module" src="/js/print.js"></script></head>
            <body><p class="advice">Print at 100 %, no scaling, no margins, on {WebUtility.HtmlEncode(sheet.Paper.Name)}{bar}. <button type="button" id="print">Print</button></p>
            {SvgWriter.Write(sheet)}</body></html>
            """;
    }

    /// <summary>The style sheet for a size of paper, mm.</summary>
    public static IResult Style(double w, double h)
    {
        if (!(w is > 50 and < 6000) || !(h is > 50 and < 6000)) return Results.BadRequest();
        var (width, height) = (Number.Print(w), Number.Print(h));
        return Results.Text($$"""
            @page { size: {{width}}mm {{height}}mm; margin: 0 }
            @font-face { font-family: "DejaVu Sans Condensed"; src: url("/fonts/DejaVuSansCondensed.ttf") }
            @font-face { font-family: "DejaVu Sans Condensed"; font-weight: bold; src: url("/fonts/DejaVuSansCondensed-Bold.ttf") }
            html, body { margin: 0; background: #fff; color: #000 }
            svg { display: block }
            .advice { font: 16px sans-serif; margin: 1em }
            .advice button { font: inherit; min-height: 44px; padding: 0 1em }
            @media print { .advice { display: none } }
            """, "text/css");
    }
}
