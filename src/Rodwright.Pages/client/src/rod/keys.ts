import { View } from './view';

const step = 60;

/** The same by keyboard, when the board has the focus. Returns what ends it. */
export function listenKeys(view: View, fit: () => void): () => void {
    const host = view.window;
    const press = (e: KeyboardEvent) => {
        if (e.target !== host || e.ctrlKey || e.metaKey || e.altKey) return;
        const { width, height } = host.getBoundingClientRect();
        const far = e.shiftKey ? 5 * step : step;
        switch (e.key) {
            case 'ArrowLeft': view.pan(far, 0); break;
            case 'ArrowRight': view.pan(-far, 0); break;
            case 'ArrowUp': view.pan(0, far); break;
            case 'ArrowDown': view.pan(0, -far); break;
            case '+': case '=': view.zoom(1.25, width / 2, height / 2); break;
            case '-': view.zoom(0.8, width / 2, height / 2); break;
            case '0': case 'Home': fit(); break;
            default: return;
        }
        e.preventDefault();
    };
    host.addEventListener('keydown', press);
    return () => host.removeEventListener('keydown', press);
}
