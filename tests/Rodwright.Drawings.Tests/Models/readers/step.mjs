// Prints what an independent CAD kernel finds in a STEP file: for each solid its name, volume (mm3) and box (mm), in the world.
import { readFileSync } from 'node:fs';
import occtimportjs from 'occt-import-js';
import { measure } from './measure.mjs';

const kernel = await occtimportjs();
const read = kernel.ReadStepFile(new Uint8Array(readFileSync(process.argv[2])), { linearUnit: 'millimeter' });
const named = new Map();
const walk = node => {
  for (const mesh of node.meshes) named.set(mesh, node.name);
  node.children.forEach(walk);
};
if (read.success) walk(read.root);
console.log(JSON.stringify({
  success: read.success,
  root: read.root?.children?.[0]?.name ?? read.root?.name ?? '',
  pieces: read.meshes.map((mesh, i) => ({ name: mesh.name, node: named.get(i) ?? '', ...measure(mesh.attributes.position.array, mesh.index.array) })),
}));
