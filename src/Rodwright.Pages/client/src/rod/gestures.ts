import { View } from './view';

/** What a gesture may turn out to be, beside moving the sheet. */
export interface Taps {
    /** A press that did not move. */
    tap(x: number, y: number, reach: number): void;
    /** A press begins; true takes the whole gesture for a drag of something on the sheet. */
    grab(target: Element, x: number, y: number): boolean;
    drag(x: number, y: number): void;
    drop(x: number, y: number): void;
}

const slack = 5; // a press that moves less is a tap

/** Mouse, pen and touch on the window: one moves, two magnify, the wheel magnifies about the pointer. Returns what ends it. */
export function listen(view: View, taps: Taps): () => void {
    const down = new Map<number, { x: number; y: number }>();
    let start = { x: 0, y: 0 };
    let moved = false;
    let dragging = false;
    const host = view.window;
    const at = (e: MouseEvent) => {
        const r = host.getBoundingClientRect();
        return { x: e.clientX - r.left, y: e.clientY - r.top };
    };

    const press = (e: PointerEvent) => {
        if (e.button > 1 || !(e.target instanceof Element) || e.target.closest('[data-still]')) return;
        host.setPointerCapture(e.pointerId);
        down.set(e.pointerId, at(e));
        if (down.size > 1) return;
        start = at(e);
        moved = false;
        dragging = e.button === 0 && taps.grab(e.target, e.clientX, e.clientY);
    };

    const move = (e: PointerEvent) => {
        const before = down.get(e.pointerId);
        if (!before) return;
        const now = at(e);
        if (!moved && Math.hypot(now.x - start.x, now.y - start.y) < slack && down.size === 1) return;
        moved = true;
        if (dragging) { taps.drag(e.clientX, e.clientY); return; }
        if (down.size === 1) view.pan(now.x - before.x, now.y - before.y);
        else {
            const [, other] = [...down].find(([id]) => id !== e.pointerId)!;
            const was = Math.hypot(before.x - other.x, before.y - other.y);
            const is = Math.hypot(now.x - other.x, now.y - other.y);
            view.pan((now.x - before.x) / 2, (now.y - before.y) / 2);
            if (was > 0) view.zoom(is / was, (now.x + other.x) / 2, (now.y + other.y) / 2);
        }
        down.set(e.pointerId, now);
    };

    const lift = (e: PointerEvent) => {
        if (!down.delete(e.pointerId)) return;
        if (dragging && moved) taps.drop(e.clientX, e.clientY);
        dragging = false;
        if (!moved && e.type === 'pointerup') taps.tap(e.clientX, e.clientY, e.pointerType === 'mouse' ? 6 : 18);
    };

    const wheel = (e: WheelEvent) => {
        e.preventDefault();
        const p = at(e);
        if (e.shiftKey) view.pan(-e.deltaY, 0);
        else view.zoom(Math.exp(-e.deltaY * (e.deltaMode === 1 ? 0.05 : 0.0016) * (e.ctrlKey ? 4 : 1)), p.x, p.y);
    };

    host.addEventListener('pointerdown', press);
    host.addEventListener('pointermove', move);
    host.addEventListener('pointerup', lift);
    host.addEventListener('pointercancel', lift);
    host.addEventListener('wheel', wheel, { passive: false });
    return () => {
        host.removeEventListener('pointerdown', press);
        host.removeEventListener('pointermove', move);
        host.removeEventListener('pointerup', lift);
        host.removeEventListener('pointercancel', lift);
        host.removeEventListener('wheel', wheel);
    };
}
