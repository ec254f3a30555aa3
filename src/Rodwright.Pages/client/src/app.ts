import { ground, setGround } from './app/ground';
import { pressBoards } from './app/boards';
import { reachReadings } from './app/reach';
import { watchConnection } from './app/reconnect';

export { benchKeys } from './app/keys';
export { light, wrong } from './app/light';
export { person, setPerson } from './app/person';
export { ground, setGround };

document.documentElement.dataset.ground = ground();
watchConnection();
reachReadings();
pressBoards();

/** Brings the first of what a selector finds into sight. */
export function bring(selector: string) { document.querySelector(selector)?.scrollIntoView({ block: 'center' }); }

/** Shows a dialog of the page over everything else, or puts it away. */
export function dialog(element: HTMLDialogElement, open: boolean) {
    if (open && !element.open) element.showModal();
    else if (!open && element.open) element.close();
}
