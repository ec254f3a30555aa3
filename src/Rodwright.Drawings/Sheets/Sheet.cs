using System.Collections.Immutable;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets;

/// <summary>One finished sheet: paper, drawing, and the frame and title block that follow from them. Immutable.</summary>
public sealed record Sheet
{
    /// <summary>File-safe name, unique in its set: kebab-case.</summary>
    public required string Name { get; init; }

    /// <summary>Name for people.</summary>
    public required string Title { get; init; }

    /// <summary>The paper.</summary>
    public required PaperSize Paper { get; init; }

    /// <summary>The scale told in the title block: that of the main view.</summary>
    public Scale Scale { get; init; } = Scale.Full;

    /// <summary>False for sheets of words and tables, which are drawn to no scale.</summary>
    public bool HasScale { get; init; } = true;

    /// <summary>The scale as the title block and lists print it.</summary>
    public string ScaleWords => HasScale ? Scale.Told(Units) : "–";

    /// <summary>The unit of its figures: check bars and scale are told in it.</summary>
    public Units Units { get; init; } = Units.Millimetres;

    /// <summary>The drawing itself, in drawing order; millimetres of paper, y up, origin bottom left.</summary>
    public required ImmutableArray<Mark> Marks { get; init; }

    /// <summary>Whether the sheet is to be laid on timber: it then carries two 100 mm check bars and may be cut into tiles.</summary>
    public bool TrueSize { get; init; }

    /// <summary>The words of the title block; null for bare paper without frame or block.</summary>
    public TitleBlockText? Block { get; init; }

    /// <summary>Which sheet of its set this is, from 1.</summary>
    public int Number { get; init; } = 1;

    /// <summary>How many sheets the set has.</summary>
    public int Count { get; init; } = 1;

    /// <summary>The frame: 20 mm in from the filing edge (left), 10 from the others (ISO 5457); the whole paper for bare paper.</summary>
    public Box2 Frame => Block is null ? new(0, 0, Paper.Width, Paper.Height) : SheetFrame.BoxOf(Paper);

    /// <summary>Boxes inside the frame that the title block and the check bars take up.</summary>
    public ImmutableArray<Box2> Reserved => SheetFurniture.Reserved(this);

    /// <summary>The largest plain rectangle for drawing: the frame above everything reserved, a breath (4 mm) in from it.</summary>
    public Box2 Room
    {
        get
        {
            var frame = Frame;
            var floor = frame.MinY;
            foreach (var box in Reserved) floor = Math.Max(floor, box.MaxY);
            return Block is null ? frame : new(frame.MinX + 4, floor + 4, frame.MaxX - 4, frame.MaxY - 4);
        }
    }

    /// <summary>Frame, title block and check bars.</summary>
    public IReadOnlyList<Mark> Furniture => SheetFurniture.Draw(this);

    /// <summary>Everything that is printed, in drawing order: what writers write.</summary>
    public IEnumerable<Mark> AllMarks => Marks.Concat(Furniture);
}
