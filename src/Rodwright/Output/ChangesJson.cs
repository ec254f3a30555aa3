using System.Text.Json.Nodes;
using Rodwright.Joinery;
using Rodwright.Rod.Revisions;
using Rodwright.Workshop.Edits;

namespace Rodwright.Output;

/// <summary>A comparison of two jobs as JSON: <c>{ job: [...], pieces: [...], piecesUnchanged, sheets: [...], sheetsUnchanged }</c>, lengths in millimetres.</summary>
internal static class ChangesJson
{
    public static string Write(Stair before, Stair now, StairChanges changes) => new JsonObject
    {
        ["job"] = new JsonArray([.. JobEdits.Differences(before.Job, now.Job).Select(d => new JsonObject { ["field"] = d.Path, ["before"] = d.Before, ["now"] = d.After })]),
        ["pieces"] = new JsonArray([.. changes.Pieces.Select(Piece)]),
        ["piecesUnchanged"] = changes.Same,
        ["sheets"] = new JsonArray([.. changes.Sheets.Select(s => new JsonObject { ["set"] = s.Set, ["name"] = s.Name, ["title"] = s.Title, ["number"] = s.Number, ["change"] = Word(s.Kind) })]),
        ["sheetsUnchanged"] = changes.SameSheets,
    }.ToJsonString(new() { WriteIndented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping });

    private static JsonObject Piece(PieceChange piece) => new()
    {
        ["part"] = piece.Id, ["mark"] = piece.Mark, ["name"] = piece.Name, ["change"] = Word(piece.Kind),
        ["differences"] = new JsonArray([.. piece.Differences.Select(d => new JsonObject { ["what"] = d.What, ["before"] = d.Before, ["now"] = d.Now, ["by"] = d.By is { } by ? Math.Round(by, 4) : null, ["words"] = d.Words })]),
    };

    private static string Word(ChangeKind kind) => kind switch { ChangeKind.Added => "added", ChangeKind.Removed => "removed", _ => "changed" };
}
