using Microsoft.AspNetCore.Components;

namespace Rodwright.Pages.Work;

/// <summary>
/// A part of the page that looks at the job. The page draws itself again when something has changed, and through the cascade all its parts with it, in one
/// go; a part that is dear to draw says in ShouldRender what it depends on.
/// </summary>
public abstract class WorkPart : ComponentBase
{
    /// <summary>The job as this person sees it.</summary>
    [CascadingParameter] public WorkModel Work { get; set; } = null!;
}
