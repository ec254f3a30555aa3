import { type BufferGeometry, ShapeUtils, Vector2, Vector3 } from 'three';

/** A closed shape cut in two: what the plane shows of its wood. Coordinates are the shape's own. */
export interface Cut {
    /** Corners of triangles, three points each. */
    readonly faces: Vector3[];
    /** Lines round the cut, two points each. */
    readonly outline: Vector3[];
}

/** A closed mesh made ready to be cut by planes, again and again. */
export class Slice {
    private readonly points: Float32Array;
    private readonly corners: Uint32Array;

    constructor(geometry: BufferGeometry) {
        // Corners that lie in one place are one here, whatever face they belong to: then every edge has two triangles.
        const at = geometry.getAttribute('position');
        const known = new Map<string, number>();
        const points: number[] = [];
        const number = new Uint32Array(at.count);
        for (let i = 0; i < at.count; i++) {
            const [x, y, z] = [at.getX(i), at.getY(i), at.getZ(i)];
            const key = `${Math.round(x * 1e3)},${Math.round(y * 1e3)},${Math.round(z * 1e3)}`;
            let n = known.get(key);
            if (n === undefined) {
                known.set(key, (n = points.length / 3));
                points.push(x, y, z);
            }
            number[i] = n;
        }
        this.points = new Float32Array(points);
        this.corners = Uint32Array.from(geometry.index!.array, (i) => number[i]!);
    }

    /** Cuts where normal · p = level. */
    by(normal: Vector3, level: number): Cut {
        const loops = this.loops(normal, level);
        const flat = flattened(normal);
        const rings = loops.map((points) => ({ points, ring: points.map(flat), area: 0 })).filter((r) => Math.abs((r.area = ShapeUtils.area(r.ring))) > 0.01);
        const outline = loops.flatMap((loop) => loop.flatMap((p, i) => [p, loop[(i + 1) % loop.length]!]));
        if (rings.length === 0) return { faces: [], outline };
        // All loops run the same way round the wood: the largest is an outer one, and holes run against it.
        const sign = Math.sign(rings.reduce((a, b) => (Math.abs(b.area) > Math.abs(a.area) ? b : a)).area);
        const outer = rings.filter((r) => r.area * sign > 0).sort((a, b) => Math.abs(a.area) - Math.abs(b.area));
        const holes = new Map(outer.map((o) => [o, [] as typeof rings]));
        for (const hole of rings.filter((r) => r.area * sign < 0)) {
            const home = outer.find((o) => holds(o.ring, hole.ring[0]!));
            if (home) holes.get(home)!.push(hole);
        }
        const faces: Vector3[] = [];
        for (const [home, inside] of holes) {
            const all = [home, ...inside].flatMap((r) => r.points);
            for (const [a, b, c] of ShapeUtils.triangulateShape(home.ring, inside.map((h) => h.ring))) faces.push(all[a!]!, all[b!]!, all[c!]!);
        }
        return { faces, outline };
    }

    private loops(normal: Vector3, level: number): Vector3[][] {
        const { points, corners } = this;
        const count = points.length / 3;
        const high = new Float64Array(count);
        for (let i = 0; i < count; i++) high[i] = normal.x * points[3 * i]! + normal.y * points[3 * i + 1]! + normal.z * points[3 * i + 2]! - level;
        // From each edge that the plane crosses to the next one: a triangle is entered where it rises through the plane and left where it falls.
        const next = new Map<number, number[]>();
        for (let t = 0; t < corners.length; t += 3) {
            let [enter, leave] = [-1, -1];
            for (let k = 0; k < 3; k++) {
                const [a, b] = [corners[t + k]!, corners[t + ((k + 1) % 3)]!];
                if (high[a]! < 0 && high[b]! >= 0) enter = Math.min(a, b) * count + Math.max(a, b);
                if (high[a]! >= 0 && high[b]! < 0) leave = Math.min(a, b) * count + Math.max(a, b);
            }
            if (enter < 0) continue;
            const known = next.get(enter);
            if (known) known.push(leave);
            else next.set(enter, [leave]);
        }
        const crossing = (edge: number): Vector3 => {
            const [a, b] = [Math.floor(edge / count), edge % count];
            const part = high[a]! / (high[a]! - high[b]!);
            return new Vector3(...[0, 1, 2].map((k) => points[3 * a + k]! + (points[3 * b + k]! - points[3 * a + k]!) * part) as [number, number, number]);
        };
        const loops: Vector3[][] = [];
        for (const start of next.keys()) {
            const loop: Vector3[] = [];
            for (let edge = start; ; ) {
                const on = next.get(edge)?.pop();
                if (on === undefined) break;
                loop.push(crossing(edge));
                edge = on;
            }
            if (loop.length > 2) loops.push(loop);
        }
        return loops;
    }
}

/** Looks along the axis that the plane is squarest to. */
function flattened(normal: Vector3): (p: Vector3) => Vector2 {
    const [x, y, z] = [Math.abs(normal.x), Math.abs(normal.y), Math.abs(normal.z)];
    if (z >= x && z >= y) return (p) => new Vector2(p.x, p.y);
    return x >= y ? (p) => new Vector2(p.y, p.z) : (p) => new Vector2(p.x, p.z);
}

function holds(ring: readonly Vector2[], p: Vector2): boolean {
    let inside = false;
    for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
        const [a, b] = [ring[i]!, ring[j]!];
        if (a.y > p.y !== b.y > p.y && p.x < ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y) + a.x) inside = !inside;
    }
    return inside;
}
