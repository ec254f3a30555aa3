/**
 * What lies under a finger. Lines are thin and fingers are not: the nearest thing within reach counts, and of things equally near the one drawn last, which
 * is the smaller.
 */
export function under(x: number, y: number, reach: number, within: Element): Element | null {
    for (const ring of [0, 0.5, 1]) {
        const r = ring * reach;
        for (let i = 0; i < (r === 0 ? 1 : 8); i++) {
            const a = (i * Math.PI) / 4;
            const hit = topmost(x + r * Math.cos(a), y + r * Math.sin(a), within);
            // An area lies everywhere: a line within reach goes before it.
            if (hit && (ring === 1 || !hit.classList.contains('hit'))) return hit;
        }
    }
    return topmost(x, y, within);
}

/** The uppermost thing at a point; handles to drag by lie over things and are none themselves. */
function topmost(x: number, y: number, within: Element): Element | null {
    for (const element of document.elementsFromPoint(x, y)) {
        const thing = element.closest('[data-of]');
        if (thing && within.contains(thing)) return thing;
        if (!within.contains(element)) return null;
    }
    return null;
}
