import { Handles, type Program } from './rod/handles';
import { listen } from './rod/gestures';
import { listenKeys } from './rod/keys';
import { scaleBar } from './rod/scaleBar';
import { showLine } from './rod/stages';
import { under } from './rod/finger';
import { View } from './rod/view';

const pixelsPerBoardMm = 2; // as the page sets the sheet's own width and height

/** The board in a window, as the page's component handles it. */
export function attach(host: HTMLElement, program: Program) {
    const sheet = host.querySelector<SVGSVGElement>('svg.sheet')!;
    const bar = host.querySelector<HTMLElement>('.bar')!;
    const words = host.querySelector<HTMLElement>('.bar-words')!;
    let framed = false;

    /** CSS pixels to a millimetre of timber. */
    const pixelsPerMm = () => (view.eye.k * pixelsPerBoardMm) / Number(sheet.dataset.ratio);

    const view = new View(host, sheet, eye => {
        scaleBar(bar, words, pixelsPerMm(), sheet.dataset.units);
        // Far out, words are grey fog that costs time to draw.
        host.classList.toggle('far', eye.k < 0.55);
        host.classList.toggle('farther', eye.k < 0.3);
    });
    const handles = new Handles(program, () => 1 / pixelsPerMm());

    const tap = (x: number, y: number, reach: number) => {
        const hit = under(x, y, reach, sheet);
        void program.invokeMethodAsync('Picked', hit?.getAttribute('data-of') ?? '');
    };
    const ends = [
        listen(view, {
            tap,
            grab: (target, x, y) => handles.grab(target, x, y),
            drag: (x, y) => handles.drag(x, y),
            drop: (x, y) => handles.drop(x, y),
        }),
        listenKeys(view, () => view.glide(view.framing())),
    ];
    // Until somebody has looked closer, the whole rod fills the window whatever its size.
    const resized = new ResizeObserver(() => {
        if (!framed && host.clientWidth > 0) view.set(view.framing());
    });
    resized.observe(host);
    host.addEventListener('pointerdown', () => { framed = true; }, { once: true });
    host.addEventListener('wheel', () => { framed = true; }, { once: true });

    const goTo = (piece: string) => {
        const group = sheet.querySelector<SVGGElement>(`[data-piece=${CSS.escape(piece)}]`);
        if (!group) return;
        framed = true;
        const [x, y, w, h] = group.dataset.box!.split(' ').map(n => Number(n) * pixelsPerBoardMm) as [number, number, number, number];
        view.glide(view.framing({ x, y, w, h }));
    };

    return {
        fit: () => view.glide(view.framing()),
        zoom: (by: number) => {
            framed = true;
            view.zoom(by, host.clientWidth / 2, host.clientHeight / 2);
        },
        goTo,
        /** To the drawing a thing is seen on best: its own, or the last one that shows it. */
        goToThing: (id: string) => {
            const own = sheet.querySelector(`[data-piece=${CSS.escape(id)}]`);
            const piece = own ?? [...sheet.querySelectorAll(`[data-of=${CSS.escape(id)}]`)].at(-1)?.closest('[data-piece]');
            if (piece) goTo(piece.getAttribute('data-piece')!);
        },
        showLine: (number: number) => showLine(sheet, number),
        dispose: () => {
            for (const end of ends) end();
            resized.disconnect();
            view.dispose();
        },
    };
}
