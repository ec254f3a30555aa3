import { type BufferGeometry, type Color, Group, type Material, Mesh, type MeshStandardMaterial, type Object3D, type Plane, type Quaternion, type ShaderMaterial, Vector3 } from 'three';
import { GLTFLoader } from 'three/addons/loaders/GLTFLoader.js';
import { drawn, linesOf, pencil } from './pencil';
import { heartOf, Plaster, Timber, type Years } from './timber';

/** Where something is pencilled on a piece: see the scene's writer. Millimetres of the piece's own frame. */
export interface Place {
    readonly at: [number, number, number];
    readonly right: [number, number, number];
    readonly up: [number, number, number];
    readonly height: number;
    readonly round: number;
}

/** A cut: on which face, its outline there (x, y in turn), how deep. */
export interface CutPlace {
    readonly id: string;
    readonly face: number;
    readonly depth: number;
    readonly outline: number[];
}

interface PieceText {
    readonly part: string;
    readonly mark: string;
    readonly kind: string;
    /** Frames of its faces: origin, u and v in turn. */
    readonly faces: number[][];
    readonly cuts: CutPlace[];
    readonly apart: [number, number, number, number, number][];
    readonly bench: { readonly side: Place; readonly edge: Place; readonly letters: Place | null };
    readonly grain?: [number, number, number];
    readonly sheet?: boolean;
}

/** One part of the stair as it stands in the scene. */
export interface Piece {
    readonly id: string;
    readonly name: string;
    readonly text: PieceText;
    /** Its node: millimetres of its own frame below it. */
    readonly node: Object3D;
    readonly wood: Mesh<BufferGeometry, Timber>;
    readonly lines: Mesh<BufferGeometry, ShaderMaterial>;
    /** Its timber's colour in the file. */
    readonly timber: Color;
    readonly years: Years;
    /** Where its node stands when the stair is whole. */
    readonly home: Vector3;
    readonly turn: Quaternion;
    /** The points of its wood that lie furthest out, whichever way one looks: enough of them to fit it in a picture. */
    readonly outmost: readonly Vector3[];
}

/** One piece of the room: never picked, hidden on request and where it would hide the stair. */
export interface RoomPiece {
    readonly kind: string;
    readonly node: Object3D;
    readonly face: Mesh<BufferGeometry, Plaster>;
    readonly lines: Mesh<BufferGeometry, ShaderMaterial>;
    /** The way its seen face looks, and a point of that face, metres, y up. */
    readonly looks: Vector3;
    readonly at: Vector3;
}

/** The names of the views. */
export type ViewName = 'front' | 'side' | 'plan' | 'three-quarter';

/** A scene as read from its file. */
export interface Model {
    /** The node that turns the stair's millimetres, z up, into metres, y up. */
    readonly root: Object3D;
    readonly pieces: readonly Piece[];
    readonly room: readonly RoomPiece[];
    /** From the stair to the eye, metres' axes. */
    readonly views: Record<ViewName, Vector3>;
    /** Shapes of the bench marks, one high: x, y in turn. */
    readonly strokes: { readonly side: number[]; readonly edge: number[] };
}

/** A direction of the stair, z up, as a direction of the scene, y up. */
export const upright = ([x, y, z]: readonly number[]): Vector3 => new Vector3(x!, z!, -y!);

