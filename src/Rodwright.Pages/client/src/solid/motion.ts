/** Steps something from 0 to 1; the last call always gives 1. */
export type Step = (part: number) => void;

interface Running {
    readonly step: Step;
    readonly time: number;
    readonly done: (() => void) | undefined;
    begun: number | undefined;
}

/** Movements that show what moved: short, and none where the system asks for none. At most one of a name runs; a newer one takes its place. */
export class Motion {
    private readonly running = new Map<string, Running>();
    private readonly less = matchMedia('(prefers-reduced-motion: reduce)');

    constructor(private readonly wake: () => void) {}

    /** Whether the system asks for no movement. */
    get still(): boolean {
        return this.less.matches;
    }

    start(name: string, time: number, step: Step, done?: () => void): void {
        this.running.delete(name);
        if (this.still || time <= 0) {
            step(1);
            done?.();
        } else {
            this.running.set(name, { step, time, done, begun: undefined });
        }
        this.wake();
    }

    stop(name: string): void {
        this.running.delete(name);
    }

    /** Takes all running movements to a moment, ms; whether any goes on. */
    advance(now: number): boolean {
        for (const [name, one] of this.running) {
            one.begun ??= now;
            const part = Math.min(1, (now - one.begun) / one.time);
            one.step(part < 1 ? part * part * (3 - 2 * part) : 1);
            if (part < 1) continue;
            if (this.running.get(name) === one) this.running.delete(name);
            one.done?.();
        }
        return this.running.size > 0;
    }
}
