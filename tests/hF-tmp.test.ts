import { test } from 'vitest';
import { jobOf } from './examples/engine';
import { allFigures } from '../server/engine/views/job-view';
import { showTerm } from '../server/engine/views/show';
import { readFileSync } from 'node:fs';
test('x', () => {
  const job = jobOf(readFileSync('/tmp/hF-job.perp','utf8'));
  for (const f of job.findings) console.log(f.severity, f.code, f.place.line, f.message, f.ways.map(w=>w.title+' :: '+w.edits.map(e=>e.text).join('|')));
  for (const {key, term} of allFigures(job)) console.log(key, showTerm(term, job.env));
  for (const w of job.works) { console.log(w.facts.says, w.facts.height, JSON.stringify(w.facts.tops?.map(t=>({...t,pieces:t.pieces.length})))); for (const n of [...w.needs.pieces.map(p=>p.count), ...w.needs.bricks.map(b=>b.bricks)]) console.log(n.label, n.value.toString(), n.detail?.() ?? n.args.map(a=>a.label+'='+a.value+' '+(a.detail?.()??''))); }
});
