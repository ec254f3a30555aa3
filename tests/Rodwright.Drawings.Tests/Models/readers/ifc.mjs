// Prints what an independent reader finds in an IFC file: for each element its class, name, mark, volume (mm3) and box (mm, z up), and the stair that they make up.
import { readFileSync } from 'node:fs';
import * as webifc from 'web-ifc';
import { measure } from './measure.mjs';

const api = new webifc.IfcAPI();
await api.Init();
const model = api.OpenModel(new Uint8Array(readFileSync(process.argv[2])));
const pieces = [];
api.StreamAllMeshes(model, mesh => {
  const line = api.GetLine(model, mesh.expressID);
  const points = [], order = [];
  for (let g = 0; g < mesh.geometries.size(); g++) {
    const placed = mesh.geometries.get(g);
    const geometry = api.GetGeometry(model, placed.geometryExpressID);
    const m = placed.flatTransformation;
    const vertices = api.GetVertexArray(geometry.GetVertexData(), geometry.GetVertexDataSize());
    const indices = api.GetIndexArray(geometry.GetIndexData(), geometry.GetIndexDataSize());
    const first = points.length / 3;
    for (let i = 0; i < vertices.length; i += 6) {
      const [x, y, z] = [vertices[i], vertices[i + 1], vertices[i + 2]];
      const at = k => m[k] * x + m[4 + k] * y + m[8 + k] * z + m[12 + k];
      // The reader stands the model up, y for z, in metres.
      points.push(1000 * at(0), -1000 * at(2), 1000 * at(1));
    }
    for (const i of indices) order.push(first + i);
  }
  pieces.push({ kind: line.constructor.name, name: line.Name?.value ?? '', mark: line.Tag?.value ?? '', id: line.GlobalId?.value ?? '', type: line.PredefinedType?.value ?? '', ...measure(points, order) });
});
const stairs = [...api.GetLineIDsWithType(model, webifc.IFCSTAIR)].map(id => api.GetLine(model, id));
const whole = [...api.GetLineIDsWithType(model, webifc.IFCRELAGGREGATES)].map(id => api.GetLine(model, id)).find(r => stairs.some(s => s.expressID === r.RelatingObject.value));
const values = [...api.GetLineIDsWithType(model, webifc.IFCPROPERTYSINGLEVALUE)].map(id => api.GetLine(model, id));
console.log(JSON.stringify({
  schema: api.GetModelSchema(model),
  stairs: stairs.map(s => ({ name: s.Name.value, type: s.PredefinedType.value })),
  parts: whole?.RelatedObjects.length ?? 0,
  properties: Object.fromEntries(values.map(v => [v.Name.value, v.NominalValue.value])),
  pieces,
}));
