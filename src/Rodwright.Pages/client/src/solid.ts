import type { CutText } from './solid/cut';
import type { LeastText } from './solid/least';
import { Panel } from './solid/panel';
import { View } from './solid/view';

/** The component that the view belongs to. */
interface Owner {
    invokeMethodAsync(method: 'Picked', id: string): Promise<unknown>;
}

/** What the component can ask of the view. */
export interface Solid {
    /** Shows the scene at an address; an empty one shows nothing new. */
    show(source: string): Promise<void>;
    /** Lights up what is picked and what is wrong. */
    pick(picked: string[], wrong: string[]): void;
    /** Lays a cut's volume over the stair: its JSON, or null for none. */
    cut(text: string | null): void;
    /** Marks where the headroom is least: its JSON, or null for nowhere. */
    least(text: string | null): void;
    dispose(): void;
}

/** Brings a host element to life: a canvas in it, and whatever buttons it has. Without WebGL its words for that case are shown instead. */
export function attach(host: HTMLElement, owner: Owner): Solid {
    const canvas = host.querySelector('canvas')!;
    let panel: Panel | null = null;
    let view: View;
    try {
        view = new View(canvas, {
            picked: (id) => void owner.invokeMethodAsync('Picked', id ?? ''),
            said: (words) => panel?.say(words),
            marked: (at) => panel?.mark(at),
            changed: () => panel?.show(),
        });
    } catch {
        return inWords(host);
    }
    panel = new Panel(host, view);
    host.dataset['state'] = 'empty';
    // For measuring and for tests: the view of a host.
    (host as HTMLElement & { solidView?: View }).solidView = view;
    return {
        async show(source) {
            if (source === '') return;
            host.dataset['state'] = 'loading';
            try {
                await view.show(source);
                host.dataset['state'] = 'ready';
            } catch (error) {
                if ((error as Error).name === 'AbortError') return; // a newer one is on its way
                host.dataset['state'] = 'failed';
                panel.say('The solid model could not be fetched; the rest of the page goes on working. Try again, or download the model.');
            }
        },
        pick: (picked, wrong) => view.pick(picked, wrong),
        cut: (text) => view.showCut(text === null || text === '' ? null : (JSON.parse(text) as CutText)),
        least: (text) => view.showLeast(text === null || text === '' ? null : (JSON.parse(text) as LeastText)),
        dispose() {
            panel.dispose();
            view.dispose();
            delete (host as HTMLElement & { solidView?: View }).solidView;
        },
    };
}

/** The host without a picture: its words for that case, and the model to take away. */
function inWords(host: HTMLElement): Solid {
    host.dataset['state'] = 'words';
    return { show: async () => {}, pick: () => {}, cut: () => {}, least: () => {}, dispose: () => {} };
}
