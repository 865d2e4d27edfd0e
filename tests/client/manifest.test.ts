/** What the manifest promises, and what the code registers, are the same. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { registerCommands, type Workbench } from '../../client/commands';
import { files, read, root } from '../tree';
import { forget, seen } from './vscode';

vi.mock('vscode', () => import('./vscode'));
beforeEach(forget);

interface Item {
  readonly command?: string;
  readonly submenu?: string;
  readonly when?: string;
  readonly group?: string;
}

const { contributes } = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8')) as {
  contributes: {
    commands: { command: string; title: string; category: string; icon?: string }[];
    menus: Record<string, Item[]>;
    submenus: { id: string }[];
  };
};
const named = contributes.commands.map(({ command }) => command);
const palette = contributes.menus.commandPalette!;

/** Registered by name where they belong to, such as the preview. */
const REGISTERED = files()
  .filter((file) => /^client\/.*\.ts$/.test(file))
  .flatMap((file) => [...read(file).matchAll(/registerCommand\(\s*'(perpend\.[\w.]+)'/g)])
  .map(([, name]) => name!);

/** Whoever opens the editor for the first time has neither a job nor a folder. */
const NEED_NOTHING = ['perpend.new', 'perpend.examples', 'perpend.firm', 'perpend.start'];

describe('commands', () => {
  test('each of ours is in the manifest, and each of the manifest is ours', () => {
    registerCommands({} as Workbench);
    const ours = [...seen.commands.keys()];
    expect(ours.filter((name) => !named.includes(name))).toEqual([]);
    expect(named.filter((name) => !ours.includes(name) && !REGISTERED.includes(name))).toEqual([]);
  });

  test('all stand under one word', () => {
    expect([...new Set(contributes.commands.map(({ category }) => category))]).toHaveLength(1);
  });

  test('none is in the palette where it cannot run: only what begins something needs nothing', () => {
    const guarded = palette.filter(({ when }) => when).map(({ command }) => command);
    const bare = named.filter((name) => !guarded.includes(name));
    expect(bare.filter((name) => !NEED_NOTHING.includes(name))).toEqual([]);
  });
});

describe('menus', () => {
  const menus = Object.entries(contributes.menus);

  test.each(menus)('%s names what there is', (_, items) => {
    const submenus = contributes.submenus.map(({ id }) => id);
    for (const { command, submenu } of items)
      expect(command ? named : submenus).toContain(command ?? submenu);
  });

  test.each(menus.filter(([name]) => !name.startsWith('perpend.')))(
    '%s shows ours only where they belong',
    (name, items) => {
      const bare = items.filter(({ when }) => !when).map(({ command }) => command);
      const wanted = name === 'file/newFile' ? NEED_NOTHING : [];
      expect(bare.filter((each) => !wanted.includes(each!))).toEqual([]);
    },
  );

  test('the title of an editor has one picture of ours, and the rest behind the dots', () => {
    const shown = contributes.menus['editor/title']!.filter(
      ({ group, when }) => group?.startsWith('navigation') && when?.includes('editorLangId'),
    );
    expect(shown).toHaveLength(1);
  });

  test('a row of the tree has no more than three actions', () => {
    const inline = contributes.menus['view/item/context']!.filter(({ group }) =>
      group?.startsWith('inline'),
    );
    expect(inline.length).toBeLessThanOrEqual(3);
    // What can be pressed can be reached without a pointer too.
    const others = contributes.menus['view/item/context']!.filter(
      ({ group }) => !group?.startsWith('inline'),
    );
    expect(others.map(({ command }) => command)).toEqual(inline.map(({ command }) => command));
  });
});
