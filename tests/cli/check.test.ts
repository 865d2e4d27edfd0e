import { describe, expect, test } from 'vitest';
import { FILES, JOB } from './jobs';
import { folderOf, perpend, useCommandLine } from './perpend';

useCommandLine();

describe('perpend check', () => {
  test('says file, line, column, severity, code and message, and the ways out', () => {
    const cwd = folderOf(FILES);
    const { code, out } = perpend(['check', 'wrong.perp'], { cwd });
    expect(code).toBe(1);
    const line = FILES['wrong.perp'].split('\n').findIndex((text) => text.includes('lenght')) + 1;
    const lines = out.split('\n');
    const at = lines.findIndex((text) =>
      text.startsWith(`wrong.perp:${line}:3 error line-unknown: `),
    );
    expect(at).toBeGreaterThanOrEqual(0);
    expect(lines[at + 1]).toMatch(/^ {4}way out: .*length/);
    expect(lines[at + 2]).toBe('      write: lenght -> length');
    expect(out).toMatch(/\n\d errors?, .* in 1 file\n$/);
  });

  test('warnings and notes alone are clean', () => {
    const cwd = folderOf(FILES);
    const { code, out } = perpend(['check', 'job.perp'], { cwd });
    expect(code).toBe(0);
    expect(out).not.toMatch(/ error /);
    expect(out).toMatch(/^\d+ \w+.* in 1 file\n$/m);
  });

  test('a file with nothing to say of says that', () => {
    const { code, out } = perpend(['check', '-'], { input: 'perpend 1\n\nuse uk\n' });
    expect([code, out]).toEqual([0, 'Nothing found in 1 file\n']);
  });

  test('counts over several files', () => {
    const cwd = folderOf({
      'a.perp': 'perpend 1\n\nuse uk\n',
      'b.perp': 'perpend 1\n\nuse uk\n\nzzz\n',
    });
    const { code, out } = perpend(['check', 'a.perp', 'b.perp'], { cwd });
    expect(code).toBe(1);
    expect(out).toMatch(/^1 error in 2 files\n$/m);
  });

  test('leads to the line of another file, as it is reached from here', () => {
    const cwd = folderOf({ 'jobs/a/job.perp': JOB.replace('firm.perp', '../nothing.perp') });
    const { out } = perpend(['check', 'jobs/a/job.perp', '--workspace', 'jobs'], { cwd });
    expect(out).toMatch(/^jobs\/a\/job\.perp:10:5 error use-missing: /m);
    expect(out).toMatch(/^ {4}see library:uk\.perp:\d+:\d+: /m);
  });

  const ODD = JOB.replace('length  3.25 m', 'length  3.3 m').replace(
    'height  12 courses',
    'height  12 courses\n  coping  brick-on-edge',
  );

  test('says what to write for each way out, so that what is written takes the finding away', () => {
    const cwd = folderOf({ ...FILES, 'odd.perp': ODD });
    const { out } = perpend(['check', 'odd.perp'], { cwd });
    const line = /fit-run[\s\S]*?\n {6}write: (fit [^\n]*) \(new line (\d+)\)/.exec(out)!;
    const [, text, at] = line;
    const lines = ODD.split('\n');
    lines.splice(Number(at) - 1, 0, `  ${text}`);
    const mended = folderOf({ ...FILES, 'odd.perp': lines.join('\n') });
    const found = (file: string) => file.match(/ warning fit-run: /g)?.length ?? 0;
    const after = perpend(['check', 'odd.perp'], { cwd: mended }).out;
    expect(found(out)).toBeGreaterThan(0);
    expect(found(after)).toBe(found(out) - 1);
    expect(out).toMatch(/\n {6}write: 3\.3 m -> 3\d{3}(\.5)? mm\n/);
  });

  test('the gravest first, cautions after other notes, then as they stand in the file', () => {
    const cwd = folderOf({ ...FILES, 'odd.perp': `${ODD}\nzzz\n` });
    const { out } = perpend(['check', 'odd.perp'], { cwd });
    const lines = out.replace(/ note caution-/g, ' caution ');
    const found = [...lines.matchAll(/^odd\.perp:(\d+):\d+ (error|warning|note|caution|hint) /gm)];
    const order = ['error', 'warning', 'note', 'caution', 'hint'];
    const keys = found.map(([, line, word]) => order.indexOf(word!) * 10_000 + Number(line));
    expect(new Set(found.map(([, , word]) => word)).size).toBeGreaterThan(2);
    expect(keys).toEqual(keys.toSorted((a, b) => a - b));
  });

  test('says how many of a sort over each, with an empty line between, and between files', () => {
    const cwd = folderOf({ ...FILES, 'odd.perp': ODD });
    const groups = perpend(['check', 'odd.perp', 'wrong.perp'], { cwd }).out.split('\n\n');
    const last = groups.pop()!;
    const counted = groups.map((group) => {
      const [head, ...lines] = group.split('\n');
      const found = lines.filter((line) => /^\w+\.perp:/.test(line));
      expect(head).toMatch(/^\d+ (error|warning|note|caution|hint)s?:$/);
      expect(Number.parseInt(head!, 10)).toBe(found.length);
      return [found[0]!.split(':')[0], Number.parseInt(head!, 10)] as const;
    });
    const files = counted.map(([file]) => file);
    expect([...new Set(files)]).toEqual(['odd.perp', 'wrong.perp']);
    expect(files).toEqual(files.toSorted());
    expect(last).toMatch(/^[^\n]* in 2 files\n$/);
    const all = [...last.matchAll(/\d+(?= (error|warning|note|caution|hint))/g)].map(([n]) =>
      Number(n),
    );
    const sum = (of: readonly number[]) => of.reduce((a, b) => a + b, 0);
    expect(sum(all)).toBe(sum(counted.map(([, n]) => n)));
  });

  test('lists what to be careful of on site, each once, with where, why, what to do and whom to ask', () => {
    const { out } = perpend(['check', 'job.perp', '--json'], { cwd: folderOf(FILES) });
    const [{ cautions }] = JSON.parse(out).files;
    const codes = cautions.map((c: { code: string }) => c.code);
    expect(codes).toContain('caution-cement');
    expect(new Set(codes).size).toBe(codes.length);
    for (const { here, say, ask, source } of cautions) {
      expect(here[0].places[0]).toMatchObject({ file: 'job.perp' });
      for (const list of [say, ask, source]) expect(list.length).toBeGreaterThan(0);
    }
  });

  test('changes nothing', () => {
    const cwd = folderOf(FILES);
    perpend(['check', 'wrong.perp'], { cwd });
    expect(perpend(['check', 'wrong.perp', '--fix'], { cwd })).toMatchObject({ code: 2 });
    expect(perpend(['format', 'wrong.perp'], { cwd }).out).toContain('lenght');
  });

  const LINE = /^(.+?):(\d+):(\d+) (error|warning|note|hint) ([^\s:]+): (.*)$/;

  test('with --lines each finding is one line and nothing else is, for programs', () => {
    const cwd = folderOf(FILES);
    const { code, out } = perpend(['check', '--lines', 'wrong.perp', 'job.perp'], { cwd });
    expect(code).toBe(1);
    const rows = out.trimEnd().split('\n');
    expect(rows.filter((row) => !LINE.test(row))).toEqual([]);
    const { files } = JSON.parse(
      perpend(['check', '--json', 'wrong.perp', 'job.perp'], { cwd }).out,
    );
    const all = files.flatMap((file: { findings: unknown[] }) => file.findings);
    expect(rows).toHaveLength(all.length);
    expect(perpend(['check', '--lines', '-'], { input: 'perpend 1\nuse uk\n' }).out).toBe('');
  });

  test('of a folder every file under it is checked, but for hidden ones', () => {
    const bad = 'perpend 1\n\nuse uk\n\nzzz\n';
    const cwd = folderOf({
      'b/two.perp': bad,
      'a.perp': bad,
      '.hidden/no.perp': bad,
      'node_modules/no.perp': bad,
      'notes.txt': 'x',
    });
    const { code, out } = perpend(['check', '--lines', '.'], { cwd });
    expect(code).toBe(1);
    const files = out
      .trimEnd()
      .split('\n')
      .map((row) => LINE.exec(row)?.[1]);
    expect([...new Set(files)]).toEqual(['a.perp', 'b/two.perp']);
    expect(perpend(['check', 'b'], { cwd }).out).toMatch(/1 error in 1 file\n$/);
    expect(perpend(['check', '--lines', 'nowhere'], { cwd }).code).toBe(2);
  });
});
