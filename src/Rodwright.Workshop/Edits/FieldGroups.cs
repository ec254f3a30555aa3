using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Fields;

namespace Rodwright.Workshop.Edits;

/// <summary>Every field of a job, grouped as a joiner thinks of them. Each stands in exactly one group.</summary>
public static class FieldGroups
{
    /// <summary>The groups, in the order of the work.</summary>
    public static ImmutableArray<FieldGroup> All { get; } =
    [
        Group("Job", "title", "units", "modelScale", "rodwright"),
        Group("House", "survey.floorToFloor", "survey.tolerance", "survey.lowerFinish", "survey.upperFinish"),
        Under("Room", "survey.walls[]", "survey.well", "survey.ceilings[]", "survey.wayIn[]", "survey.place"),
        Under("How sure", "survey.accuracy"),
        Under("Wishes", "wishes"),
        Group("Layout", "layout.hand", "layout.sequence[].flight", "layout.sequence[].left", "layout.sequence[].right", "layout.sequence[].turn", "layout.sequence[].hand",
            "layout.sequence[].steps", "layout.sequence[].firstRiser", "layout.sequence[].lastRiser", "layout.sequence[].well", "layout.sequence[].method",
            "layout.sequence[].sharedBefore", "layout.sequence[].sharedAfter", "sides.left", "sides.right", "ends.foot", "ends.head"),
        Under("Bottom step", "bottomStep"),
        Under("Balustrade", "balustrade"),
        Under("Landing edges", "landingEdge"),
        Under("Wedges, blocks and pegs", "smallParts"),
        Under("Carriages", "carriage"),
        Group("Sizes", "going", "width", "practice.nosing", "practice.margin", "practice.railHeight", "practice.newelAboveRail", "practice.topNewelDrop",
            "practice.pendantNewel", "practice.newelBelowFloor"),
        Group("Timber", "practice.newel", "practice.wallString.thickness", "practice.wallString.width", "practice.newelString.thickness", "practice.newelString.width",
            "practice.tread", "practice.riser", "practice.nosingPiece", "practice.glueStrip", "practice.timber", "practice.riserMaterial"),
        Group("Housings and wedges", "practice.housing", "practice.newelHousing", "practice.corner", "practice.cornerJoint", "practice.cornerTongue", "practice.cornerTails", "practice.cornerSlope", "practice.cover", "practice.coverBelow", "practice.nosingCover",
            "practice.nosingPastNewel", "practice.riserOnTread", "practice.riserEnd", "practice.treadWedge.length", "practice.treadWedge.thin", "practice.treadWedge.taper",
            "practice.treadWedge.runOn", "practice.riserWedge.length", "practice.riserWedge.thin", "practice.riserWedge.taper", "practice.riserWedge.runOn"),
        Group("Tenons", "practice.tenon.thickness", "practice.tenon.part", "practice.tenon.haunch", "practice.tenon.morticeClearance", "practice.tenon.between",
            "practice.tenon.least", "practice.tenon.peg", "practice.tenon.pegBack", "practice.tenon.draw"),
        Group("Finish", "practice.easing", "practice.skirting", "practice.skirtingAbove", "practice.skirtingJoint", "practice.skirtingEasing", "practice.headLevel", "practice.floorBoards", "practice.packing", "practice.scribing"),
        Group("Regulation", "regulation"),
    ];

    /// <summary>A field as a job of a unit has it: what is taken where nothing is said may differ.</summary>
    public static FieldDescription In(FieldDescription field, Units units) => units.IsInches ? JobFields.DescriptionsIn(units).FirstOrDefault(d => d.Path == field.Path) ?? field : field;

    /// <summary>All fields of some groups or lists of the file.</summary>
    private static FieldGroup Under(string name, params IEnumerable<string> paths) =>
        new(name, [.. paths.SelectMany(p => JobFields.Descriptions.Where(d => d.Path.StartsWith(p + ".", StringComparison.Ordinal)))]);

    private static FieldGroup Group(string name, params ReadOnlySpan<string> paths)
    {
        var fields = ImmutableArray.CreateBuilder<FieldDescription>();
        foreach (var path in paths) fields.Add(JobFields.Descriptions.First(d => d.Path == path));
        return new(name, fields.ToImmutable());
    }
}
