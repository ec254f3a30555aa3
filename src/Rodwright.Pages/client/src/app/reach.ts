/**
 * What is pressed in a picture of the survey carries the path of its reading: the field of that reading opens and takes the focus, and the tape is shown with it.
 * The picture is one image to a reader of screens; the same fields are reached there by Tab.
 */
export function reachReadings() {
    document.addEventListener('click', (event) => {
        const area = event.target instanceof Element ? event.target.closest<SVGElement>('.survey-board .hit[data-of]') : null;
        if (!area) return;
        const path = CSS.escape(area.dataset['of']!);
        const field = document.querySelector<HTMLElement>(`#view [data-reading=${path}], #view [data-path=${path}] input`);
        if (!field) return;
        for (let fold = field.closest('details'); fold; fold = fold.parentElement?.closest('details') ?? null) fold.open = true;
        field.focus();
        field.scrollIntoView({ block: 'center' });
    });
}
