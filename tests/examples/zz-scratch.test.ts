import { writeFileSync } from 'node:fs';
import { test } from 'vitest';
import { deMauer } from './by-hand/de-mauer';
import { gardenWall } from './by-hand/garden-wall';
import { gatePiers } from './by-hand/gate-piers';
import { repair } from './by-hand/repair';
import { usWall } from './by-hand/us-wall';
import { figuresOf, jobOnDisk } from './engine';
const all = { 'garden-wall': gardenWall, repair, 'gate-piers': gatePiers, 'us-wall': usWall, 'de-mauer': deMauer };
const about: Record<string, string> = {
  'garden-wall': '7.3 m of one-brick wall in Flemish bond, 16 courses, a gate between two piers, bricks on edge on top.',
  repair: 'A length of 1.35 m x 9 courses taken down and built again, three bricks cut out, 2.4 m² repointed.',
  'gate-piers': 'Two piers, two bricks square and 26 courses high, with bricks on edge on top.',
  'us-wall': 'A one-brick wall in common bond, 12 and 18 bricks either side of a gate, 16 courses, in inches.',
  'de-mauer': 'A one-brick wall in Blockverband, NF, 24 and 16 eighths of a metre either side of a gate, 12 courses.',
};
const heads: [RegExp, string][] = [[/^(north|frost|gate|street|nord)\./, 'The work'], [/^(mix|buy|cost)\./, 'What it takes'], [/^(job|stage)\./, 'The job']];
test('x', () => {
  for (const [name, hand] of Object.entries(all)) {
    const f = figuresOf(jobOnDisk(`examples/${name}/job.perp`));
    const h = hand();
    for (const k of new Set([...f.keys(), ...Object.keys(h)])) {
      const a = f.get(k)?.value, b = h[k];
      if (a === undefined || b === undefined || Math.abs(a - b) > 1e-6 * Math.max(1, Math.abs(b))) console.log(name, k, a, b);
    }
    let md = `# What ${name}/job.perp comes to\n\n${about[name]}\nEach figure is worked out by hand in tests/examples/by-hand/${name}.ts.\n`;
    for (const [re, head] of heads) {
      md += `\n## ${head}\n\n| Figure | Expected |\n|---|---|\n`;
      for (const [k, v] of f) if (re.test(k)) md += `| \`${k}\` | ${v.text} |\n`;
    }
    writeFileSync(`/tmp/pub/${name}.md`, md);
  }
});
