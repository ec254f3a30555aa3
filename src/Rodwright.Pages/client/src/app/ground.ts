const key = 'rodwright.ground';

/** Paper or dark board: as chosen, else as the system asks. */
export function ground(): string {
    const kept = localStorage.getItem(key);
    return kept === 'dark' || kept === 'paper' ? kept : matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'paper';
}

export function setGround(name: string) {
    localStorage.setItem(key, name);
    document.documentElement.dataset.ground = name;
}
