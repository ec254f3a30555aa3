using QRCoder;

namespace Rodwright.Hosting.Access;

/// <summary>What the screen of the sharing machine shows: addresses, code, and the address again as a QR code.</summary>
internal static class ShareWords
{
    /// <summary>The address people of the network type, one for each network.</summary>
    public static IReadOnlyList<string> Addresses(int port) => [.. HostNames.Addresses.Select(a => $"http://{a}:{port}/")];

    /// <summary>
    /// The address with the code behind a number sign, where browsers keep it to themselves: the page fills it in, no log sees it.
    /// </summary>
    public static string Link(string address, AccessCode code) => $"{address}enter#{code.Text}";

    /// <summary>A QR code in half-height blocks, for a terminal.</summary>
    public static string ForTerminal(string text)
    {
        using var data = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.L);
        return new AsciiQRCode(data).GetGraphicSmall();
    }
}
