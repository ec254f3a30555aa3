using System.Collections.Immutable;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using Rodwright.Workshop.Pictures.Clauses;

namespace Rodwright.Workshop.Pictures;

/// <summary>What on the stair a field of the job file decides.</summary>
internal static class PlacesOfFields
{
    private static readonly ImmutableArray<PartKind> Strings = [PartKind.WallString, PartKind.NewelString];
    private static readonly ImmutableArray<PartKind> Treads = [PartKind.Tread, PartKind.TaperedTread, PartKind.NosingPiece];
    private static readonly ImmutableArray<PartKind> Risers = [PartKind.Riser, PartKind.TaperedRiser, PartKind.BentRiser];

    /// <summary>By the beginning of a field's path; the first that fits.</summary>
    private static readonly ImmutableArray<(string Field, Func<Stair, IEnumerable<string>> Places)> Table =
    [
        ("layout.turn", Turn),
        ("layout.sequence", stair => stair.Plan.RiserLines.Select(r => ThingId.Riser(r.Number))),
        ("layout.hand", Turn),
        ("going", stair => [ThingId.Tread(Places.StraightStep(stair.Plan)), ThingId.Riser(Places.StraightStep(stair.Plan))]),
        ("width", Parts(Strings)),
        ("sides", Parts(Strings)),
        ("ends", Parts(PartKind.Newel)),
        ("bottomStep", stair => [ThingId.Tread(1), ThingId.Riser(1), .. Parts(PartKind.Block, PartKind.Wedges)(stair)]),
        ("balustrade.rail", Parts(PartKind.Handrail)),
        ("balustrade.tenon", Parts(PartKind.Handrail)),
        ("balustrade.baseRail", Parts(PartKind.BaseRail)),
        ("balustrade.baluster", Parts(PartKind.Baluster)),
        ("balustrade.gap", Parts(PartKind.Baluster)),
        ("balustrade.wallRail", Parts(PartKind.WallRail, PartKind.Bracket)),
        ("balustrade.cap", Parts(PartKind.NewelCap)),
        ("balustrade", Parts(PartKind.Handrail, PartKind.BaseRail)),
        ("landingEdge", Parts(PartKind.Apron, PartKind.LandingNosing)),
        ("carriage.bracket", Parts(PartKind.CarriageBracket)),
        ("carriage", Parts(PartKind.Carriage)),
        ("smallParts.block", Parts(PartKind.GlueBlock)),
        ("smallParts.wedge", Parts(PartKind.Wedge)),
        ("smallParts", Parts(PartKind.Wedge, PartKind.GlueBlock, PartKind.Peg)),
        ("practice.wallString", Parts(PartKind.WallString)),
        ("practice.newelString", Parts(PartKind.NewelString)),
        ("practice.newel", Parts(PartKind.Newel)),
        ("practice.topNewelDrop", Parts(PartKind.Newel)),
        ("practice.pendantNewel", Parts(PartKind.Newel)),
        ("practice.rail", Parts(PartKind.Newel)),
        ("practice.cover", Parts(PartKind.Newel)),
        ("practice.tenon", Parts(PartKind.NewelString, PartKind.Newel)),
        ("practice.treadWedge", Parts(Treads)),
        ("practice.tread", Parts(Treads)),
        ("practice.riserMaterial", Parts(Risers)),
        ("practice.riser", Parts(Risers)),
        ("practice.packing", stair => [ThingId.Riser(stair.Plan.Risers)]),
        ("practice.nosingCover", Parts(Strings)),
        ("practice.floorBoards", Parts(PartKind.NosingPiece)),
        ("practice.nosingPiece", Parts(PartKind.NosingPiece)),
        ("practice.nosing", Parts(Treads)),
        ("practice.glueStrip", Parts(PartKind.TaperedTread)),
        ("practice.corner", Parts(PartKind.WallString)),
        ("practice", Parts(Strings)),
    ];

    /// <summary>Whether these words are a field of the job file that has a place on the stair.</summary>
    public static bool Knows(string field) => Table.Any(row => field.StartsWith(row.Field, StringComparison.Ordinal));

    /// <summary>Ids of the things a field decides, of one or another kind; they need not all exist on this stair.</summary>
    public static IEnumerable<string> Of(Stair stair, string field) =>
        Table.FirstOrDefault(row => field.StartsWith(row.Field, StringComparison.Ordinal)).Places?.Invoke(stair) ?? [];

    /// <summary>The steps of every turn, each with its riser, and the riser the turn ends with.</summary>
    public static IEnumerable<string> Turn(Stair stair)
    {
        foreach (var turn in stair.Plan.Turns)
        {
            var (first, last) = (TurnPlaces.FirstSquare(turn), TurnPlaces.LastSquare(turn));
            for (var k = first; k < last; k++)
            {
                yield return ThingId.Tread(k);
                yield return ThingId.Riser(k);
            }
            yield return ThingId.Riser(last);
        }
    }

    private static Func<Stair, IEnumerable<string>> Parts(params ImmutableArray<PartKind> kinds) =>
        stair => stair.Kit.Parts.Where(p => kinds.Contains(p.Kind)).Select(p => p.Id);
}
