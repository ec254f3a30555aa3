using System.Security.Cryptography;
using System.Text;
using Rodwright.Workshop.Shelf;

namespace Rodwright.Store.Saver;

/// <summary>Revisions whose text tells whether it is whole: it ends in a checksum of the rest. From one to many pages of a database long.</summary>
public static class WholeText
{
    private const int Longest = 20000;

    public static RevisionDraft Draft(int number) =>
        new(number == 1 ? RevisionKind.Made : RevisionKind.Edit, Of(number), Title(number), $"summary {number}", $"change {number}", $"saver {number}");

    public static string Title(int number) => $"title {number}";

    public static string Of(int number)
    {
        var body = new StringBuilder().Append(number).Append(" æ𝄞 ");
        body.Append('a', number * 7919 % Longest);
        return body + Checksum(body.ToString());
    }

    private static string Checksum(string body) => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(body)));
}
