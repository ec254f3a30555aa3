/**
 * What is pressed on a drawn board is the piece it is cut for: its button among the board's cuts does the rest. The picture is one image to a reader of screens, who has those buttons.
 */
export function pressBoards() {
    document.addEventListener('click', (event) => {
        const area = event.target instanceof Element ? event.target.closest<SVGElement>('.board-figure .hit[data-of]') : null;
        const of = area?.dataset['of'];
        if (!of) return;
        area.closest('.board-figure')?.querySelector<HTMLElement>(`button[data-of=${CSS.escape(of)}]`)?.click();
    });
}
