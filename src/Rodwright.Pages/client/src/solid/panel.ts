import { told } from '../lengths';
import { keysOf } from './keys';
import type { Axis } from './section';
import type { View } from './view';
import type { ViewName } from './model';

/**
 * The buttons and sliders round the view. How the stair is looked at is nobody's business but the view's, so they are wired here, not over the network: elements of the host
 * are known by their data-solid attribute, and carry pressed states and values as attributes.
 */
export class Panel {
    private readonly off = new AbortController();

    constructor(private readonly host: HTMLElement, private readonly view: View) {
        const signal = this.off.signal;
        host.addEventListener('click', (e) => this.press((e.target as Element).closest<HTMLElement>('button[data-solid]')?.dataset['solid']), { signal });
        host.addEventListener('input', (e) => this.slide(e.target as HTMLInputElement), { signal });
        host.querySelector('canvas')!.addEventListener('keydown', keysOf(view, (what) => this.toggle(what)), { signal });
        this.show();
    }

    /** Says something below the picture. */
    say(words: string): void {
        const line = this.find('words');
        if (line && line.textContent !== words) line.textContent = words;
    }

    /** Sets the words of the least headroom beside its plumb line, within the picture. */
    mark(at: { x: number; y: number } | null): void {
        const words = this.find('least-words');
        if (!words) return;
        words.hidden = at === null;
        if (at === null) return;
        const room = words.parentElement!;
        const left = at.x + 14 + words.offsetWidth > room.clientWidth ? at.x - 14 - words.offsetWidth : at.x + 14;
        words.style.translate = `${Math.round(Math.max(0, left))}px ${Math.round(at.y - words.offsetHeight / 2)}px`;
    }

    /** Shows how the stair is looked at. */
    show(): void {
        const { view } = this;
        this.host.dataset['seen'] = view.alone ? 'piece' : 'stair';
        this.pressed('room', view.room);
        this.pressed('least', view.plumb.wanted && view.plumb.known);
        this.pressed('alone', view.alone !== null);
        for (const axis of ['x', 'y', 'z'] as const) this.pressed(`section-${axis}`, view.section.axis === axis);
        this.value('apart', Math.round(view.apart * 100), `${Math.round(view.apart * 100)} %`);
        const { axis, level } = view.section;
        const slider = this.find('level') as HTMLInputElement | null;
        if (!slider) return;
        slider.disabled = axis === null;
        if (axis === null) return void this.tell('level-value', '');
        const { low, high } = view.reach(axis);
        [slider.min, slider.max] = [`${low}`, `${high}`];
        this.value('level', level, axis === 'z' ? `${told(level, this.units)} up` : `${axis} = ${told(level, this.units)}`);
    }

    /** The unit lengths are told in, as the page says it. */
    private get units(): string | undefined {
        return this.host.dataset['units'];
    }

    dispose(): void {
        this.off.abort();
    }

    private press(what: string | undefined): void {
        if (what === undefined) return;
        const { view } = this;
        const [kind, name] = what.split('-', 2) as [string, string | undefined];
        if (kind === 'view') view.lookFrom(what.slice(5) as ViewName);
        else if (kind === 'section') this.toggle(name as Axis);
        else if (kind === 'turn') view.turn(name === 'left' ? -15 : 15, 0);
        else if (what === 'nearer') view.nearer(1.25);
        else if (what === 'farther') view.nearer(0.8);
        else if (what === 'fit') view.fit();
        else if (what === 'whole' || what === 'alone' || what === 'room' || what === 'least') this.toggle(what);
        this.show();
    }

    private toggle(what: 'apart' | 'alone' | 'room' | 'least' | Axis | 'whole'): void {
        const { view } = this;
        if (what === 'apart') this.glide(view.apart > 0.5 ? 0 : 1);
        else if (what === 'alone') view.setAlone(view.alone === null);
        else if (what === 'room') view.setRoom(!view.room);
        else if (what === 'least') view.setLeast(!view.plumb.wanted);
        else if (what === 'whole') {
            if (view.section.axis !== null) view.setSection(null);
            if (view.alone) view.setAlone(false);
            this.glide(0);
        } else view.setSection(view.section.axis === what ? null : what);
        this.show();
    }

    private glide(apart: number): void {
        if (this.view.apart === apart) return;
        this.view.setApart(apart, true);
        this.value('apart', Math.round(apart * 100), `${Math.round(apart * 100)} %`);
    }

    private slide(input: HTMLInputElement): void {
        if (input.dataset['solid'] === 'apart') {
            if (this.view.alone) this.view.setAlone(false);
            this.view.setApart(Number(input.value) / 100, false);
        } else if (input.dataset['solid'] === 'level' && this.view.section.axis !== null) this.view.setSection(this.view.section.axis, Number(input.value));
        else return;
        this.show();
    }

    private find(what: string): HTMLElement | null {
        return this.host.querySelector<HTMLElement>(`[data-solid="${what}"]`);
    }

    private pressed(what: string, on: boolean): void {
        this.find(what)?.setAttribute('aria-pressed', on ? 'true' : 'false');
    }

    private value(what: string, value: number, words: string): void {
        const input = this.find(what) as HTMLInputElement | null;
        if (!input) return;
        if (Number(input.value) !== value) input.value = `${value}`;
        input.setAttribute('aria-valuetext', words);
        this.tell(`${what}-value`, words);
    }

    private tell(what: string, words: string): void {
        const line = this.find(what);
        if (line && line.textContent !== words) line.textContent = words;
    }
}
