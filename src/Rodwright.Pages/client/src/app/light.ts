/**
 * Lights things up in every drawing on the page at once, by rules of a style sheet of our own: whatever is redrawn later is lit without being told.
 * Marks draw in their group's colour, so a colour is all it takes; the line grows heavier too, for who does not see the colour.
 */
const sheet = new CSSStyleSheet();
document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];

const rules = new Map<string, string>();

function write() { sheet.replaceSync([...rules.values()].join('\n')); }

const listed = (ids: readonly string[], more = '') => ids.map(id => `[data-of=${CSS.escape(id)}]${more}`).join(',');

/** Lights the things picked, and more faintly what belongs to them. */
export function light(picked: readonly string[], related: readonly string[]) {
    const css: string[] = [];
    if (related.length) css.push(`${listed(related)}{color:var(--accent);stroke-opacity:1}${listed(related, '.hit')}{fill-opacity:.10}`);
    if (picked.length) css.push(`${listed(picked)}{color:var(--accent);stroke-opacity:1;stroke-width:var(--lit)}${listed(picked, '.hit')}{fill-opacity:.22}`);
    rules.set('picked', css.join('\n'));
    write();
}

/** Marks what is wrong. */
export function wrong(ids: readonly string[]) {
    rules.set('wrong', ids.length ? `.rod ${listed(ids).replaceAll(',', ',.rod ')}{color:var(--wrong);stroke-opacity:1}` : '');
    write();
}
