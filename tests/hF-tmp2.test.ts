import { test } from 'vitest';
import { writeFileSync, readFileSync } from 'node:fs';
import { format } from '../grammar/print';
import { jobOnDisk } from './examples/engine';
test('x', () => {
  for (const c of ['uk','us','de']) { const p=`server/library/${c}.perp`; const t=readFileSync(p,'utf8'); const f=format(t); if (f!==t) { writeFileSync(p,f); console.log('formatted',p); }
   console.log(c, jobOnDisk(p).findings.filter(f=>f.severity!=='information').map(f=>f.place.line+f.code+f.message)); }
});
