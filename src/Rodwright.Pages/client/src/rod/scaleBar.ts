import { told } from '../lengths';

/** A bar that is as long on the screen as what it says is on the rod. */
export function scaleBar(bar: HTMLElement, words: HTMLElement, pixelsPerMm: number, units: string | undefined) {
    const inches = units === 'inches';
    let length = inches ? 25.4 / 16 : 1;
    // 1, 2 or 5 with noughts, or halves of an inch, then 1, 2, 3, 6 inches and feet; and between 70 and 175 pixels.
    for (const step of inches ? [2, 2, 2, 2, 2, 1.5, 2, 2, 2, 2, 2, 2, 2] : [2, 2.5, 2, 2, 2.5, 2, 2, 2.5, 2, 2, 2.5, 2]) {
        if (length * pixelsPerMm >= 70) break;
        length *= step;
    }
    bar.style.width = `${length * pixelsPerMm}px`;
    words.textContent = inches ? told(length, units) : `${length} mm`;
}
