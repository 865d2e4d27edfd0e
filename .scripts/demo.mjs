// npm run demo: prices one example at the terminal, and writes its quote and its drawing.
import { mkdirSync } from 'node:fs';
import path from 'node:path';
import { root } from './bundles.mjs';
import { must } from './steps.mjs';

const job = 'examples/garden-wall/job.perp';
const folder = path.join('out', 'demo');
const written = [
  ['quote', path.join(folder, 'quote.pdf')],
  ['quote', path.join(folder, 'quote.html')],
  ['draw', path.join(folder, 'drawing.svg')],
];

await must('.scripts/build.mjs');
mkdirSync(path.join(root, folder), { recursive: true });
console.log(`\n$ perpend price ${job}\n`);
await must('dist/perpend.cjs', ['price', job]);
for (const [command, file] of written) {
  await must('dist/perpend.cjs', [command, job, '--out', file]);
}
console.log(['\nWritten:', ...written.map(([, file]) => `  ${file}`)].join('\n'));
