import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { jobView } from '../../server/engine/views/job-view';
import type { Job } from '../../server/engine/workspace/job';
import type { Workspace } from '../../server/engine/workspace/workspace';
import { runs } from '../harness/runs';
import { anyChange, changed, fitted, linesOf } from './edits';
import { EXAMPLES, JOBS } from './examples';
import { inRoot, workspaceOf } from './world';

const seed = 20260302;

/** Everything a reader could see, as plain text: the ways out too, which are made when asked for. */
function told(job: Job): unknown {
  return JSON.parse(JSON.stringify(jobView(job)));
}

const wall = (i: number) => `wall w${i} "Wall ${i}"
  brick     harwick-red
  mix       general
  bond      ${['flemish', 'english', 'english-garden-wall 3'][i % 3]}
  thick     1 brick
  length    ${3140 + (i % 7) * 225} mm
  height    ${8 + (i % 5)} courses
  exposure  zone-1
  coping    brick-on-edge
`;

const SIXTY = `perpend 1\n\njob "Sixty"\n\nuse "firm.perp"\n\n${Array.from({ length: 60 }, (_, i) => wall(i)).join('\n')}`;

/** Walls that meet: a yard of four, one that runs into it, and one on its own. */
const met = (name: string, length: number, ends: string) => `wall ${name}
  brick     harwick-red
  length    ${length} mm
  height    8 courses
  exposure  zone-1
${ends}
`;
const YARD = `perpend 1\n\njob "Yard"\n\nuse "firm.perp"\n\n${[
  met('south', 2240, '  left quoin west\n  right quoin east'),
  met('east', 1790, '  left quoin south\n  right quoin north'),
  met('north', 2240, '  left quoin east\n  right quoin west'),
  met('west', 1790, '  left quoin north\n  right quoin south'),
  met('inner', 1125, '  left tee south 1 m'),
  met('alone', 1790, '  left stopped'),
].join('\n')}`;
const TEXTS: Readonly<Record<string, string>> = {
  ...EXAMPLES,
  'sixty.perp': SIXTY,
  'yard.perp': YARD,
};

function opened(name: string, text: string): Workspace {
  const workspace = workspaceOf(TEXTS);
  workspace.opened(inRoot(name), text);
  return workspace;
}

/** The same without the ways out: each of those is tried by working the block out again, which costs more than all the rest. */
function toldBriefly(job: Job): unknown {
  const { findings, ...rest } = jobView(job);
  const brief = findings.map(({ code, severity, place, message, related }) => {
    return { code, severity, place, message, related };
  });
  return JSON.parse(JSON.stringify({ ...rest, findings: brief }));
}

/** Ways out are asked for after the last change of a row: they are made from the same work, and every row ends elsewhere. */
function toldAfter(job: Job, last: boolean): unknown {
  return last ? told(job) : toldBriefly(job);
}

/** After each change the workspace that has seen them all must tell what one that sees only the end does. */
function follows(name: string, times: number, changes: number): void {
  fc.assert(
    fc.property(fc.array(anyChange, { minLength: 1, maxLength: changes }), (all) => {
      let text = linesOf(TEXTS[name]!).join('\n');
      const workspace = opened(name, text);
      told(workspace.job(inRoot(name))!);
      for (const [i, any] of all.entries()) {
        const change = fitted(any, linesOf(text));
        text = changed(text, change);
        workspace.edited(inRoot(name), [change]);
        const job = workspace.job(inRoot(name))!;
        expect(job.file.text).toBe(text);
        const last = i === all.length - 1;
        const fresh = opened(name, text).job(inRoot(name))!;
        expect(toldAfter(job, last)).toEqual(toldAfter(fresh, last));
      }
    }),
    { seed, numRuns: runs(times) },
  );
}

