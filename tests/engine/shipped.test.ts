import { describe, expect, test } from 'vitest';
import { shippedLibraries } from '../../server/engine/shipped';
import { headingWords, SourceFile } from '../../server/engine/workspace/source';
import { Workspace } from '../../server/engine/workspace/workspace';

test('a library that is open in the editor ships as before, and is no file of the firm’s', () => {
  const libraries = shippedLibraries((file) => file);
  const host = { resolve: () => undefined, read: () => undefined };
  const workspace = new Workspace(host as never, libraries);
  const { file, text } = libraries.uk!;
  workspace.opened(file, text);
  expect(workspace.library('uk')).toBe(workspace.file(file));
  expect(workspace.library('uk')).toMatchObject({ shipped: true, lazily: false });
  workspace.opened('job.perp', 'perpend 1\n');
  expect(workspace.file('job.perp')).toMatchObject({ shipped: false });
});

/** Blocks of libraries that ship are known by the words of their heading until they are read. */
describe.each(Object.entries(shippedLibraries((file) => file)))(
  'the library %s',
  (name, { text }) => {
    const read = new SourceFile(name, text);
    const shelved = new SourceFile(name, text, true);

    test('its blocks are the same kinds and names before they are read as after', () => {
      expect(read.blocks.length).toBeGreaterThan(1);
      for (const block of read.blocks) {
        const [kind, named] = headingWords(block.lines);
        expect([kind, named]).toEqual([block.kind, block.name]);
      }
      expect(shelved.blocks.map((b) => [b.kind, b.name])).toEqual(
        read.blocks.map((b) => [b.kind, b.name]),
      );
    });

    test('no line of it has a fault', () => {
      expect(shelved.blocks.flatMap((b) => b.read.faults)).toEqual([]);
    });
  },
);
