import { CanvasTexture, type Color, Group, Mesh, MeshBasicMaterial, type Plane, PlaneGeometry, Vector3 } from 'three';
import type { Model, Piece, Place } from './model';
import { drawn, lines, pencil } from './pencil';

/** How far over the surface marks lie, mm. */
const over = 0.2;

/** The bench marks of a piece, in its own frame: face side, face edge, and its mark in letters. */
export function benchMarks(model: Model, piece: Piece, ink: Color, clip: Plane[]): Group {
    const marks = new Group();
    const { side, edge, letters } = piece.text.bench;
    const ends = [...strokeOn(side, model.strokes.side), ...strokeOn(edge, model.strokes.edge)];
    marks.add(drawn(lines(ends), pencil(ink, 2.4, clip)));
    if (letters) marks.add(written(letters, piece.text.mark, ink));
    return marks;
}

/** A stroke's lines, two points each, laid on a surface: flat, or bent over a round. */
function strokeOn(place: Place, stroke: readonly number[]): number[] {
    const points: Vector3[] = [];
    for (let i = 0; i + 1 < stroke.length; i += 2) {
        const to = on(place, stroke[i]! * place.height, stroke[i + 1]! * place.height);
        if (i > 0 && place.round > 0) {
            // Straight strokes over a round follow it.
            for (let k = 1; k < 8; k++) points.push(on(place, lerp(stroke[i - 2]!, stroke[i]!, k / 8) * place.height, lerp(stroke[i - 1]!, stroke[i + 1]!, k / 8) * place.height));
        }
        points.push(to);
    }
    return points.slice(1).flatMap((p, i) => [...points[i]!.toArray(), ...p.toArray()]);
}

function on(place: Place, x: number, y: number): Vector3 {
    const [right, up] = [new Vector3(...place.right), new Vector3(...place.up)];
    const out = right.clone().cross(up);
    const point = new Vector3(...place.at).addScaledVector(right, x);
    if (place.round <= 0 || y <= 0) return point.addScaledVector(up, y).addScaledVector(out, over);
    const turn = y / place.round;
    return point.addScaledVector(up, (place.round + over) * Math.sin(turn)).addScaledVector(out, (place.round + over) * Math.cos(turn) - place.round);
}

/** Letters on a surface, as large as their place. */
function written(place: Place, text: string, ink: Color): Mesh {
    const paper = document.createElement('canvas');
    const pen = paper.getContext('2d')!;
    const font = '600 96px "DejaVu Sans Condensed", "Segoe UI", system-ui, sans-serif';
    pen.font = font;
    paper.width = Math.ceil(pen.measureText(text).width) + 8;
    paper.height = 112;
    pen.font = font;
    pen.textBaseline = 'alphabetic';
    pen.fillStyle = `#${ink.getHexString()}`;
    pen.fillText(text, 4, 92);
    const texture = new CanvasTexture(paper);
    texture.colorSpace = 'srgb';
    texture.anisotropy = 8;
    const width = (place.height * paper.width) / paper.height;
    const material = new MeshBasicMaterial({ map: texture, transparent: true, depthWrite: false, polygonOffset: true, polygonOffsetFactor: -1, polygonOffsetUnits: -2 });
    material.addEventListener('dispose', () => texture.dispose());
    const sheet = new Mesh(new PlaneGeometry(width, place.height), material);
    const [right, up] = [new Vector3(...place.right), new Vector3(...place.up)];
    sheet.matrixAutoUpdate = false;
    const out = right.clone().cross(up);
    const middle = new Vector3(...place.at).addScaledVector(right, width / 2).addScaledVector(up, place.height / 2).addScaledVector(out, over);
    sheet.matrix.makeBasis(right, up, out).setPosition(middle);
    sheet.raycast = () => {};
    sheet.renderOrder = 3;
    return sheet;
}

const lerp = (a: number, b: number, t: number) => a + (b - a) * t;
