using System.Globalization;
using Rodwright.Geometry;

namespace Rodwright.Workshop.Tests.Picks;

/// <summary>Reads a printed formula as a joiner with a pocket calculator would: only what is printed counts. Angles in degrees.</summary>
internal sealed class Arithmetic
{
    private static readonly string[] Names = ["atan", "cos", "sin", "tan"];
    private readonly string text;
    private int at;

    private Arithmetic(string text) => this.text = text.Replace(" ", "", StringComparison.Ordinal);

    /// <summary>The value of an expression.</summary>
    public static double Of(string expression)
    {
        var reading = new Arithmetic(expression);
        var value = reading.Sum();
        if (reading.at < reading.text.Length) throw new FormatException($"cannot read {expression} from {reading.text[reading.at..]}");
        return value;
    }

    private double Sum()
    {
        var value = Product();
        while (true)
        {
            if (Took("+")) value += Product();
            else if (Took("−")) value -= Product();
            else return value;
        }
    }

    private double Product()
    {
        var value = Signed();
        while (true)
        {
            if (Took("×")) value *= Signed();
            else if (Took("÷")) value /= Signed();
            else return value;
        }
    }

    private double Signed() => Took("−") ? -Raised() : Raised();

    private double Raised()
    {
        var value = Single();
        while (Took("²")) value *= value;
        return value;
    }

    private double Single()
    {
        if (Took("(")) return Closed();
        if (Took("√(")) return Math.Sqrt(Closed());
        if (Took("π")) return Math.PI;
        foreach (var name in Names)
        {
            if (!Took(name)) continue;
            if (name == "atan") return Took("(") ? Angle.FromRadians(Angle.Atan(Closed())).Degrees : throw new FormatException(text);
            var sign = Took("−") ? -1 : 1;
            var angle = Angle.FromDegrees(sign * Figure());
            if (!Took("°")) throw new FormatException($"no degrees in {text}");
            return name switch { "cos" => angle.Cosine, "sin" => angle.Sine, _ => angle.Tangent };
        }
        return Figure();
    }

    private double Closed()
    {
        var value = Sum();
        return Took(")") ? value : throw new FormatException($"not closed: {text}");
    }

    private double Figure()
    {
        var start = at;
        while (at < text.Length && (char.IsAsciiDigit(text[at]) || text[at] == '.')) at++;
        return double.Parse(text.AsSpan(start, at - start), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
    }

    private bool Took(string sign)
    {
        if (string.CompareOrdinal(text, at, sign, 0, sign.Length) != 0) return false;
        at += sign.Length;
        return true;
    }
}
