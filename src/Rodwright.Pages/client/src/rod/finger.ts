/**
 * What lies under a finger. Lines are thin and fingers are not: the nearest thing within reach counts, and of things equally near the one drawn last, which
 * is the smaller.
 */
export function under(x: number, y: number, reach: number, within: Element): Element | null {
    const rings = [0, 0.5, 1];
    for (const ring of rings) {
        const r = ring * reach;
        for (let i = 0; i < (r === 0 ? 1 : 8); i++) {
            const a = (i * Math.PI) / 4;
            const hit = document.elementFromPoint(x + r * Math.cos(a), y + r * Math.sin(a))?.closest('[data-of]');
            // An area lies everywhere: a line within reach goes before it.
            if (hit && within.contains(hit) && (ring === 1 || !hit.classList.contains('hit'))) return hit;
        }
    }
    const under = document.elementFromPoint(x, y)?.closest('[data-of]') ?? null;
    return under && within.contains(under) ? under : null;
}
