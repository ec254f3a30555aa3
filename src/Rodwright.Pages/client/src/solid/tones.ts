import { Color } from 'three';

/** The colours of the page that the picture is drawn in; they follow the light and the dark ground. */
export interface Tones {
    readonly paper: Color;
    readonly ink: Color;
    readonly accent: Color;
    readonly wrong: Color;
    /** Whether the ground is darker than what is drawn on it. */
    readonly dark: boolean;
}

/** What a page without the custom properties is drawn in. */
const plain: Record<string, string> = { '--paper': '#f7f4ec', '--ink': '#2b2b2d', '--accent': '#b4541f', '--wrong': '#a3132e' };

/** Reads --paper, --ink, --accent and --wrong as they are on an element, whatever way of writing colours the page uses. */
export function readTones(element: Element): Tones {
    const style = getComputedStyle(element);
    const pixel = new OffscreenCanvas(1, 1).getContext('2d', { willReadFrequently: true })!;
    const read = (name: string): Color => {
        // A value the canvas does not know leaves what was there before.
        pixel.fillStyle = plain[name]!;
        pixel.fillStyle = style.getPropertyValue(name).trim();
        pixel.fillRect(0, 0, 1, 1);
        const [red, green, blue] = pixel.getImageData(0, 0, 1, 1).data;
        return new Color().setRGB(red! / 255, green! / 255, blue! / 255, 'srgb');
    };
    const [paper, ink] = [read('--paper'), read('--ink')];
    return { paper, ink, accent: read('--accent'), wrong: read('--wrong'), dark: brightness(paper) < brightness(ink) };
}

/** Calls back when the ground may have changed: by the system's setting, or by a class or attribute of the page's root. */
export function onTonesChanged(changed: () => void): () => void {
    const system = matchMedia('(prefers-color-scheme: dark)');
    const page = new MutationObserver(changed);
    system.addEventListener('change', changed);
    for (const element of [document.documentElement, document.body]) page.observe(element, { attributes: true });
    return () => {
        system.removeEventListener('change', changed);
        page.disconnect();
    };
}

const brightness = (c: Color) => 0.2126 * c.r + 0.7152 * c.g + 0.0722 * c.b;
