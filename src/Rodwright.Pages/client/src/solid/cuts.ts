import { Vector3 } from 'three';
import type { CutPlace, Piece } from './model';

/** How far before the wood the cutter is looked for, mm. */
const before = 0.3;

/** The cut that made the face of a piece at a point of it; where several did, the smallest. Point and normal are in the piece's own frame. */
export function cutAt(piece: Piece, point: Vector3, normal: Vector3): CutPlace | null {
    const out = point.clone().addScaledVector(normal, before);
    const found = piece.text.cuts.filter((cut) => holds(piece.text.faces[cut.face]!, cut, out));
    return found.sort((a, b) => areaOf(a.outline) - areaOf(b.outline))[0] ?? null;
}

function holds(face: readonly number[], cut: CutPlace, point: Vector3): boolean {
    const [origin, u, v] = [0, 3, 6].map((i) => new Vector3(face[i], face[i + 1], face[i + 2])) as [Vector3, Vector3, Vector3];
    const from = point.clone().sub(origin);
    const high = from.dot(u.clone().cross(v));
    return high < before / 2 && high > -cut.depth - before / 2 && within(cut.outline, from.dot(u), from.dot(v));
}

function within(outline: readonly number[], x: number, y: number): boolean {
    let inside = false;
    for (let i = 0, j = outline.length - 2; i < outline.length; j = i, i += 2) {
        const [ax, ay, bx, by] = [outline[i]!, outline[i + 1]!, outline[j]!, outline[j + 1]!];
        if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
    }
    return inside;
}

function areaOf(outline: readonly number[]): number {
    let twice = 0;
    for (let i = 0, j = outline.length - 2; i < outline.length; j = i, i += 2) twice += outline[j]! * outline[i + 1]! - outline[i]! * outline[j + 1]!;
    return Math.abs(twice) / 2;
}
