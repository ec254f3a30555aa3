import type { View } from './view';

/** How far one press turns, degrees, and shifts, parts of the picture. */
const [step, shift] = [10, 0.08];

/** What each key does; told in the view's description. Arrows turn, with Shift they move the picture. */
export function keysOf(view: View, toggle: (what: 'apart' | 'alone' | 'room' | 'least' | 'x' | 'y' | 'z' | 'whole') => void): (event: KeyboardEvent) => void {
    const turns: Record<string, [number, number]> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
    const others: Record<string, () => void> = {
        '+': () => view.nearer(1.25), '=': () => view.nearer(1.25), '-': () => view.nearer(0.8), Home: () => view.fit(),
        f: () => view.lookFrom('front'), s: () => view.lookFrom('side'), p: () => view.lookFrom('plan'), t: () => view.lookFrom('three-quarter'),
        e: () => toggle('apart'), a: () => toggle('alone'), r: () => toggle('room'), h: () => toggle('least'), x: () => toggle('x'), y: () => toggle('y'), z: () => toggle('z'), w: () => toggle('whole'), Escape: () => toggle('whole'),
    };
    return (event) => {
        if (event.ctrlKey || event.metaKey || event.altKey) return;
        const turn = turns[event.key];
        const other = others[event.key.length === 1 ? event.key.toLowerCase() : event.key];
        if (turn && event.shiftKey) view.shift(turn[0] * shift, turn[1] * shift);
        else if (turn) view.turn(turn[0] * step, turn[1] * step);
        else if (other) other();
        else return;
        event.preventDefault();
    };
}
