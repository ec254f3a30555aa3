// Prints one line of JSON for each file named: what the validator found, and what it says is in the file.
import { readFileSync } from 'node:fs';
import validator from 'gltf-validator';

for (const path of process.argv.slice(2)) {
  const report = await validator.validateBytes(new Uint8Array(readFileSync(path)));
  console.log(JSON.stringify({ issues: report.issues, info: report.info }));
}
