const key = 'rodwright.person';

/** The name this browser's person goes by; empty when none was given. */
export const person = () => localStorage.getItem(key) ?? '';

export const setPerson = (name: string) => localStorage.setItem(key, name);
