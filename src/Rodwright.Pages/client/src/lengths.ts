/**
 * Lengths that follow a finger or a slider and so are told here: millimetres, or feet, inches and sixteenths where the job is in inches, as the server's own Units writes them.
 */
export function told(mm: number, units: string | undefined): string {
    if (units !== 'inches') return `${Math.round(mm)}`;
    const sixteenths = Math.round((Math.abs(mm) / 25.4) * 16);
    const inches = Math.floor(sixteenths / 16);
    const feet = inches >= 48 ? Math.floor(inches / 12) : 0;
    let [over, parts] = [sixteenths % 16, 16];
    while (over > 0 && over % 2 === 0) [over, parts] = [over / 2, parts / 2];
    const whole = inches - 12 * feet;
    const fraction = over > 0 ? `${over}/${parts}` : '';
    const said = whole === 0 && feet === 0 && fraction ? fraction : fraction ? `${whole} ${fraction}` : `${whole}`;
    return `${mm < 0 && sixteenths > 0 ? '-' : ''}${feet > 0 ? `${feet}' ` : ''}${said}"`;
}
