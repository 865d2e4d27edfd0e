/** Every name of the examples is given another one, and nothing that they come to changes. */
import { expect, test } from 'vitest';
import { isRefused, renamed } from '../../server/engine/ide/rename';
import { showTerm } from '../../server/engine/views/show';
import type { Job } from '../../server/engine/workspace/job';
import { type Files, inRoot, workspaceOf } from '../engine/world';
import { files, read } from '../tree';
import { aroundOf, done, edited } from './marked-files';

const FOLDERS =
  /^examples\/([^/]+\.perp|(garden-wall|repair|enclosure)\/job\.perp|whole-life\/09-done\.perp)$/;

const EXAMPLES: Files = Object.fromEntries(
  files()
    .filter((name) => FOLDERS.test(name))
    .map((name) => [name, read(name)]),
);

/** Lines that give a name, by the name: of an opening or a trade too. */
const GIVES = /^(\s*)(\p{L}[\p{L}-]*)\s+(\p{L}[\p{L}\d-]*)/u;
const KINDS = /^(wall|pier|repair|opening|brick|mix|material|bond|option|cost|partner|limit)$/;

function givers(texts: Files): { file: string; line: number; column: number; name: string }[] {
  return Object.entries(texts).flatMap(([file, text]) =>
    text.split('\n').flatMap((said, line) => {
      const [, room = '', kind = '', name = ''] = GIVES.exec(said) ?? [];
      const heads = !room || kind === 'opening' || kind === 'pier';
      if (!heads || !KINDS.test(kind)) return [];
      return [{ file, line, column: said.indexOf(name, room.length + kind.length), name }];
    }),
  );
}

/** What a reader is told of a job, without the names. */
function told(job: Job) {
  return {
    price: showTerm(job.price.total, job.env),
    works: job.works.length,
    findings: job.findings.map(({ code, place }) => `${code} ${place.line}`).sort(),
  };
}

function allTold(texts: Files) {
  const workspace = workspaceOf(texts);
  return Object.fromEntries(
    Object.keys(texts).map((file) => [file, told(workspace.job(inRoot(file))!)]),
  );
}

test('all examples come to the same with all names changed', () => {
  let texts = EXAMPLES;
  let changed = 0;
  const before = givers(texts);
  for (const { file, line, name } of before) {
    const said = texts[file]!.split('\n')[line]!;
    const column = said.search(new RegExp(`(?<=\\s)${name}(?![\\p{L}\\d-])`, 'u'));
    if (column < 0) continue; // given its new name with another line
    const { world, jobOf } = aroundOf(texts);
    const found = done(renamed(jobOf(file), { line, column }, `zq${changed}`, world));
    if (isRefused(found)) {
      expect(found.refused).toMatch(/ships with the tool/);
      continue;
    }
    texts = edited(texts, found.edits);
    changed += 1;
  }
  expect(changed).toBeGreaterThan(15);
  expect(Object.values(texts).join('\n')).toMatch(/\bzq15\b/);
  expect(allTold(texts)).toEqual(allTold(EXAMPLES));
});
