import type { Program } from '../rod/handles';

/** Keys that work anywhere on the bench but in a field being typed in. Returns what ends it. */
export function benchKeys(program: Program) {
    const press = (e: KeyboardEvent) => {
        const typing = e.target instanceof HTMLElement && e.target.closest('input:not([type=checkbox]):not([type=range]),textarea,select');
        const command = e.ctrlKey || e.metaKey;
        if (command && !e.altKey && e.key.toLowerCase() === 'z' && !typing) {
            e.preventDefault();
            void program.invokeMethodAsync(e.shiftKey ? 'RedoKey' : 'UndoKey');
        } else if (command && e.key.toLowerCase() === 'y' && !typing) {
            e.preventDefault();
            void program.invokeMethodAsync('RedoKey');
        }
    };
    document.addEventListener('keydown', press);
    return { dispose: () => document.removeEventListener('keydown', press) };
}
