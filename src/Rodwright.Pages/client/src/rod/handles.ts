/** Calls into the program; the answer comes when the new drawing is on its way. */
export interface Program { invokeMethodAsync<T>(method: string, ...args: unknown[]): Promise<T> }

interface Held { id: string; ux: number; uy: number; x: number; y: number; sent: number }

/**
 * Drags what can be dragged. The program redraws the stair as the finger moves, one call at a time: what it has not caught up with it is not asked for.
 */
export class Handles {
    private held: Held | null = null;
    private busy = false;

    /** @param perPixel millimetres of timber to one CSS pixel. */
    constructor(private readonly program: Program, private readonly perPixel: () => number) { }

    grab(target: Element, x: number, y: number): boolean {
        const handle = target.closest<SVGElement>('[data-handle]');
        if (!handle) return false;
        const [ux, uy] = handle.dataset.along!.split(' ').map(Number) as [number, number];
        this.held = { id: handle.dataset.handle!, ux, uy, x, y, sent: 0 };
        return true;
    }

    drag(x: number, y: number) { void this.send(this.far(x, y), false); }

    drop(x: number, y: number) {
        void this.send(this.far(x, y), true);
        this.held = null;
    }

    /** Whole millimetres along the handle's own direction; y runs down on the screen. */
    private far(x: number, y: number) {
        const h = this.held!;
        return Math.round(((x - h.x) * h.ux - (y - h.y) * h.uy) * this.perPixel());
    }

    private async send(far: number, done: boolean) {
        const h = this.held;
        if (!h || (!done && (this.busy || far === h.sent))) return;
        h.sent = far;
        this.busy = true;
        try { await this.program.invokeMethodAsync('Dragged', h.id, far, done); } finally { this.busy = false; }
    }
}
