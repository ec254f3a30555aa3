import {
  BufferAttribute, type BufferGeometry, type Color, InstancedBufferAttribute, InstancedBufferGeometry, Mesh, type Plane, ShaderMaterial, Vector2,
} from 'three';

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

/** Straight lines, each two points; for lines within rounds the normals at either side of each. Numbers are x, y, z in turn. */
export function lines(ends: ArrayLike<number>, left?: ArrayLike<number>, right?: ArrayLike<number>): InstancedBufferGeometry {
  const count = Math.floor(ends.length / 6);
  const [from, to, l, r] = [0, 1, 2, 3].map(() => new Float32Array(3 * count)) as [Float32Array, Float32Array, Float32Array, Float32Array];
  for (let i = 0; i < count; i++) {
    for (let k = 0; k < 3; k++) {
      from[3 * i + k] = ends[6 * i + k]!;
      to[3 * i + k] = ends[6 * i + 3 + k]!;
      if (left) l[3 * i + k] = left[6 * i + k]!;
      if (right) r[3 * i + k] = right[6 * i + k]!;
    }
  }
  const geometry = new InstancedBufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array([0, -1, 0, 1, -1, 0, 1, 1, 0, 0, 1, 0]), 3));
  geometry.setIndex([0, 1, 2, 0, 2, 3]);
  for (const [name, numbers] of Object.entries({ from, to, left: l, right: r })) geometry.setAttribute(name, new InstancedBufferAttribute(numbers, 3));
  geometry.instanceCount = count;
  return geometry;
}

/** The lines of a drawn shape: its arrises, and its rounds (null for none), as the file has them. */
export function linesOf(arrises: BufferGeometry, rounds: BufferGeometry | null): InstancedBufferGeometry {
  const at = numbersOf(arrises, 'position');
  const order = arrises.index!.array;
  const ends: number[] = [];
  for (const i of order) ends.push(at[3 * i]!, at[3 * i + 1]!, at[3 * i + 2]!);
  const none = new Array<number>(ends.length).fill(0);
  if (rounds === null) return lines(ends);
  return lines([...ends, ...numbersOf(rounds, 'position')], [...none, ...numbersOf(rounds, '_left')], [...none, ...numbersOf(rounds, '_right')]);
}

/** A mesh of lines that no ray meets, drawn after the surfaces. */
export function drawn(geometry: InstancedBufferGeometry, material: ShaderMaterial): Mesh {
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
