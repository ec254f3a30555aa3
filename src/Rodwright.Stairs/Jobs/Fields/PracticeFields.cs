using System.Collections.Immutable;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>The fields of <see cref="Practice"/>. Their defaults are the property's own.</summary>
internal static class PracticeFields
{
    private static readonly ImmutableArray<string> SkirtingJoints = ["plumb", "mitred", "eased"];

    private static readonly ImmutableArray<string> CornerJoints = ["housed", "tongued", "dovetailed"];
    private const string Common = "common practice";

    private static ImmutableArray<Field<Board>> Board { get; } =
    [
        Size<Board>("thickness", "thickness of the string", 4, 75, "finished", b => b.Thickness, (b, v) => b with { Thickness = v }),
        Size<Board>("width", "width of the string", 25, 600, "finished; at tapered steps what lies outside it is jointed up", b => b.Width, (b, v) => b with { Width = v }),
    ];

    private static ImmutableArray<Field<WedgeShape>> Wedge { get; } =
    [
        Size<WedgeShape>("length", "length of the wedge", 10, 300, "from the thin end to the riser's face, or to the underside of the tread below", w => w.Length, (w, v) => w with { Length = v }),
        Size<WedgeShape>("thin", "thin end of the wedge", 1, 15, "3 to 6 is usual", w => w.Thin, (w, v) => w with { Thin = v }),
        new NumberField<WedgeShape>("taper", "taper of the wedge", new(6, 40, ""), "thickens by 1 in this many; 12 to 16 is usual", w => w.Taper, (w, v) => w with { Taper = v }),
        Size<WedgeShape>("runOn", "run on of the wedge's space", 0, 80, "past the thick end, so that the wedge can be driven", w => w.RunOn, (w, v) => w with { RunOn = v }),
    ];

    private static ImmutableArray<Field<TenonPractice>> Tenon { get; } =
    [
        new NumberField<TenonPractice>("thickness", "thickness of the tenon", new(3, 60, "mm"), "left out: the string's thickness less the housing's depth, so that the tenon clears the housings", t => t.Thickness, (t, v) => t with { Thickness = v }),
        new NumberField<TenonPractice>("part", "length of the tenon as a part of the newel", new(0.3, 0.9, ""), "two thirds is preferred: a short tenon shears at the peg", t => t.Part, (t, v) => t with { Part = v }),
        Size<TenonPractice>("haunch", "haunch between the twin tenons", 0, 60, Common, t => t.Haunch, (t, v) => t with { Haunch = v }),
        Size<TenonPractice>("morticeClearance", "space at the bottom of a mortice", 0, 10, Common, t => t.MorticeClearance, (t, v) => t with { MorticeClearance = v }),
        Size<TenonPractice>("between", "wood between two tenons that would meet", 0, 20, Common, t => t.Between, (t, v) => t with { Between = v }),
        Size<TenonPractice>("least", "least length of a tenon", 5, 100, "a shorter one is reported", t => t.Least, (t, v) => t with { Least = v }),
        Size<TenonPractice>("peg", "diameter of the draw-bore peg", 3, 25, Common, t => t.Peg, (t, v) => t with { Peg = v }),
        Size<TenonPractice>("pegBack", "peg's centre from the shoulder", 5, 60, "never more than half the tenon", t => t.PegBack, (t, v) => t with { PegBack = v }),
        Size<TenonPractice>("draw", "draw of the bore", 0, 6, "how much nearer the shoulder the hole in the tenon is bored", t => t.Draw, (t, v) => t with { Draw = v }),
    ];

