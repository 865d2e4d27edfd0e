import { describe, expect, test } from 'vitest';
import { MOST_CHARACTERS } from '../../server/engine/workspace/source';
import { inRoot, jobOf, ROOT, workspaceOf } from '../engine/world';
import { findingsIn, silent, tells } from './tells';

describe('use-missing', () => {
  test('is told of a file that is not there', () => {
    tells(`
      perpend 1
      use "firm.perp"
      use "nowhere.perp"
          ^^^^^^^^^^^^^^ use-missing: is not there
      use "constructor"
          ^^^^^^^^^^^^^ use-missing: is not there
    `);
  });

  test('counts from the folder of the file that names it', () => {
    const files = { 'all/firm.perp': 'perpend 1\nuse "bricks.perp"\n', 'all/bricks.perp': '' };
    silent('perpend 1\nuse uk\nuse "all/firm.perp"\n', 'use-missing', files);
    const job = workspaceOf({ ...files, 'bricks.perp': '' }).job(inRoot('all/firm.perp'))!;
    expect(job.scope.files.map((f) => f.name)).toContain(inRoot('all/bricks.perp'));
  });
});

describe('use-outside', () => {
  test('is told of a file beyond the workspace', () => {
    tells(`
      perpend 1
      use "firm.perp"
      use "../other.perp"
          ^^^^^^^^^^^^^^^ use-outside: lies outside the workspace
      use "/etc/hosts"
          ^^^^^^^^^^^^ use-outside: lies outside the workspace
    `);
  });
});

describe('use-circle', () => {
  test('is told of a file that uses itself', () => {
    tells(`
      perpend 1
      use "firm.perp"
      use "job.perp"
          ^^^^^^^^^^ use-circle: go round in a circle
    `);
  });

  test('is told in the file that closes the circle, and all are read once', () => {
    const files = {
      'a.perp': 'perpend 1\nuse uk\nuse "b.perp"\n',
      'b.perp': 'perpend 1\nuse "a.perp"\n',
    };
    const workspace = workspaceOf(files);
    const codes = (name: string) => workspace.job(inRoot(name))!.findings.map((f) => f.code);
    expect(codes('a.perp')).toEqual([]);
    expect(workspace.job(inRoot('a.perp'))!.scope.files.map((f) => f.name)).toEqual([
      inRoot('a.perp'),
      inRoot('b.perp'),
      'library:uk.perp',
      'library:world.perp',
    ]);
    expect(workspace.job(inRoot('a.perp'))!.scope.remarks.map((r) => r.code)).toEqual([
      'use-circle',
    ]);
    expect(codes('b.perp')).toEqual([]);
  });

  test('is not told of a file that two others use', () => {
    silent('perpend 1\nuse "a.perp"\nuse "b.perp"\n', 'use-circle', {
      'a.perp': 'perpend 1\nuse "c.perp"\n',
      'b.perp': 'perpend 1\nuse "c.perp"\n',
      'c.perp': 'perpend 1\nuse uk\n',
    });
  });
});

describe('use-too-deep', () => {
  const chain = (n: number) =>
    Object.fromEntries(
      Array.from({ length: n }, (_, i) => [`${i}.perp`, `perpend 1\nuse "${i + 1}.perp"\n`]),
    );

  test('is told where files use files without end', () => {
    const job = jobOf('perpend 1\nuse uk\nuse "0.perp"\n', chain(40));
    expect(job.scope.remarks.map((r) => r.code)).toEqual(['use-too-deep']);
    expect(job.scope.files.length).toBeLessThan(20);
  });

  test('is told at the line of the job that names more files than are read', () => {
    const files = Object.fromEntries(Array.from({ length: 100 }, (_, i) => [`${i}.perp`, '']));
    const uses = Object.keys(files).map((name) => `use "${name}"\n`);
    const found = findingsIn(`perpend 1\nuse uk\n${uses.join('')}`, files);
    expect(found).toHaveLength(100 - 63);
    expect(new Set(found.map((f) => f.code))).toEqual(new Set(['use-too-deep']));
    expect(found[0]!.place).toEqual({ file: `${ROOT}/job.perp`, line: 65, start: 4, end: 13 });
  });

  test('is told rather than ask a disk for thousands of files that are not there', () => {
    const asked = { resolved: [], read: [] as string[] };
    const uses = Array.from({ length: 5000 }, (_, i) => `use "${i}.perp"\n`).join('');
    const workspace = workspaceOf({ 'job.perp': `perpend 1\nuse uk\n${uses}` }, asked);
    const codes = workspace.job(inRoot('job.perp'))!.findings.map((f) => f.code);
    expect(new Set(codes)).toEqual(new Set(['use-missing', 'use-too-deep']));
    expect(codes).toHaveLength(5000);
    expect(asked.read.length).toBeLessThan(300);
  });

  test('is not told of a few', () => {
    silent('perpend 1\nuse uk\nuse "0.perp"\n', 'use-too-deep', { ...chain(10), '10.perp': '' });
  });
});

describe('a file too large', () => {
  const large = '#'.repeat(MOST_CHARACTERS + 1);

  test('is not read where another uses it: use-too-large', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        use "large.perp"
            ^^^^^^^^^^^^ use-too-large: larger than 4 MiB
      `,
      { files: { 'large.perp': large } },
    );
    silent('perpend 1\nuse uk\nuse "large.perp"\n', 'use-too-large', {
      'large.perp': large.slice(1),
    });
  });

  test('is not read itself: file-too-large, and nothing else', () => {
    const job = jobOf(large);
    expect(job.findings.map((f) => [f.code, f.place.line])).toEqual([['file-too-large', 0]]);
    expect(job.file.blocks).toEqual([]);
    expect(job.price.total.value.toFixed()).toBe('0');
    silent(large.slice(1), 'file-too-large');
  });

  test('is refused when an edit makes it so, and read again when another makes it smaller', () => {
    const workspace = workspaceOf({});
    const name = inRoot('job.perp');
    workspace.opened(name, 'perpend 1\nuse uk\n# ');
    const at = { startLine: 2, startColumn: 2, endLine: 2, endColumn: 2 };
    workspace.edited(name, [{ ...at, text: large }]);
    expect(workspace.job(name)!.findings.map((f) => f.code)).toEqual(['file-too-large']);
    workspace.edited(name, [{ ...at, endColumn: 2 + large.length, text: '' }]);
    expect(workspace.job(name)!.findings).toEqual([]);
    expect(workspace.file(name)!.text).toBe('perpend 1\nuse uk\n# ');
  });
});