/** Reads a scene's file. All pieces and lines are cut at the planes given. */
export async function readModel(file: ArrayBuffer, clip: Plane[]): Promise<Model> {
    const { scene } = await new GLTFLoader().parseAsync(file, '');
    const root = scene.children[0]!;
    const text = root.userData as { views: Record<ViewName, [number, number, number]>; strokes: { side: number[]; edge: number[] } };
    const shared = new Map<BufferGeometry, ReturnType<typeof linesOf>>();
    const [pieces, room]: [Piece[], RoomPiece[]] = [[], []];
    root.updateMatrixWorld(true);
    for (const node of [...root.children]) {
        const found = [...node.children] as Mesh[];
        const [wood, arrises, rounds] = found;
        let edges = shared.get(wood!.geometry);
        if (!edges) shared.set(wood!.geometry, (edges = linesOf(arrises!.geometry, rounds?.geometry ?? null)));
        const colour = (wood!.material as MeshStandardMaterial).color;
        for (const child of found) {
            child.removeFromParent();
            if (child !== wood) child.geometry.dispose();
            (child.material as Material).dispose();
        }
        const lines = drawn(edges, pencil(colour, 1, clip)) as RoomPiece['lines'];
        if (typeof node.userData['part'] === 'string') pieces.push(pieceOf(node, wood!.geometry, lines, colour, clip, pieces.length));
        else if (typeof node.userData['room'] === 'string') room.push(roomPieceOf(node, wood!.geometry, lines, clip));
        else continue;
        node.add(lines);
    }
    const views = Object.fromEntries(Object.entries(text.views).map(([name, way]) => [name, upright(way).normalize()])) as Record<ViewName, Vector3>;
    const holder = new Group();
    holder.add(root);
    return { root, pieces, room, views, strokes: text.strokes };
}

function pieceOf(node: Object3D, geometry: BufferGeometry, lines: Piece['lines'], timber: Color, clip: Plane[], seed: number): Piece {
    const text = node.userData as PieceText;
    geometry.computeBoundingBox();
    const box = geometry.boundingBox!;
    const grain = new Vector3(...(text.grain ?? [1, 0, 0]));
    const years = { grain, heart: heartOf(box.getCenter(new Vector3()), grain, box.max.z - box.min.z, seed), sheet: text.sheet === true };
    const wood = new Mesh(geometry, new Timber(years, clip));
    wood.castShadow = wood.receiveShadow = true;
    wood.userData['part'] = text.part;
    node.add(wood);
    const name = (node.userData['name'] as string | undefined) ?? node.name;
    return { id: text.part, name, text, node, wood, lines, timber: timber.clone(), years, home: node.position.clone(), turn: node.quaternion.clone(), outmost: outmostOf(geometry) };
}

function roomPieceOf(node: Object3D, geometry: BufferGeometry, lines: RoomPiece['lines'], clip: Plane[]): RoomPiece {
    const face = new Mesh(geometry, new Plaster(clip));
    face.receiveShadow = true;
    face.raycast = () => {};
    node.add(face);
    const looks = upright(node.userData['looks'] as number[]);
    geometry.computeBoundingBox();
    const box = geometry.boundingBox!.clone().applyMatrix4(node.matrixWorld);
    const at = box.getCenter(new Vector3());
    at.addScaledVector(looks, box.getSize(new Vector3()).dot(new Vector3(Math.abs(looks.x), Math.abs(looks.y), Math.abs(looks.z))) / 2);
    return { kind: node.userData['room'] as string, node, face, lines, looks, at };
}

/** The furthest points of a shape in 98 directions. */
function outmostOf(geometry: BufferGeometry): Vector3[] {
    const at = geometry.getAttribute('position').array;
    const points = new Set<number>();
    for (const [i, j, k] of ways) {
        let [best, far] = [0, -Infinity];
        for (let p = 0; p < at.length; p += 3) {
            const reach = i * at[p]! + j * at[p + 1]! + k * at[p + 2]!;
            if (reach > far) [best, far] = [p, reach];
        }
        points.add(best);
    }
    return [...points].map((p) => new Vector3().fromArray(at, p));
}

const ways: [number, number, number][] = [];
for (const i of [-2, -1, 0, 1, 2]) for (const j of [-2, -1, 0, 1, 2]) for (const k of [-2, -1, 0, 1, 2]) if (Math.max(Math.abs(i), Math.abs(j), Math.abs(k)) === 2) ways.push([i, j, k]);
