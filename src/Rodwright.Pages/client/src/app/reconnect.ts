/** The dialog shown while the server is out of reach. A server that came back without this page's memory is asked for the page anew: all is on its shelf. */
export function watchConnection() {
    const dialog = document.getElementById('components-reconnect-modal') as HTMLDialogElement | null;
    if (!dialog) return;
    dialog.addEventListener('components-reconnect-state-changed', e => {
        const state = (e as CustomEvent<{ state: string }>).detail.state;
        if (state === 'show') { if (!dialog.open) dialog.showModal(); }
        else if (state === 'hide') dialog.close();
        else if (state === 'rejected' || state === 'resume-failed') location.reload();
        else if (state === 'failed') void again(dialog);
    });
    document.getElementById('away-reload')?.addEventListener('click', () => location.reload());
}

/** Given up by the framework: asks every other second until the server answers, then loads the page. */
async function again(dialog: HTMLDialogElement) {
    if (!dialog.open) dialog.showModal();
    for (;;) {
        await new Promise(done => setTimeout(done, 2000));
        try {
            if ((await fetch('/health', { cache: 'no-store' })).ok) { location.reload(); return; }
        } catch { /* still away */ }
    }
}
