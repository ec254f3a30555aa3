/** What the eye sees of the board: a shift and a magnification, in CSS pixels of the window it is seen through. */
export interface Eye { x: number; y: number; k: number }

const least = 0.05;
const most = 60;

/**
 * Moves and magnifies the sheet by a transform alone, so that neither the drawing nor its layout is touched. While something moves the sheet is kept as a
 * picture; once it rests it is drawn sharp again.
 */
export class View {
    eye: Eye = { x: 0, y: 0, k: 1 };
    private resting = 0;
    private frame = 0;
    private moving = 0;

    constructor(readonly window: HTMLElement, readonly sheet: SVGSVGElement, private readonly shown: (eye: Eye) => void) { }

    /** Size of the sheet before magnification, CSS pixels. */
    private get size() { return { w: this.sheet.width.baseVal.value, h: this.sheet.height.baseVal.value }; }

    /** Shows another part, at once. */
    set(eye: Eye) {
        this.stop();
        this.show(eye);
    }

    /** Moves over to another part; at once where motion is not wanted. */
    glide(to: Eye) {
        this.stop();
        if (matchMedia('(prefers-reduced-motion: reduce)').matches) { this.show(to); return; }
        const from = this.eye;
        const begun = performance.now();
        const step = (now: number) => {
            const t = Math.min(1, (now - begun) / 240);
            const s = t * t * (3 - 2 * t);
            const k = from.k * Math.pow(to.k / from.k, s);
            // The middle of the window travels straight over the sheet.
            const { width, height } = this.window.getBoundingClientRect();
            const at = (e: Eye, m: number, o: number) => (m / 2 - o) / e.k;
            const cx = at(from, width, from.x) * (1 - s) + at(to, width, to.x) * s;
            const cy = at(from, height, from.y) * (1 - s) + at(to, height, to.y) * s;
            this.show({ k, x: width / 2 - cx * k, y: height / 2 - cy * k });
            this.moving = t < 1 ? requestAnimationFrame(step) : 0;
        };
        this.moving = requestAnimationFrame(step);
    }

    pan(dx: number, dy: number) { this.set({ ...this.eye, x: this.eye.x + dx, y: this.eye.y + dy }); }

    /** Magnifies, keeping the point of the sheet under (x, y) of the window where it is. */
    zoom(by: number, x: number, y: number) {
        const k = Math.min(most, Math.max(least, this.eye.k * by));
        const f = k / this.eye.k;
        this.set({ k, x: x - (x - this.eye.x) * f, y: y - (y - this.eye.y) * f });
    }

    /** The part of the sheet that fills the window best: all of it, or a box of it. */
    framing(box = { x: 0, y: 0, w: this.size.w, h: this.size.h }, margin = 24): Eye {
        const { width, height } = this.window.getBoundingClientRect();
        const k = Math.min(most, Math.max(least, Math.min((width - 2 * margin) / box.w, (height - 2 * margin) / box.h)));
        return { k, x: (width - box.w * k) / 2 - box.x * k, y: (height - box.h * k) / 2 - box.y * k };
    }

    dispose() {
        this.stop();
        clearTimeout(this.resting);
        cancelAnimationFrame(this.frame);
    }

    private stop() {
        cancelAnimationFrame(this.moving);
        this.moving = 0;
    }

    private show(eye: Eye) {
        this.eye = eye;
        if (this.frame) return;
        this.frame = requestAnimationFrame(() => {
            this.frame = 0;
            this.sheet.style.willChange = 'transform';
            this.sheet.style.transform = `translate(${this.eye.x}px,${this.eye.y}px) scale(${this.eye.k})`;
            this.shown(this.eye);
            clearTimeout(this.resting);
            this.resting = window.setTimeout(() => { this.sheet.style.willChange = 'auto'; }, 160);
        });
    }
}
