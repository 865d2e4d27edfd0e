import { beforeEach, describe, expect, test, vi } from 'vitest';
import { contextOf, itemOf, tooltipOf } from '../../client/job-view/item';
import { PartsOfJob } from '../../client/job-view/parts';
import { type JobParts, PART_TOLD, type Part } from '../../shared/protocol/parts';
import { serverWith } from './server';
import { forget } from './vscode';

vi.mock('vscode', () => import('./vscode'));
beforeEach(forget);

const PART: Part = {
  id: 'work/north',
  kind: 'wall',
  label: 'North side',
  text: '£3,375.00 · 64 bricks',
  heard: 'North side, £3,375.00, 64 bricks',
  figure: 'north.price',
  draws: 'north',
  at: { uri: 'file:///jobs/job.perp', line: 3, start: 0, end: 10 },
  children: [],
};

describe('a part as a row', () => {
  test('has the steady id, the text beside it, and the sentence for who hears it', () => {
    const item = itemOf(PART);
    expect(item).toMatchObject({
      id: 'work/north',
      label: 'North side',
      description: '£3,375.00 · 64 bricks',
      accessibilityInformation: { label: 'North side, £3,375.00, 64 bricks' },
      collapsibleState: 0,
    });
  });

  test('a click shows the line', () => {
    const { command } = itemOf(PART);
    expect(command?.command).toBe('vscode.open');
    expect(String(command?.arguments?.[0])).toBe('file:///jobs/job.perp');
    expect(command?.arguments?.[1]).toMatchObject({
      selection: { start: { line: 3, character: 0 }, end: { line: 3, character: 10 } },
    });
    expect(itemOf({ ...PART, at: undefined }).command).toBeUndefined();
  });

  test.each([
    ['work', 2],
    ['stops', 2],
    ['costs', 1],
  ])('%s with something in it opens as %i', (id, state) => {
    expect(itemOf({ ...PART, id, children: [PART] }).collapsibleState).toBe(state);
  });

  test.each([
    [{ figure: 'a', draws: 'b' }, 'figure draws'],
    [{ figure: 'a', draws: undefined }, 'figure'],
    [{ figure: undefined, draws: undefined }, ''],
  ])('menus know it by %o', (more, context) => {
    expect(contextOf({ ...PART, ...more })).toBe(context);
  });

  test('its tooltip holds the working, and what is missing', () => {
    const { value } = tooltipOf({ ...PART, lacks: ['the length'] }, '- 2 × 3');
    expect(value).toContain('**North side**');
    expect(value).toContain('- 2 × 3');
    expect(value).toContain('Not complete\\. Missing: the length\\.');
  });

  test('what a file says is text in it, and no Markdown', () => {
    const { value } = tooltipOf({ ...PART, label: '[x](command:evil)' }, undefined);
    expect(value).not.toContain('[x](');
  });
});

describe('the tree', () => {
  const JOB: JobParts = {
    title: 'Orchard',
    price: '£1',
    complete: true,
    parts: [{ ...PART, id: 'work', children: [PART] }],
  };

  test('is drawn again only when something has changed', () => {
    const tree = new PartsOfJob(serverWith({}).server);
    let drawn = 0;
    tree.onDidChangeTreeData(() => {
      drawn += 1;
    });
    tree.show('file:///a.perp', JOB);
    tree.show('file:///a.perp', structuredClone(JOB));
    expect(drawn).toBe(1);
    tree.show('file:///a.perp', { ...JOB, parts: [] });
    expect(drawn).toBe(2);
  });

  test('knows of each row whose child it is', () => {
    const tree = new PartsOfJob(serverWith({}).server);
    tree.show('file:///a.perp', JOB);
    const [top] = tree.getChildren();
    const [child] = tree.getChildren(top);
    expect(tree.getParent(child!)).toBe(top);
    expect(child).toMatchObject({ uri: 'file:///a.perp', part: PART });
  });

  test('asks for a working only where the pointer rests', async () => {
    const { server, asked } = serverWith({ [PART_TOLD]: { markdown: '- 8 × 8' } });
    const tree = new PartsOfJob(server);
    tree.show('file:///a.perp', JOB);
    const row = { part: PART, uri: 'file:///a.perp' };
    const item = tree.getTreeItem(row);
    expect(asked).toEqual([]);
    await tree.resolveTreeItem(item, row);
    expect(asked).toEqual([
      { method: PART_TOLD, params: { uri: 'file:///a.perp', figure: 'north.price' } },
    ]);
    expect((item.tooltip as { value: string }).value).toContain('- 8 × 8');
  });
});