    public static ImmutableArray<Field<Practice>> All { get; } =
    [
        Size<Practice>("newel", "side of the square newel", 15, 250, "finished; trade stock", p => p.Newel, (p, v) => p with { Newel = v }),
        new GroupField<Practice, Board>("wallString", "wall string", "its section, finished", p => p.WallString, (p, v) => p with { WallString = v }, Board),
        new GroupField<Practice, Board>("newelString", "newel string", "its section, finished", p => p.NewelString, (p, v) => p with { NewelString = v }, Board),
        Size<Practice>("tread", "thickness of the treads", 3, 75, Common, p => p.Tread, (p, v) => p with { Tread = v }),
        Size<Practice>("riser", "thickness of the risers", 2, 50, "12 in plywood", p => p.Riser, (p, v) => p with { Riser = v }),
        Size<Practice>("nosing", "nosing", 0, 60, "in front of the riser face below it", p => p.Nosing, (p, v) => p with { Nosing = v }),
        Size<Practice>("margin", "margin", 5, 200, "square from the margin line to the string's upper edge; usually 50 or more", p => p.Margin, (p, v) => p with { Margin = v }),
        Size<Practice>("housing", "depth of the housings in strings", 1, 40, Common, p => p.Housing, (p, v) => p with { Housing = v }),
        Size<Practice>("newelHousing", "depth of the housings in newels", 1, 60, "18 where the riser is screwed", p => p.NewelHousing, (p, v) => p with { NewelHousing = v }),
        Size<Practice>("cover", "cover to a newel's arris", 1, 60, "wood that must remain between a housing and the arris", p => p.Cover, (p, v) => p with { Cover = v }),
        Size<Practice>("nosingPastNewel", "nosing past the newel's face", 0, 60, "beyond it the nosing is notched round the newel", p => p.NosingPastNewel, (p, v) => p with { NosingPastNewel = v }),
        Size<Practice>("nosingCover", "cover over a nosing", 0, 100, "from a nosing to the string's upper edge, after easing", p => p.NosingCover, (p, v) => p with { NosingCover = v }),
        Size<Practice>("coverBelow", "cover below the housings", 0, 100, "wood left below the lowest point of a housing", p => p.CoverBelow, (p, v) => p with { CoverBelow = v }),
        Size<Practice>("corner", "depth of the corner housing", 0, 40, "how far the upper wall string is let into the lower one", p => p.Corner, (p, v) => p with { Corner = v }),
        new ChoiceField<Practice>("cornerJoint", "joint of the wall strings at the corner", CornerJoints, JobCodes.CornerJoint, "joint", "housed: the upper one's whole end let in; tongued: a tongue on its end, in a groove; dovetailed: tails on its end, lapped",
            p => CornerJoints[(int)p.CornerJoint], (p, v) => p with { CornerJoint = (CornerJoint)CornerJoints.IndexOf(v) }),
        new NumberField<Practice>("cornerTongue", "tongue at the corner", new(3, 40, "mm"), "its thickness; left out: a third of the wall string", p => p.CornerTongue, (p, v) => p with { CornerTongue = v }),
        new NumberField<Practice>("cornerTails", "tails at the corner", new(1, 20, "", Whole: true), "how many; left out: one to about 60 of the height", p => p.CornerTails, (p, v) => p with { CornerTails = (int)v }),
        new NumberField<Practice>("cornerSlope", "slope of the tails", new(4, 12, ""), "they spread by 1 in this many; 6 for softwood, 8 for hardwood", p => p.CornerSlope, (p, v) => p with { CornerSlope = v }),
        Size<Practice>("easing", "tangent length of the easings", 0, 600, "0 for none; never longer than half the shorter edge beside it", p => p.Easing, (p, v) => p with { Easing = v }),
        Size<Practice>("skirting", "height of the skirting", 0, 400, "where a wall string meets the floor's skirting", p => p.Skirting, (p, v) => p with { Skirting = v }),
        new NumberField<Practice>("skirtingAbove", "height of the skirting above", new(0, 400, "mm"), "on landings and the upper floor; left out: as on the lower floor", p => p.SkirtingAbove, (p, v) => p with { SkirtingAbove = v }),
        new ChoiceField<Practice>("skirtingJoint", "foot of a wall string at the skirting", SkirtingJoints, JobCodes.SkirtingJoint, "joint", "top edge to top edge. plumb: the skirting butts; mitred: the angle halved; eased: a curve into the skirting's level top",
            p => SkirtingJoints[(int)p.SkirtingJoint], (p, v) => p with { SkirtingJoint = (SkirtingJoint)SkirtingJoints.IndexOf(v) }),
        Size<Practice>("skirtingEasing", "tangent length at the skirting", 20, 600, "of an eased foot; 200 to 300 is usual", p => p.SkirtingEasing, (p, v) => p with { SkirtingEasing = v }),
        Size<Practice>("headLevel", "level top at the head of a wall string", 0, 600, Common, p => p.HeadLevel, (p, v) => p with { HeadLevel = v }),
        Size<Practice>("floorBoards", "thickness of the upper floor's boards", 3, 100, "and of a landing's", p => p.FloorBoards, (p, v) => p with { FloorBoards = v }),
        Size<Practice>("packing", "packing at the trimmer", 0, 60, "between the last riser and the trimmer", p => p.Packing, (p, v) => p with { Packing = v }),
        new FlagField<Practice>("riserOnTread", "riser stands on the tread", "false: it runs down behind the tread below", p => p.RiserOnTread, (p, v) => p with { RiserOnTread = v }),
        new GroupField<Practice, WedgeShape>("treadWedge", "tread wedge", "the space for the wedge under a tread", p => p.TreadWedge, (p, v) => p with { TreadWedge = v }, Wedge),
        new GroupField<Practice, WedgeShape>("riserWedge", "riser wedge", "the space for the wedge behind a riser", p => p.RiserWedge, (p, v) => p with { RiserWedge = v }, Wedge),
        new GroupField<Practice, TenonPractice>("tenon", "string tenon", "from the string into the newel", p => p.Tenon, (p, v) => p with { Tenon = v }, Tenon),
        Size<Practice>("railHeight", "height of the handrail", 100, 1200, "plumb above the pitch line", p => p.RailHeight, (p, v) => p with { RailHeight = v }),
        Size<Practice>("newelAboveRail", "newel above the rail", 0, 400, "above the highest rail at it", p => p.NewelAboveRail, (p, v) => p with { NewelAboveRail = v }),
        Size<Practice>("topNewelDrop", "drop of the top newel", 0, 600, "foot below the string's lower edge", p => p.TopNewelDrop, (p, v) => p with { TopNewelDrop = v }),
        new FlagField<Practice>("pendantNewel", "turn's newel hangs", "false: it stands on the floor; true: its foot hangs topNewelDrop below its lowest joint", p => p.PendantNewel, (p, v) => p with { PendantNewel = v }),
        Size<Practice>("newelBelowFloor", "newel below the floor", 0, 6000, "of newels that stand on the floor: for fixing, or through to a lower floor", p => p.NewelBelowFloor, (p, v) => p with { NewelBelowFloor = v }),
        Size<Practice>("nosingPiece", "nosing piece, front to back", 10, 300, "of a landing or the upper floor", p => p.NosingPiece, (p, v) => p with { NosingPiece = v }),
        Size<Practice>("glueStrip", "widest strip for glued-up treads", 40, 600, Common, p => p.GlueStrip, (p, v) => p with { GlueStrip = v }),
        Size<Practice>("riserEnd", "least thickness of a tapered riser's end", 0.5, 20, "at full depth of its housing", p => p.RiserEnd, (p, v) => p with { RiserEnd = v }),
        Size<Practice>("scribing", "scribing allowance of a wall string", 0, 60, "what may be taken off its back, or hidden behind a cover mould, where the wall is not true; common practice", p => p.Scribing, (p, v) => p with { Scribing = v }),
        new TextField<Practice>("timber", "timber", 40, "of strings, treads and newels, as on the parts list", p => p.Timber, (p, v) => p with { Timber = v }),
        new TextField<Practice>("riserMaterial", "material of the risers", 40, "as on the parts list", p => p.RiserMaterial, (p, v) => p with { RiserMaterial = v }),
    ];

    private static Field<T> Size<T>(string name, string label, double least, double most, string source, Func<T, double> get, Func<T, double, T> set) where T : class =>
        new NumberField<T>(name, label, new(least, most, "mm"), source, owner => get(owner), set);
}
