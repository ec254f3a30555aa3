/** Shows the rod as far as it is drawn: every line up to a number, that one strong. */
export function showLine(sheet: SVGSVGElement, number: number) {
    for (const line of sheet.querySelectorAll<SVGGElement>('[data-line]')) {
        const n = Number(line.dataset.line);
        line.classList.toggle('ahead', n > number);
        line.classList.toggle('fresh', n === number);
    }
}
