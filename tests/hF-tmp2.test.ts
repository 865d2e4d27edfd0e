import { test } from 'vitest';
import { jobOf } from './examples/engine';
test('x', () => {
  const job = jobOf('defaults\n  corbels height 1/2 and width 1/3 and wall 1/2 # x\n  footing-lap 300 mm or steps 2 # y\n  creasing creasing-tile 2 courses out 25 mm\n');
  for (const f of job.findings) console.log(f.severity, f.code, f.place.line, f.message);
});
