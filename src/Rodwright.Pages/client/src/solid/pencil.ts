import { BufferAttribute, BufferGeometry, type Color, Mesh, type Plane, ShaderMaterial, Vector2 } from 'three';

/** Shared by all pencils: how large the canvas is, in CSS pixels, how large one of them is at distance 1, and how near the eye sees. */
export const sheet = { size: { value: new Vector2(1, 1) }, pixel: { value: 0.001 }, near: { value: 0.01 } };

const vertex = /* glsl */ `
    attribute vec3 from, to, left, right;
    uniform vec2 size;
    uniform float pixel, near, width;
    varying float across;
    #include <clipping_planes_pars_vertex>

    void main() {
        vec4 a = modelViewMatrix * vec4(from, 1.0);
        vec4 b = modelViewMatrix * vec4(to, 1.0);
        gl_Position = vec4(2.0, 2.0, 2.0, 1.0); // nowhere
        across = 0.0;
        // Within a round a line is seen only where one side looks at the eye and the other away.
        if (dot(left, left) > 0.0 && dot(normalMatrix * left, a.xyz) * dot(normalMatrix * right, a.xyz) > 0.0) return;
        if (a.z > -near && b.z > -near) return;
        if (a.z > -near) a = mix(a, b, (-near - a.z) / (b.z - a.z));
        if (b.z > -near) b = mix(b, a, (-near - b.z) / (a.z - b.z));
        vec4 mvPosition = position.x < 0.5 ? a : b;
        #include <clipping_planes_vertex>
        // Lifted towards the eye by its own width, so that the surface it lies on does not swallow half of it.
        float lift = 1.0 - 1.2 * pixel;
        vec4 start = projectionMatrix * vec4(a.xyz * lift, 1.0);
        vec4 end = projectionMatrix * vec4(b.xyz * lift, 1.0);
        vec2 run = (end.xy / end.w - start.xy / start.w) * size;
        run /= max(length(run), 1e-4);
        vec2 square = vec2(-run.y, run.x);
        float half_ = 0.5 * width + 0.75;
        across = position.y * half_;
        gl_Position = position.x < 0.5 ? start : end;
        vec2 aside = square * position.y * half_ + run * (position.x * 2.0 - 1.0) * 0.35 * width;
        gl_Position.xy += aside * 2.0 / size * gl_Position.w;
    }`;

const fragment = /* glsl */ `
    uniform vec3 colour;
    uniform float width;
    varying float across;
    #include <clipping_planes_pars_fragment>

    void main() {
        #include <clipping_planes_fragment>
        float edge = clamp(0.5 * width + 0.5 - abs(across), 0.0, 1.0);
        // The tooth of the paper.
        float tooth = fract(sin(dot(floor(gl_FragCoord.xy), vec2(12.9898, 78.233))) * 43758.5453);
        gl_FragColor = vec4(colour, edge * (0.86 + 0.14 * tooth));
        #include <colorspace_fragment>
    }`;

/** A pencil: its colour, and its width in CSS pixels. */
export function pencil(colour: Color, width: number, clip: Plane[]): ShaderMaterial {
    return new ShaderMaterial({
        uniforms: { ...sheet, colour: { value: colour.clone() }, width: { value: width } },
        vertexShader: vertex, fragmentShader: fragment, transparent: true, depthWrite: false, clipping: true, clippingPlanes: clip,
    });
}

/** Takes another pencil in hand. */
export function redraw(material: ShaderMaterial, colour: Color, width: number): void {
    (material.uniforms['colour']!.value as Color).copy(colour);
    material.uniforms['width']!.value = width;
}

/**
 * Straight lines, each two points; for lines within rounds the normals at either side of each. Numbers are x, y, z in turn. Every line has four corners of its own: drawn
 * as instances of one, lines take three times as long where there is no graphics card.
 */
export function lines(ends: ArrayLike<number>, left?: ArrayLike<number>, right?: ArrayLike<number>): BufferGeometry {
    const count = Math.floor(ends.length / 6);
    const corners = { position: new Float32Array(12 * count), from: new Float32Array(12 * count), to: new Float32Array(12 * count), left: new Float32Array(12 * count), right: new Float32Array(12 * count) };
    const index = new Uint32Array(6 * count);
    for (let i = 0; i < count; i++) {
        for (let c = 0; c < 4; c++) {
            const at = 12 * i + 3 * c;
            corners.position[at] = c === 1 || c === 2 ? 1 : 0;
            corners.position[at + 1] = c < 2 ? -1 : 1;
            for (let k = 0; k < 3; k++) {
                corners.from[at + k] = ends[6 * i + k]!;
                corners.to[at + k] = ends[6 * i + 3 + k]!;
                if (left) corners.left[at + k] = left[6 * i + k]!;
                if (right) corners.right[at + k] = right[6 * i + k]!;
            }
        }
        index.set([4 * i, 4 * i + 1, 4 * i + 2, 4 * i, 4 * i + 2, 4 * i + 3], 6 * i);
    }
    const geometry = new BufferGeometry();
    for (const [name, numbers] of Object.entries(corners)) geometry.setAttribute(name, new BufferAttribute(numbers, 3));
    geometry.setIndex(new BufferAttribute(index, 1));
    return geometry;
}

/** The lines of a drawn shape: its arrises, and its rounds (null for none), as the file has them. */
export function linesOf(arrises: BufferGeometry, rounds: BufferGeometry | null): BufferGeometry {
    const at = numbersOf(arrises, 'position');
    const order = arrises.index!.array;
    const ends: number[] = [];
    for (const i of order) ends.push(at[3 * i]!, at[3 * i + 1]!, at[3 * i + 2]!);
    const none = new Array<number>(ends.length).fill(0);
    if (rounds === null) return lines(ends);
    return lines([...ends, ...numbersOf(rounds, 'position')], [...none, ...numbersOf(rounds, '_left')], [...none, ...numbersOf(rounds, '_right')]);
}

/** A mesh of lines that no ray meets, drawn after the surfaces. */
export function drawn(geometry: BufferGeometry, material: ShaderMaterial): Mesh {
    const mesh = new Mesh(geometry, material);
    mesh.frustumCulled = false; // its own corners say nothing about where the lines are
    mesh.raycast = () => {};
    mesh.renderOrder = 2;
    return mesh;
}

function numbersOf(geometry: BufferGeometry, name: string): Float32Array {
    const attribute = geometry.getAttribute(name);
    const numbers = new Float32Array(3 * attribute.count);
    for (let i = 0; i < attribute.count; i++) numbers.set([attribute.getX(i), attribute.getY(i), attribute.getZ(i)], 3 * i);
    return numbers;
}
