using System.Globalization;

namespace Rodwright.Geometry;

/// <summary>
/// The unit in which the lengths of one job are read and written. The engine counts in millimetres whatever it is; this is the one home of what a person types and reads.
/// A value carried with the job, so that jobs of both kinds live side by side.
/// </summary>
public sealed class Units
{
    /// <summary>Millimetres in an inch, exactly (international yard and pound agreement of 1959).</summary>
    public const double Inch = 25.4;

    /// <summary>Inches alone are written below this many; from there on feet and inches, as building codes print them: 36", but 6' 8".</summary>
    private const int FeetFrom = 48;

    private const double Sixteenth = Inch / 16;

    /// <summary>Nearer to a sixteenth than this, in inches, a length is called that sixteenth and neither heavy nor light.</summary>
    private const double Hair = 0.0005;

    private Units(string id, string name, double step)
    {
        Id = id;
        Name = name;
        Step = step;
    }

    /// <summary>Millimetres.</summary>
    public static Units Millimetres { get; } = new("mm", "mm", 1);

    /// <summary>Feet, inches and sixteenths.</summary>
    public static Units Inches { get; } = new("inches", "feet, inches and sixteenths", Sixteenth);

    /// <summary>The unit's word in a job file: mm or inches.</summary>
    public string Id { get; }

    /// <summary>As the head of a table says it.</summary>
    public string Name { get; }

    /// <summary>The whole step sizes are chosen in, in millimetres: a millimetre, or a sixteenth of an inch.</summary>
    public double Step { get; }

    /// <summary>Whether lengths are written in feet, inches and sixteenths.</summary>
    public bool IsInches => this == Inches;

    /// <summary>The unit of a word; null for an unknown one.</summary>
    public static Units? Of(string id) => id == Millimetres.Id ? Millimetres : id == Inches.Id ? Inches : null;

    /// <summary>
    /// A length given in millimetres, as a drawing shows it: without the word mm, but with foot and inch marks, as these carry the sense. Inches go to the nearest
    /// sixteenth of the true value. Where two decimals of a millimetre are asked for, one that lies off its sixteenth is called heavy (a little more) or light (a little less);
    /// from three decimals on (the gaps of a proof) it is written in decimals of an inch.
    /// </summary>
    public string Print(double value, int decimals = 1)
    {
        if (!IsInches || !double.IsFinite(value)) return Number.Print(value, decimals);
        return decimals > 2 ? Number.Print(value / Inch, decimals + 1) + "\"" : decimals == 2 ? Fine(value) : Nearest(value);
    }

    /// <summary>As <see cref="Print"/>, with decimals kept so that columns of millimetres line up.</summary>
    public string Fixed(double value, int decimals) => IsInches ? Print(value, decimals) : Number.Fixed(value, decimals);

    /// <summary>As <see cref="Print"/>, with the unit after it where the figure alone does not carry it.</summary>
    public string With(double value, int decimals = 2) => IsInches ? Print(value, decimals) : Number.Print(value, decimals) + " mm";

    /// <summary>
    /// A length that is judged against a limit, with its unit: what a sixteenth would hide is shown. Millimetres have two decimals; inches that lie off their sixteenth are followed by
    /// their decimals, so that 7 3/4" heavy (7.753") is seen to be more than 7 3/4".
    /// </summary>
    public string Judged(double value) => IsInches && Fine(value) is var fine && fine != Nearest(value) ? $"{fine} ({Number.Print(value / Inch, 3)}\")" : With(value);

    /// <summary>The lower end of a judged range, without the word mm.</summary>
    public string Least(double value) => IsInches ? Judged(value) : Number.Print(value, 2);

    /// <summary>The same length in millimetres; in inches the nearest eighth: steps in which sizes are tried.</summary>
    public double Nearby(double value) => IsInches ? Sixteenths(2 * Math.Max(1, Math.Round(value * 8 / Inch))) : value;

    /// <summary>The next of the steps a size is tried in (<see cref="Nearby"/>) that is no less, in millimetres.</summary>
    public double Up(double value, double pace) => Stock(Math.Ceiling(value / Nearby(pace)) * Nearby(pace));

    /// <summary>A size somebody would choose: the same in millimetres, the nearest whole sixteenth in inches.</summary>
    public double Stock(double value) => IsInches ? Sixteenths(Math.Round(value / Step, MidpointRounding.AwayFromZero)) : value;

    /// <summary>From one length to another; millimetres say their unit once.</summary>
    public string Range(double least, double most, int decimals = 2) => $"{Print(least, decimals)} to {With(most, decimals)}";

    /// <summary>A length as it is typed, so that reading it gives the same double again: millimetres as they are, inches as 9' 1 3/4 where they are whole sixty-fourths, else in decimals.</summary>
    public string Typed(double value) => IsInches ? InchText.Write(value) : Number.Exact(value);

    /// <summary>Reads a length as it is typed in this unit; false for anything else. The value is in millimetres.</summary>
    public bool TryRead(string text, out double value) =>
        IsInches ? InchText.TryRead(text, out value)
            : double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);

    /// <summary>The next whole millimetre or sixteenth that is no less, in millimetres: so that what is offered keeps a limit.</summary>
    public double Up(double value) => IsInches ? Sixteenths(Math.Ceiling(value / Step - Tolerance.Same)) : Math.Ceiling(value);

    /// <summary>The next whole millimetre or sixteenth that is no more, in millimetres.</summary>
    public double Down(double value) => IsInches ? Sixteenths(Math.Floor(value / Step + Tolerance.Same)) : Math.Floor(value);

    /// <inheritdoc/>
    public override string ToString() => Id;

    // 25.4 is 127 fifths: a whole number, divided once, is the same double that reading the text gives.
    private static double Sixteenths(double count) => count * 127 / 80;

    private static string Fine(double value)
    {
        var off = Math.Abs(value) / Inch - Math.Round(Math.Abs(value) / Sixteenth, MidpointRounding.AwayFromZero) / 16;
        return Nearest(value) + (off > Hair ? " heavy" : off < -Hair ? " light" : "");
    }

    private static string Nearest(double value)
    {
        // What should lie half way between two sixteenths and misses it by the noise of its last digits is rounded as if it did not.
        var sixteenths = (long)Math.Round(Math.Min(Math.Abs(value), 1e12) / Sixteenth + 1e-9, MidpointRounding.AwayFromZero);
        var marked = InchText.Marked(sixteenths, 16, FeetFrom) + "\"";
        return value < 0 && sixteenths > 0 ? "-" + marked : marked;
    }
}
