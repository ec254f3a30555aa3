/** A bar that is as long on the screen as what it says is on the rod. */
export function scaleBar(bar: HTMLElement, words: HTMLElement, pixelsPerMm: number) {
    let length = 1;
    // 1, 2 or 5 with noughts, and between 70 and 175 pixels.
    for (const step of [2, 2.5, 2, 2, 2.5, 2, 2, 2.5, 2, 2, 2.5, 2]) {
        if (length * pixelsPerMm >= 70) break;
        length *= step;
    }
    bar.style.width = `${length * pixelsPerMm}px`;
    words.textContent = `${length} mm`;
}
