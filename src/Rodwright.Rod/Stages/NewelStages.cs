using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Pieces;
using Rodwright.Rod.Things;
using static Rodwright.Rod.Stages.Say;

namespace Rodwright.Rod.Stages;

/// <summary>A newel's four faces: faces, centre lines, heights, housings, mortices. Each line is on the face it names.</summary>
internal static class NewelStages
{
    public static IEnumerable<Stage> Of(Stair stair, Part part)
    {
        var title = char.ToUpperInvariant(part.Name[0]) + part.Name[1..];
        StageDraft Draft(string id, string what) => new($"{part.Id}-{id}", Bench.Newel, part.Id, $"{title}: {what}");
        var side = part.Blank.Width;

        var faces = Draft("faces", "its four faces");
        var centres = Draft("centres", "centre lines");
        for (var i = 0; i < part.Faces.Length; i++)
        {
            var face = part.Faces[i];
            faces.LinedIn($"face-{face.Looks}", $"face {face.Looks}", part.Id, [face.Outline], How(
                $"plane the newel square and letter this face {face.Looks}; foot at the {(i == 0 ? "left, face side to you" : "left")}", $"the faces are laid out side by side in the order S, E, N, W the newel is turned; it is {stair.Units.Print(part.Blank.Length)} long", Published.FourFaces,
                new Measure("its left arris", side, "across to the other arris", "across"), new Measure("the foot", part.Blank.Length, "up to the head", "length")),
                new("faces", "faces", $"plane the newel square, {stair.Units.Print(side)} by {stair.Units.Print(side)}, and cut it {stair.Units.Print(part.Blank.Length)} long; letter its faces S, E, N, W, turning it the same way each time", $"each face is set out by itself, and every mark squared round from the arris ({Published.FourFaces})"), i);
            centres.Faint($"centre-{face.Looks}", $"centre of face {face.Looks}", part.Id, [Path2.Polyline(new Point2(side / 2, 0), new Point2(side / 2, part.Blank.Length))], How(
                "gauge the centre line", $"half of {stair.Units.Print(side)}; the string's centre line meets the newel here", "", new Measure("the left arris", side / 2, "across", "across")),
                new("centres", "centre lines", $"set the gauge to {stair.Units.Print(side / 2)} and run the centre line down every face", $"half of {stair.Units.Print(side)}; strings' and risers' places are proved against it"), i);
        }
        return [.. faces.Done(), .. centres.Done(), .. Heights(part, stair, Draft("heights", "heights")), .. Cuts(part, stair, Draft("housings", "housings"), false), .. Cuts(part, stair, Draft("mortices", part.Cuts.Any(c => c.Kind == CutKind.Notch) ? "mortices, pegs and notch" : "mortices and pegs"), true)];
    }

    private static IEnumerable<Stage> Heights(Part part, Stair stair, StageDraft draft)
    {
        var foot = part.FaceSide.Frame.Origin.Z;
        var once = new Telling("heights", "pieces",
            "from the foot measure each height of the table up the arris, and square it across the face it is for",
            $"heights count from the foot, which is {(Math.Abs(foot) < 0.05 ? "on the lower floor" : foot > 0 ? $"{stair.Units.Print(foot)} above the lower floor" : $"{stair.Units.Print(-foot)} below it")}: a tread's level line is k × {stair.Units.Print(stair.Plan.Rise, 2)}{(Math.Abs(foot) < 0.05 ? "" : foot > 0 ? $" − {stair.Units.Print(foot)}" : $" + {stair.Units.Print(-foot)}")}");
        foreach (var cut in part.Cuts.Where(c => c.Kind is CutKind.Housing or CutKind.Mortice))
        {
            var box = cut.Filled.Bounds;
            var (looks, name) = (part.Faces[cut.Face].Looks, ShortMarks.Of(cut, stair.Kit));
            draft.Faint($"{cut.Id}", $"{looks}: {name}", ThingId.Of(part, cut), [Level(box.MinY), Level(box.MaxY)], How(
                "square both across the face", $"bottom and top of the {Kind(cut)} for {name}", "", new Measure("the foot", box.MinY, "up", "bottom"), new Measure("the foot", box.MaxY, "up", "top")), once, cut.Face);
        }
        return draft.Done();

        Path2 Level(double v) => Path2.Polyline(new Point2(0, v), new Point2(part.Blank.Width, v));
    }