describe('after any edit', () => {
  test.each(JOBS)('%s is as if it had been opened so', (name) => follows(name, 25, 6));

  test('sixty walls are as if they had been opened so', () => follows('sixty.perp', 8, 5));

  test(
    'walls that meet are as if they had been opened so',
    () => follows('yard.perp', 20, 5),
    60_000,
  );

  test('several changes at once count one after the other', () => {
    fc.assert(
      fc.property(fc.array(anyChange, { minLength: 2, maxLength: 5 }), (all) => {
        const name = 'garden-wall/job.perp';
        let text = linesOf(TEXTS[name]!).join('\n');
        const workspace = opened(name, text);
        const changes = all.map((any) => {
          const change = fitted(any, linesOf(text));
          text = changed(text, change);
          return change;
        });
        workspace.edited(inRoot(name), changes);
        expect(told(workspace.job(inRoot(name))!)).toEqual(
          told(opened(name, text).job(inRoot(name))!),
        );
      }),
      { seed, numRuns: 30 },
    );
  });

  test('of the firm’s file, its job is as if both had been opened so', () => {
    const [name, firm] = ['garden-wall/job.perp', 'firm.perp'];
    fc.assert(
      fc.property(fc.array(anyChange, { minLength: 1, maxLength: 4 }), (all) => {
        const workspace = opened(name, TEXTS[name]!);
        let text = linesOf(TEXTS[firm]!).join('\n');
        workspace.opened(inRoot(firm), text);
        for (const any of all) {
          const change = fitted(any, linesOf(text));
          text = changed(text, change);
          workspace.edited(inRoot(firm), [change]);
          const fresh = workspaceOf({ ...TEXTS, [firm]: text });
          expect(toldBriefly(workspace.job(inRoot(name))!)).toEqual(
            toldBriefly(fresh.job(inRoot(name))!),
          );
        }
      }),
      { seed, numRuns: runs(30) },
    );
  }, 60_000);

  test('a firm’s file edited beside its job changes the job, and back again', () => {
    const workspace = workspaceOf(TEXTS);
    const job = inRoot('garden-wall/job.perp');
    const before = told(workspace.job(job)!);
    const firm = inRoot('firm.perp');
    workspace.opened(firm, EXAMPLES['firm.perp']!);
    workspace.replaced(firm, EXAMPLES['firm.perp']!.replace('£0.92 each', '£1.92 each'));
    expect(told(workspace.job(job)!)).not.toEqual(before);
    workspace.replaced(firm, EXAMPLES['firm.perp']!);
    expect(told(workspace.job(job)!)).toEqual(before);
    workspace.closed(firm);
    expect(told(workspace.job(job)!)).toEqual(before);
  });
});

describe('an edit inside one wall', () => {
  const name = inRoot('sixty.perp');
  const lineOf = (text: string) => linesOf(SIXTY).indexOf(text);

  test('leaves every other wall’s work the same object', () => {
    const workspace = opened('sixty.perp', SIXTY);
    const before = workspace.job(name)!.works;
    const line = lineOf('wall w30 "Wall 30"') + 5;
    const at = { startLine: line, endLine: line, startColumn: 12, endColumn: 13 };
    workspace.edited(name, [{ ...at, text: '9' }]);
    const after = workspace.job(name)!.works;
    expect(after).toHaveLength(60);
    expect(after.map((work, i) => work === before[i])).toEqual(before.map((_, i) => i !== 30));
  });

  test('that brings lines moves the others down, and they stay the same objects', () => {
    const workspace = opened('sixty.perp', SIXTY);
    const before = workspace.job(name)!.works;
    const line = lineOf('wall w30 "Wall 30"') + 1;
    const at = { startLine: line, endLine: line, startColumn: 0, endColumn: 0 };
    workspace.edited(name, [{ ...at, text: '  note "More"\n\n\n' }]);
    const job = workspace.job(name)!;
    expect(job.works.map((work, i) => work === before[i])).toEqual(before.map((_, i) => i !== 30));
    expect(jobView(job).blocks[59]!.place.line).toBe(lineOf('wall w59 "Wall 59"') + 3);
  });

  test('a wall put in or taken out leaves the others the same objects', () => {
    const workspace = opened('sixty.perp', SIXTY);
    const before = workspace.job(name)!.works;
    const line = lineOf('wall w30 "Wall 30"');
    const at = { startLine: line, endLine: line, startColumn: 0, endColumn: 0 };
    workspace.edited(name, [{ ...at, text: `${wall(99)}\n` }]);
    const more = workspace.job(name)!.works;
    expect(more).toHaveLength(61);
    expect(more.filter((work) => before.includes(work))).toEqual(before);
    workspace.edited(name, [{ ...at, endLine: line + linesOf(wall(99)).length, text: '' }]);
    const again = workspace.job(name)!.works;
    expect(again.map((work, i) => work === before[i])).toEqual(before.map(() => true));
  });

  test('a brick that changes is worked through every wall', () => {
    const workspace = opened('sixty.perp', SIXTY);
    const before = workspace.job(name)!.works;
    const line = lineOf('wall w0 "Wall 0"');
    const at = { startLine: line, endLine: line, startColumn: 0, endColumn: 0 };
    workspace.edited(name, [{ ...at, text: 'brick harwick-red\n  frog 20%\n' }]);
    const after = workspace.job(name)!.works;
    expect(after.some((work) => before.includes(work))).toBe(false);
  });
});

