import { type Camera, type Color, Group, type Object3D, type Plane, Vector3 } from 'three';
import { type VolumeText, volume } from './cut';
import { drawn, lines, pencil } from './pencil';
import { disposeOf } from './stage';

/** Where the headroom is least, as the server tells it: the ends of the plumb line, and the piece of floor or ceiling above it. */
export interface LeastText extends VolumeText {
    readonly words: string;
    readonly low: [number, number, number];
    readonly high: [number, number, number];
}

/** Half the length of the crosses at the ends of the plumb line, mm. */
const cross = 70;

/** The plumb line, seen through all that stands before it, a level cross at either end, and the piece above. */
function shapeOf(least: LeastText, accent: Color, clip: Plane[]): Group {
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

/** The mark of the least headroom in a stair, and whether it is wanted. */
export class Plumb {
    wanted = true;
    private shape: Group | null = null;
    private text: LeastText | null = null;
    private root: Object3D | null = null;

    /** Whether there is a place to mark. */
    get known(): boolean {
        return this.text !== null;
    }

    /** Takes another place; null for none. */
    tell(text: LeastText | null): void {
        this.text = text;
    }

    /** Draws the mark below a stair's root. */
    lay(root: Object3D, accent: Color, clip: Plane[], seen: boolean): void {
        this.clear();
        this.root = root;
        if (!this.text) return;
        this.shape = shapeOf(this.text, accent, clip);
        root.add(this.shape);
        this.see(seen);
    }

    /** Shows it, where it is wanted, or hides it. */
    see(seen: boolean): void {
        if (this.shape) this.shape.visible = this.wanted && seen;
    }

    /** The ends of the line as it is seen, metres; none while it is not. */
    get ends(): Vector3[] {
        return this.shape?.visible ? [this.text!.low, this.text!.high].map((end) => new Vector3(...end).applyMatrix4(this.root!.matrixWorld)) : [];
    }

    /** The middle of the line on a canvas; null where it is not seen. */
    on(canvas: HTMLElement, camera: Camera): { x: number; y: number } | null {
        const [low, high] = this.ends;
        if (!low || !high) return null;
        camera.updateMatrixWorld();
        const { x, y, z } = low.lerp(high, 0.5).project(camera);
        return z > 1 || Math.abs(x) > 1 || Math.abs(y) > 1 ? null : { x: ((x + 1) / 2) * canvas.clientWidth, y: ((1 - y) / 2) * canvas.clientHeight };
    }

    /** Takes the mark away. */
    clear(): void {
        if (this.shape) disposeOf(this.shape);
        this.shape = null;
    }
}
