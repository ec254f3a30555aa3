namespace Rodwright.Geometry.Solids.Sight;

/// <summary>
/// Looking at things from very far off, so that what is parallel stays so: right and up on the picture, and towards the eye. Plumb lines stay upright on the picture.
/// </summary>
public sealed record ParallelView
{
    private ParallelView(Vector3 right, Vector3 up, Vector3 eye)
    {
        Right = right;
        Up = up;
        Eye = eye;
    }

    /// <summary>Unit vector that runs right on the picture; always level.</summary>
    public Vector3 Right { get; }

    /// <summary>Unit vector that runs up on the picture.</summary>
    public Vector3 Up { get; }

    /// <summary>Unit vector from the things to the eye.</summary>
    public Vector3 Eye { get; }

    /// <summary>The view from an eye in a direction of any length; straight from above or below, x runs right.</summary>
    /// <exception cref="ArgumentException">The direction has no length.</exception>
    public static ParallelView From(Vector3 toEye)
    {
        if (!(toEye.Length > Tolerance.Same)) throw new ArgumentException("a direction needs a length", nameof(toEye));
        var eye = 1 / toEye.Length * toEye;
        var across = new Vector3(-eye.Y, eye.X, 0); // up crossed with it
        var right = across.Length > 1e-9 ? 1 / across.Length * across : new Vector3(1, 0, 0);
        return new(right, eye.Cross(right), eye);
    }

    /// <summary>
    /// The isometric view from over a level direction: plumb lines and the two level directions at 45° to it are all shortened alike, by √⅔.
    /// </summary>
    /// <param name="level">From the things to the eye, as seen in plan.</param>
    public static ParallelView Isometric(Vector2 level) => From(new(level.Unit.X, level.Unit.Y, Math.Sqrt(0.5)));

    /// <summary>Where a point lies on the picture, mm of timber.</summary>
    public Point2 At(Point3 p)
    {
        var v = p - default(Point3);
        return new(Right.Dot(v), Up.Dot(v));
    }

    /// <summary>How near the eye a point is: the greater the nearer, mm.</summary>
    public double Nearness(Point3 p) => Eye.Dot(p - default(Point3));
}
