using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Rod.Stages;

/// <summary>A stage while its lines are gathered. Not for use from several threads.</summary>
internal sealed class StageDraft(string id, Bench bench, string subject, string title)
{
    private readonly ImmutableArray<StageLine>.Builder lines = ImmutableArray.CreateBuilder<StageLine>();

    public void Faint(string line, string name, string of, IEnumerable<Path2> paths, Instruction how, Telling? once = null, int face = 0) =>
        lines.Add(new($"{id}/{line}", name, LineKind.Faint, [.. paths], of, how, once, face));

    public void LinedIn(string line, string name, string of, IEnumerable<Path2> paths, Instruction how, Telling? once = null, int face = 0) =>
        lines.Add(new($"{id}/{line}", name, LineKind.LinedIn, [.. paths], of, how, once, face));

    /// <summary>The stage, faint lines before those lined in; nothing when it came out empty.</summary>
    public IEnumerable<Stage> Done() =>
        lines.Count == 0 ? [] : [new(id, bench, subject, title, [.. lines.OrderBy(l => l.Kind)])];
}
