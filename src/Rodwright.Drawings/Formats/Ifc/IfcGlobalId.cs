using System.Security.Cryptography;
using System.Text;

namespace Rodwright.Drawings.Formats.Ifc;

/// <summary>Ids by which IFC files know their objects again: 128 bits as 22 letters. The same object has the same id in every file.</summary>
internal static class IfcGlobalId
{
    private const string Letters = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_$";

    /// <summary>The id of what a name, unlike all others, stands for.</summary>
    public static string Of(string name)
    {
        // Twenty-two letters of six bits hold 132: the first letter has two.
        var number = new System.Numerics.BigInteger(SHA256.HashData(Encoding.UTF8.GetBytes(name)).AsSpan(0, 16), isUnsigned: true);
        Span<char> text = stackalloc char[22];
        for (var i = text.Length - 1; i >= 0; i--)
        {
            text[i] = Letters[(int)(number % 64)];
            number /= 64;
        }
        return new(text);
    }
}