describe('an edit of what only the price hangs on', () => {
  const name = inRoot('sixty.perp');
  const line = linesOf(SIXTY).indexOf('wall w0 "Wall 0"');
  const at = { startLine: line, endLine: line, startColumn: 0, endColumn: 0 };

  test('leaves all work the same objects, and changes the price', () => {
    const workspace = opened('sixty.perp', SIXTY);
    const { works, price } = workspace.job(name)!;
    workspace.edited(name, [{ ...at, text: 'price\n  profit 77%\n\n' }]);
    const job = workspace.job(name)!;
    expect(job.works.map((work, i) => work === works[i])).toEqual(works.map(() => true));
    expect(job.price.total.value.gt(price.total.value)).toBe(true);
  });
});

describe('an edit of one wall of several that meet', () => {
  const name = inRoot('yard.perp');
  const edit = (workspace: Workspace, old: string, text: string) => {
    const lines = linesOf(workspace.job(name)!.file.text);
    const line = lines.indexOf(old);
    expect(line).toBeGreaterThan(0);
    const at = { startLine: line, endLine: line, startColumn: 0, endColumn: old.length };
    workspace.edited(name, [{ ...at, text }]);
  };
  const same = (workspace: Workspace, before: readonly unknown[]) =>
    workspace.job(name)!.works.map((work, i) => work === before[i]);

  test('is worked through those that meet it, and no other', () => {
    const workspace = opened('yard.perp', YARD);
    const before = workspace.job(name)!.works;
    edit(workspace, '  left quoin south', '  left stopped');
    // The chain is open now: all four walls may be begun otherwise. The wall that runs into the south one has no part in it.
    expect(same(workspace, before)).toEqual([false, false, false, false, true, true]);
    const fresh = opened('yard.perp', workspace.job(name)!.file.text);
    expect(told(workspace.job(name)!)).toEqual(told(fresh.job(name)!));
  });

  test('of a wall on its own leaves them the same objects', () => {
    const workspace = opened('yard.perp', YARD);
    const before = workspace.job(name)!.works;
    edit(workspace, '  left stopped', '  left butted');
    expect(same(workspace, before)).toEqual([true, true, true, true, true, false]);
  });

  test('a wall that gets the name another wall waits for is met by it', () => {
    const workspace = opened('yard.perp', YARD.replace('wall east', 'wall eas'));
    const codes = () => workspace.job(name)!.findings.map((f) => f.code);
    expect(codes()).toContain('name-unknown');
    edit(workspace, 'wall eas', 'wall east');
    expect(codes()).not.toContain('name-unknown');
    expect(told(workspace.job(name)!)).toEqual(told(opened('yard.perp', YARD).job(name)!));
  });
});
