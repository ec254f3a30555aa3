import { BufferGeometry, type Color, Float32BufferAttribute, Group, Mesh, Plane, ShaderMaterial, Vector3 } from 'three';
import type { Model, Piece, RoomPiece } from './model';
import { drawn, lines, pencil, redraw } from './pencil';
import { type Cut, Slice } from './slice';
import { yearsText } from './timber';
import type { Tones } from './tones';

/** The ways a section can lie: square to one axis of the stair. */
export type Axis = 'x' | 'y' | 'z';

const vertex = /* glsl */ `
    attribute vec3 inside, grain, heart, tone;
    attribute float sheet, hatch;
    varying vec3 vInside, vGrain, vHeart, vTone;
    varying float vSheet, vHatch;

    void main() {
        vInside = inside; vGrain = grain; vHeart = heart; vTone = tone; vSheet = sheet; vHatch = hatch;
        gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
    }`;

const fragment = /* glsl */ `
    uniform vec3 ink;
    uniform float step_;
    varying vec3 vInside, vGrain, vHeart, vTone;
    varying float vSheet, vHatch;
    ${yearsText}

    void main() {
        vec3 colour = vTone;
        if (vSheet > -0.5) {
            float seen;
            float year = years(vInside, vGrain, vHeart, vSheet, seen);
            float h = vHatch / step_;
            float line = 1.0 - smoothstep(0.3, 0.95, abs(fract(h) - 0.5) / fwidth(h));
            colour = mix(colour, ink, 0.42 * line * (1.0 - seen));
            colour = mix(colour, ink, 0.30 * year * seen);
        }
        gl_FragColor = vec4(colour, 1.0);
        #include <colorspace_fragment>
    }`;

/** A section through the stair: everything before a plane is taken away, and what the plane cuts is filled and lined in. */
export class Section {
    /** What the materials of the scene are cut by; shared with them. */
    readonly planes: Plane[] = [];
    readonly node = new Group();
    axis: Axis | null = null;
    /** Where it lies along its axis, mm of the stair. */
    level = 0;
    private readonly faces = new Mesh(new BufferGeometry(), new ShaderMaterial({ uniforms: { ink: { value: null }, step_: { value: 8 } }, vertexShader: vertex, fragmentShader: fragment, side: 2 }));
    private readonly outline: Mesh<BufferGeometry, ShaderMaterial>;
    private readonly slices = new WeakMap<BufferGeometry, Slice>();
    private readonly plane = new Plane();
    private owners: (Piece | null)[] = [];
    private front = true;

    constructor(private tones: Tones) {
        this.outline = drawn(lines([]), pencil(tones.ink, 1.7, [])) as typeof this.outline;
        this.faces.frustumCulled = false;
        this.node.add(this.faces, this.outline);
        this.node.visible = false;
        this.paint(tones);
    }

    paint(tones: Tones): void {
        this.tones = tones;
        this.faces.material.uniforms['ink']!.value = tones.ink;
        redraw(this.outline.material, tones.ink, 1.7);
    }

    /** The piece whose cut face a ray has met there. */
    ownerOf(triangle: number): Piece | null {
        return this.owners[triangle] ?? null;
    }

    /** The cut faces, for rays. */
    get cutFaces(): Mesh {
        return this.faces;
    }

    /** Whether a point of the scene is left standing. */
    keeps(point: Vector3): boolean {
        return this.planes.length === 0 || this.plane.distanceToPoint(point) > -1e-4;
    }

    /** Takes away the side the eye is on; whether that has changed. */
    face(model: Model, eye: Vector3): boolean {
        if (this.axis === null) return false;
        const at = model.root.worldToLocal(eye.clone())[this.axis];
        const front = at > this.level;
        if (front === this.front) return false;
        this.front = front;
        return true;
    }

    /** Hatching keeps its distance on the screen: mm of timber to one pixel. */
    scale(pixel: number): void {
        this.faces.material.uniforms['step_']!.value = 2 ** Math.ceil(Math.log2(6.5 * pixel));
    }

