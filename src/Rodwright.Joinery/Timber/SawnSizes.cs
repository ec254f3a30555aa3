using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Shops;

namespace Rodwright.Joinery.Timber;

/// <summary>Sawn sizes from finished ones, by a shop's allowances and by what it stocks.</summary>
internal sealed class SawnSizes(Shop shop, Units units)
{
    private readonly double step = Mark(units);

    /// <summary>What sawn sizes are whole numbers of, mm: a millimetre, or a sixteenth of an inch.</summary>
    public static double Mark(Units units) => units.IsInches ? Units.Inch / 16 : 1;

    /// <summary>Sawn thickness or width of a finished one, as it is asked for.</summary>
    public double Planed(double finished) => Up(finished + (finished <= shop.Allowances.PlaningLimit + Tolerance.Same ? shop.Allowances.Planing : shop.Allowances.PlaningOver));

    /// <summary>Sawn width of a strip: to the next 10 mm, or half inch, so that strips are ripped at few settings.</summary>
    public double Strip(double finished) => Setting(finished, units.IsInches ? Units.Inch / 2 : 10);

    /// <summary>Sawn width of a piece jointed up on a string, which has a shape of its own: to the next 25 mm, or inch.</summary>
    public double JointedUp(double finished) => Setting(finished, units.IsInches ? Units.Inch : 25);

    private double Setting(double finished, double setting) => Math.Ceiling(Planed(finished) / setting - 1e-6) * setting;

    /// <summary>Sawn length of a part.</summary>
    public double Length(PartKind kind, double finished) => Up(finished + kind switch
    {
        PartKind.WallString or PartKind.NewelString => 2 * shop.Allowances.StringEnd,
        PartKind.Newel => 2 * shop.Allowances.NewelEnd,
        _ => shop.Allowances.Length,
    });

    /// <summary>Sawn length of a strip that is glued up.</summary>
    public double GluedLength(double finished) => Up(finished + 2 * shop.Allowances.GlueEnd);

    /// <summary>Thinnest board of a timber that planes to a thickness; null where there is none.</summary>
    public double? Thickness(string material, double finished)
    {
        var wanted = Planed(finished);
        var there = Boards(material).Where(t => t.Thickness >= wanted - Tolerance.Same).Select(t => t.Thickness).DefaultIfEmpty(0).Min();
        return there > 0 ? there : null;
    }

    /// <summary>Widest board of a timber and thickness; 0 for none.</summary>
    public double Widest(string material, double thickness) => Boards(material).Where(b => Math.Abs(b.Thickness - thickness) < Tolerance.Same).Select(b => b.Width).DefaultIfEmpty(0).Max();

    /// <summary>Whether a material comes in sheets.</summary>
    public bool IsSheet(string material) => shop.Sheets.Any(s => s.Material == material) && !Boards(material).Any();

    /// <summary>Thickness of the sheet of a material that has the finished thickness; null where there is none.</summary>
    public double? SheetOf(string material, double finished) =>
        shop.Sheets.Where(s => s.Material == material && Math.Abs(s.Thickness - finished) <= 0.5).OrderBy(s => Math.Abs(s.Thickness - finished)).Select(s => (double?)s.Thickness).FirstOrDefault();

    /// <summary>Up to the next whole millimetre, or sixteenth of an inch.</summary>
    public double Up(double length) => Math.Ceiling(length / step - 1e-6) * step;

    private IEnumerable<(double Thickness, double Width)> Boards(string material) =>
        shop.Boards.Where(b => b.Material == material && !b.Lengths.IsEmpty && b.Quantity != 0).Select(b => (b.Thickness, b.Width));
}
