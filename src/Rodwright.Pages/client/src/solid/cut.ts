import { BufferGeometry, type Color, Float32BufferAttribute, Group, Mesh, MeshBasicMaterial, type Plane } from 'three';
import { drawn, lines, pencil } from './pencil';

/** A volume as the server tells it: millimetres of the stair, z up. */
export interface VolumeText {
    readonly points: number[];
    readonly triangles: number[];
    readonly lines: number[];
}

/** The volume of a cut. */
export interface CutText extends VolumeText {
    readonly id: string;
    readonly part: string;
}

/** A volume laid over the stair: seen through the wood faintly, in full where nothing is before it. */
export function volume(cut: VolumeText, accent: Color, clip: Plane[]): Group {
    const shape = new Group();
    const body = new BufferGeometry();
    body.setAttribute('position', new Float32BufferAttribute(cut.points, 3));
    body.setIndex(cut.triangles);
    const through = new MeshBasicMaterial({ color: accent, transparent: true, opacity: 0.3, depthTest: false, depthWrite: false, clippingPlanes: clip });
    const before = new MeshBasicMaterial({ color: accent, transparent: true, opacity: 0.45, depthWrite: false, clippingPlanes: clip, polygonOffset: true, polygonOffsetFactor: -2, polygonOffsetUnits: -2 });
    for (const [material, order] of [[through, 4], [before, 5]] as const) {
        const mesh = new Mesh(body, material);
        mesh.renderOrder = order;
        mesh.raycast = () => {};
        shape.add(mesh);
    }
    const ends = cut.lines.flatMap((i) => cut.points.slice(3 * i, 3 * i + 3));
    const edges = pencil(accent, 2.2, clip);
    edges.depthTest = false;
    const lined = drawn(lines(ends), edges);
    lined.renderOrder = 6;
    shape.add(lined);
    return shape;
}