    /** Cuts again. Pieces that are hidden are not cut. */
    cut(model: Model): void {
        this.node.visible = this.axis !== null;
        this.planes.length = 0;
        if (this.axis === null) return;
        const normal = new Vector3();
        normal[this.axis] = this.front ? -1 : 1;
        const inStair = new Plane(normal, this.front ? this.level : -this.level);
        this.plane.copy(inStair).applyMatrix4(model.root.matrixWorld);
        this.planes.push(this.plane);
        const made = new Made();
        for (const piece of model.pieces) {
            if (!piece.node.visible) continue;
            made.add(piece.node.matrix.elements, this.sliced(piece, inStair), piece, piece.wood.material.color.clone().multiplyScalar(0.94), this.axis);
        }
        for (const part of model.room) {
            if (part.node.visible) made.add(part.node.matrix.elements, this.sliced(part, inStair), null, this.tones.paper.clone().lerp(this.tones.ink, 0.42), this.axis);
        }
        this.owners = made.owners;
        this.faces.geometry.dispose();
        this.faces.geometry = made.geometry();
        this.outline.geometry.dispose();
        this.outline.geometry = lines(made.outline);
    }

    private sliced(one: Piece | RoomPiece, plane: Plane): Cut {
        const geometry = 'wood' in one ? one.wood.geometry : one.face.geometry;
        let slice = this.slices.get(geometry);
        if (!slice) this.slices.set(geometry, (slice = new Slice(geometry)));
        const own = plane.clone().applyMatrix4(one.node.matrix.clone().invert());
        return slice.by(own.normal, -own.constant);
    }
}

/** What has been cut so far, all pieces together. */
class Made {
    readonly owners: (Piece | null)[] = [];
    readonly outline: number[] = [];
    private readonly numbers = { position: [] as number[], inside: [] as number[], grain: [] as number[], heart: [] as number[], tone: [] as number[], sheet: [] as number[], hatch: [] as number[] };

    add(frame: readonly number[], cut: Cut, piece: Piece | null, tone: Color, axis: Axis): void {
        const place = (p: Vector3) => new Vector3(
            frame[0]! * p.x + frame[4]! * p.y + frame[8]! * p.z + frame[12]!,
            frame[1]! * p.x + frame[5]! * p.y + frame[9]! * p.z + frame[13]!,
            frame[2]! * p.x + frame[6]! * p.y + frame[10]! * p.z + frame[14]!);
        // Neighbouring pieces are hatched opposite ways and a little apart.
        const seed = this.owners.length % 7;
        const lean = this.owners.length % 2 === 0 ? 1 : -1;
        const { position, inside, grain, heart, tone: tones, sheet, hatch } = this.numbers;
        for (const p of cut.faces) {
            const at = place(p);
            position.push(at.x, at.y, at.z);
            inside.push(p.x, p.y, p.z);
            grain.push(...(piece?.years.grain.toArray() ?? [1, 0, 0]));
            heart.push(...(piece?.years.heart.toArray() ?? [0, 0, 0]));
            tones.push(tone.r, tone.g, tone.b);
            sheet.push(piece === null ? -1 : piece.years.sheet ? 1 : 0);
            const [a, b] = axis === 'z' ? [at.x, at.y] : axis === 'y' ? [at.x, at.z] : [at.y, at.z];
            hatch.push((a + lean * b) * Math.SQRT1_2 + seed);
        }
        for (let i = 0; i < cut.faces.length; i += 3) this.owners.push(piece);
        for (const p of cut.outline) {
            const at = place(p);
            this.outline.push(at.x, at.y, at.z);
        }
    }

    geometry(): BufferGeometry {
        const geometry = new BufferGeometry();
        for (const [name, numbers] of Object.entries(this.numbers)) geometry.setAttribute(name, new Float32BufferAttribute(numbers, name === 'sheet' || name === 'hatch' ? 1 : 3));
        return geometry;
    }
}
