namespace Rodwright.Workshop.Shelf;

/// <summary>How a revision came about. The numbers are stored: never change them.</summary>
public enum RevisionKind
{
    /// <summary>The job was made: from a sample, a blank, a copy or an uploaded file. Always the first revision and never a later one.</summary>
    Made = 0,

    /// <summary>Something was changed.</summary>
    Edit = 1,

    /// <summary>A change was undone.</summary>
    Undo = 2,

    /// <summary>A change undone was done again.</summary>
    Redo = 3,

    /// <summary>An earlier revision was taken back as the newest.</summary>
    Restore = 4,
}