    private static IEnumerable<Stage> Cuts(Part part, Stair stair, StageDraft draft, bool mortices)
    {
        var practice = stair.Job.Practice;
        foreach (var cut in part.Cuts.Where(c => c.Kind != CutKind.Housing == mortices))
        {
            var (looks, box, name) = (part.Faces[cut.Face].Looks, cut.Shape.Bounds, ShortMarks.Of(cut, stair.Kit));
            var arris = $"the left arris of face {looks}";
            var note = cut.Note.Length > 0 ? $"; it {cut.Note}" : "";
            Measure across = new(arris, Math.Max(0, box.MinX), "across", "from"), on = new(arris, box.MaxX, "across", "to");
            Measure bottom = new("the foot", box.MinY, "up", "bottom"), top = new("the foot", box.MaxY, "up", "top");
            var how = cut.Kind switch
            {
                CutKind.Housing => How($"line in the housing of {name}, {stair.Units.Print(cut.Depth)} deep{note}", $"no wedge can be driven here: it is as long and deep as the end it takes, glued and screwed; {stair.Units.Print(practice.NewelHousing)} deep in newels", Published.SlantedEnds, across, on, bottom, top),
                CutKind.Mortice when stair.Kit.Find(cut.Joint[..cut.Joint.IndexOf('/', StringComparison.Ordinal)]).Kind == PartKind.Handrail =>
                    How($"line in the mortice for {name} and cross it; {stair.Units.Print(cut.Depth)} deep", $"the rail's tenon and {stair.Units.Print(practice.Tenon.MorticeClearance)} clear at its end; in the middle of the rail, level, clear of its groove", "", across, on, bottom, top),
                CutKind.Mortice => How($"line in the mortice for {name} and cross it; {stair.Units.Print(cut.Depth)} deep", $"the tenon's length and {stair.Units.Print(practice.Tenon.MorticeClearance)} clear at its end; bare-faced, so it stands to the side away from the steps", Published.Thirds, across, on, bottom, top),
                CutKind.Haunch => How($"line in the haunch between the mortices, {stair.Units.Print(cut.Depth)} deep", "it holds the string between its two tenons from twisting", Published.Thirds, across, on, bottom, top),
                CutKind.Bore => How($"mark the peg's centre and bore {stair.Units.Print(box.Width)}, {stair.Units.Print(cut.Depth)} deep", $"through the tenon, whose hole is {stair.Units.Print(practice.Tenon.Draw)} nearer the shoulder", Published.DrawBore, new Measure(arris, box.Centre.X, "across", "across"), new Measure("the foot", box.Centre.Y, "up", "up")),
                CutKind.Split => How($"hatch this face and half of those beside it: the half {cut.Note}", $"half the newel: {stair.Units.Print(practice.Newel)} / 2 = {stair.Units.Print(cut.Depth)}", "", top),
                _ => How($"line in the notch {cut.Note}, {stair.Units.Print(cut.Depth)} deep, and hatch the waste", $"half the newel less riser and packing: {stair.Units.Print(practice.Newel)} / 2 − {stair.Units.Print(practice.Riser)} − {stair.Units.Print(practice.Packing)} = {stair.Units.Print(cut.Depth)}", "", top),
            };
            var once = new Telling($"{cut.Kind}", Plural(cut), Common(cut), $"{how.Why}{(how.Source.Length > 0 ? $" ({how.Source})" : "")}");
            draft.LinedIn(cut.Id, cut.Kind == CutKind.Split ? $"{looks}: half split off" : cut.Kind == CutKind.Notch ? $"{looks}: notch" : $"{looks}: {Kind(cut)} {name}", ThingId.Of(part, cut), [cut.Shape], how, cut.Kind is CutKind.Notch or CutKind.Split ? null : once, cut.Face);
        }
        return draft.Done();

        string Common(Cut cut) => cut.Kind == CutKind.Bore
            ? $"from the left arris of the face named measure across, and from the foot up; bore {stair.Units.Print(cut.Shape.Bounds.Width)}, {stair.Units.Print(cut.Depth)} deep"
            : $"on the face named (S, E, N, W) measure across from its left arris, and up from the foot; line in the {Kind(cut)}, {stair.Units.Print(cut.Depth)} deep{(cut.Kind == CutKind.Mortice ? ", and cross it" : "")}";
    }

    private static string Kind(Cut cut) => cut.Kind switch { CutKind.Housing => "housing", CutKind.Mortice => "mortice", CutKind.Haunch => "haunch", CutKind.Bore => "peg", _ => "notch" };

    private static string Plural(Cut cut) => cut.Kind switch { CutKind.Housing => "housings", CutKind.Mortice => "mortices", CutKind.Haunch => "haunches", CutKind.Bore => "peg holes", _ => "notches" };
}
