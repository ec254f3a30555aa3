import { type Color, Group, type Plane } from 'three';
import { type VolumeText, volume } from './cut';
import { drawn, lines, pencil } from './pencil';

/** Where the headroom is least, as the server tells it: the ends of the plumb line, and the piece of floor or ceiling above it. */
export interface LeastText extends VolumeText {
    readonly words: string;
    readonly low: [number, number, number];
    readonly high: [number, number, number];
}

/** Half the length of the crosses at the ends of the plumb line, mm. */
const cross = 70;

/** The plumb line, seen through all that stands before it, a level cross at either end, and the piece above. */
export function leastShape(least: LeastText, accent: Color, clip: Plane[]): Group {
    const shape = new Group();
    if (least.points.length > 0) shape.add(volume(least, accent, clip));
    const ends = [...least.low, ...least.high];
    for (const [x, y, z] of [least.low, least.high]) ends.push(x - cross, y, z, x + cross, y, z, x, y - cross, z, x, y + cross, z);
    const pen = pencil(accent, 3, clip);
    pen.depthTest = false;
    const line = drawn(lines(ends), pen);
    line.renderOrder = 7;
    shape.add(line);
    return shape;
}
