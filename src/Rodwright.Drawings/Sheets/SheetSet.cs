using System.Collections.Immutable;

namespace Rodwright.Drawings.Sheets;

/// <summary>Sheets that belong together, numbered "n of m" in order. Immutable.</summary>
public sealed record SheetSet
{
    /// <summary>A set; its sheets are numbered here.</summary>
    /// <param name="name">File-safe name.</param>
    /// <param name="title">Name for people.</param>
    /// <param name="sheets">The sheets in order; their numbers are overwritten.</param>
    /// <exception cref="ArgumentException">Two sheets share a name.</exception>
    public SheetSet(string name, string title, IEnumerable<Sheet> sheets)
    {
        Name = name;
        Title = title;
        var all = sheets.ToList();
        var twice = all.GroupBy(s => s.Name, StringComparer.OrdinalIgnoreCase).FirstOrDefault(g => g.Count() > 1);
        if (twice is not null) throw new ArgumentException($"two sheets are named {twice.Key}", nameof(sheets));
        Sheets = [.. all.Select((sheet, i) => sheet with { Number = i + 1, Count = all.Count })];
    }

    /// <summary>File-safe name.</summary>
    public string Name { get; }

    /// <summary>Name for people.</summary>
    public string Title { get; }

    /// <summary>The sheets, in order.</summary>
    public ImmutableArray<Sheet> Sheets { get; }
}
