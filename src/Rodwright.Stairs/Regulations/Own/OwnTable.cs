using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Rules;

namespace Rodwright.Stairs.Regulations.Own;

/// <summary>Makes the table a stair is judged by from what a shop's file says and what it takes over.</summary>
internal static class OwnTable
{
    private static readonly string[] Narrow = [NarrowAlongFacesRule.Instance.Id, NarrowStraightRule.Instance.Id, NarrowTreadWidthRule.Instance.Id];

    public static Regulation Of(OwnRegulation own)
    {
        var given = RegulationCatalogue.Find(own.BasedOn);
        var m = own.Measures;
        var clauses = Clauses(own, given);
        var line = new WalkingLineRule(m.MiddleBelow ?? given?.WalkingLine.MiddleBelow ?? 0, m.Inset ?? given?.WalkingLine.Inset ?? 0, m.BothSides ?? given?.WalkingLine.BothSides ?? false);
        var going = m.Going.Length > 0 ? (GoingMeasure)OwnFields.Goings.IndexOf(m.Going) : given?.Going ?? GoingMeasure.Chord;
        var narrow = m.Narrow.Length > 0 ? (NarrowMeasure)OwnFields.Narrows.IndexOf(m.Narrow) : given?.Narrow ?? NarrowMeasure.AlongFaces;
        return new()
        {
            Id = own.Id,
            Title = own.Title + " (the shop's own table)",
            Group = "The shop's own",
            BasedOn = own.BasedOn,
            Units = given?.Units ?? Units.Millimetres,
            WrittenAs = own,
            WalkingLine = line,
            Going = going,
            Narrow = narrow,
            LeastNarrow = own.Clauses.Any(c => Narrow.Contains(c.Rule)) ? Greatest(clauses, Narrow) : given?.LeastNarrow ?? 0,
            LeastGoing = own.Clauses.Any(c => c.Rule == GoingRule.Instance.Id || c.Rule == TaperedGoingRule.Instance.Id) ? LeastGoing(clauses) : given?.LeastGoing ?? 0,
            TaperedAtLeastStraight = m.TaperedAtLeastStraight ?? given?.TaperedAtLeastStraight ?? false,
            Measures = given is not null && m == new OwnMeasures() ? given.Measures : Words(line, going, narrow, given?.Units ?? Units.Millimetres),
            Standing = Standing(own, given),
            Clauses = clauses,
        };
    }

    private static ImmutableArray<Clause> Clauses(OwnRegulation own, Regulation? given)
    {
        var clauses = given?.Clauses.ToList() ?? [];
        foreach (var written in own.Clauses)
        {
            var clause = Made(written);
            var old = written.Replaces.Length == 0 ? -1 : clauses.FindIndex(c => !c.IsOwn && c.Rule == clause.Rule && c.Number == written.Replaces);
            if (old >= 0)
            {
                // What the document does not ask it of, the shop does not either.
                clauses[old] = clause with { Except = clauses[old].Except };
                clauses.RemoveAll(c => !c.IsOwn && c.Rule == clause.Rule && c.Number == written.Replaces);
            }
            else
            {
                // Beside its kin, so that a report reads on.
                var kin = clauses.FindLastIndex(c => c.Rule == clause.Rule);
                clauses.Insert(kin >= 0 ? kin + 1 : clauses.Count, clause);
            }
        }
        return [.. clauses];
    }

    private static Clause Made(OwnClause c) => new(
        c.Clause, c.Measured!, LimitOf(c), (Evidence)(OwnFields.Marks.IndexOf(c.Evidence) switch { 0 => Evidence.Own, 1 => Evidence.TextSeen, 2 => Evidence.Secondary, _ => Evidence.Memory }), c.Source,
        c.Weight == "limit" ? Weight.Limit : Weight.Advice) { IsOwn = true };

    private static Limit LimitOf(OwnClause c) => c switch
    {
        { Pairs.IsEmpty: false } => Limit.WithRise([.. c.Pairs.Select(p => new RiseAndGoing(p.RiseLeast, p.RiseMost, p.GoingLeast, p.GoingMost))]),
        { AtLeast: "straight-going" } => Limit.AtLeastStraightGoing,
        { AtLeast: "clear-width" } => Limit.AtLeastClearWidth,
        { StraightGoings: { } times } => Limit.AtMostStraightGoings(times),
        { Least: { } least, Most: { } most } => Limit.Between(least, most),
        { Least: { } least } => Limit.AtLeast(least),
        { Most: { } most } => Limit.AtMost(most),
        _ => Limit.None,
    };

    /// <summary>What a turn is set out to keep: only a limit forces a solution, advice does not.</summary>
    private static double Greatest(ImmutableArray<Clause> clauses, string[] rules) =>
        clauses.Where(c => c.Weight == Weight.Limit && rules.Contains(c.Rule.Id)).Select(c => c.Limit.Least ?? (c.Limit.Boxes.IsEmpty ? 0 : c.Limit.Boxes.Min(b => b.GoingLeast))).DefaultIfEmpty(0).Max();

    private static double LeastGoing(ImmutableArray<Clause> clauses) =>
        Greatest(clauses, [TaperedGoingRule.Instance.Id]) is > 0 and var tapered ? tapered : Greatest(clauses, [GoingRule.Instance.Id]);

    private static string Standing(OwnRegulation own, Regulation? given)
    {
        var made = given is null ? "A table of the shop's own; no published document." : $"A table of the shop's own, after {given.Title}; {Number.Print(own.Clauses.Length)} of its clauses {(own.Clauses.Length == 1 ? "is" : "are")} the shop's own. No published document.";
        return own.Standing.Length > 0 ? $"{made} {own.Standing}" : made;
    }

    private static string Words(WalkingLineRule line, GoingMeasure going, NarrowMeasure narrow, Units units)
    {
        var where = line.MiddleBelow == 0 ? $"{Told(line.Inset)} from the inner side" : $"in the middle below a clear width of {Told(line.MiddleBelow)}, from there on {Told(line.Inset)} from {(line.BothSides ? "each side" : "the inner side")}";
        var way = narrow switch { NarrowMeasure.AlongFaces => "along the faces", NarrowMeasure.Straight => "straight across", _ => "as tread width" };
        return $"Goings of tapered steps are measured as {(going == GoingMeasure.Chord ? "chord" : "arc")}s{(going == GoingMeasure.Arc ? ", not as chords" : "")}, {where}. The narrow end is measured {way}.";

        string Told(double length) => units.IsInches ? DocumentLength.Print(length, units) : Number.Print(length);
    }
}
