import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DiskIndex, type FolderHost, filesUnder } from '../../server/engine/firm/disk-index';
import { summaryOf } from '../../server/engine/firm/read';
import { readSaved, savedText } from '../../server/engine/firm/saved';
import { firmJob } from '../harness/firm-jobs';
import { aRecord, jobWith } from './folder';

/** A disk in memory, that counts what is read of it. */
class Disk implements FolderHost {
  readonly files = new Map<string, { text: string; changed: number }>();
  readonly read_: string[] = [];
  private now = 1;

  write(file: string, text: string): void {
    this.files.set(file, { text, changed: this.now++ });
  }

  list(folder: string) {
    const here = [...this.files.keys()].filter((f) => f.startsWith(`${folder}/`));
    const names = new Map(
      here.map((f) => {
        const [name, ...rest] = f.slice(folder.length + 1).split('/');
        return [name!, rest.length ? ('folder' as const) : ('file' as const)];
      }),
    );
    return [...names].map(([name, is]) => ({ name, is }));
  }

  stamp(file: string) {
    const found = this.files.get(file);
    return found && { size: found.text.length, changed: found.changed };
  }

  read(file: string) {
    this.read_.push(file);
    return this.files.get(file)?.text;
  }

  join(folder: string, name: string) {
    return `${folder}/${name}`;
  }
}

function look(index: DiskIndex, disk: Disk): void {
  const files = [...filesUnder('/f', disk)];
  for (const file of files) index.look(file);
  index.only(files);
}

const sorted = (index: DiskIndex) => [...index.jobs].sort((a, b) => (a.file < b.file ? -1 : 1));

describe('an index', () => {
  test('reads one edited file, and no other', () => {
    const disk = new Disk();
    for (let i = 0; i < 200; i++) disk.write(`/f/${i % 7}/job-${i}.perp`, firmJob(i));
    const index = new DiskIndex(disk);
    look(index, disk);
    expect(disk.read_.length).toBe(200);
    look(index, disk);
    expect(disk.read_.length).toBe(200);
    disk.write('/f/3/job-10.perp', `${firmJob(10)}# more\n`);
    look(index, disk);
    expect(disk.read_.slice(200)).toEqual(['/f/3/job-10.perp']);
  });

  test('is what a fresh reading gives, after whatever edits and from its saved text', () => {
    const edit = fc.record({
      file: fc.integer({ min: 0, max: 5 }),
      record: fc.option(aRecord, { freq: 4 }),
      save: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 12 }), (edits) => {
        const disk = new Disk();
        let index = new DiskIndex(disk);
        for (const { file, record, save } of edits) {
          if (record) disk.write(`/f/job-${file}.perp`, jobWith(record));
          else disk.files.delete(`/f/job-${file}.perp`);
          look(index, disk);
          if (!save) continue;
          const again = readSaved(savedText(index.entries, '/f'), '/f');
          if (typeof again === 'string') throw new Error(again);
          index = new DiskIndex(disk, again);
          look(index, disk);
          expect(index.reads).toBe(0);
        }
        const fresh = new DiskIndex(disk);
        look(fresh, disk);
        // As JSON: what is not there is left out of a saved one.
        expect(JSON.stringify(sorted(index))).toBe(JSON.stringify(sorted(fresh)));
      }),
      { numRuns: 40 },
    );
  });

  test('passes by what is hidden, what tools keep, and what is no job’s file', () => {
    const disk = new Disk();
    const names = ['a.perp', 'b/c.PERP', '.git/d.perp', 'node_modules/e.perp', '.f.perp', 'g.txt'];
    for (const name of names) disk.write(`/f/${name}`, 'perpend 1\n');
    expect([...filesUnder('/f', disk)].sort()).toEqual(['/f/a.perp', '/f/b/c.PERP']);
  });
});

describe('a saved index', () => {
  const disk = new Disk();
  for (let i = 0; i < 5; i++) disk.write(`/f/job-${i}.perp`, firmJob(i));
  const index = new DiskIndex(disk);
  look(index, disk);
  const text = savedText(index.entries, '/f');

  test.each([
    ['', 'is no index of jobs'],
    ['[]', 'is no index of jobs'],
    ['null', 'is no index of jobs'],
    ['{"format":"perpend-price"}', 'is no index of jobs'],
    [text.slice(0, -20), 'is no index of jobs'],
    [text.replace('"version":1', '"version":2'), 'is of another version'],
    [text.replace('"/f"', '"/g"'), 'is of another folder'],
    [text.replace('"isJob":true', '"isJob":1'), 'is damaged'],
    [text.replace(/"kind":"sent","date":"\d{4}/, '"kind":"sent","date":"20-4'), 'is damaged'],
    [text.replace(/\["\d+(\.\d+)?","£"\]/, '["NaN","£"]'), 'is damaged'],
    [text.replace(/\["\d+(\.\d+)?","£"\]/, '["1e9999","£"]'), 'is damaged'],
    ['{"format":"perpend-index","version":1,"folder":"/f","files":[[1]]}', 'is damaged'],
  ])('that is not ours or not whole is thrown away: %.40s', (broken, why) => {
    expect(broken).not.toBe(text);
    expect(readSaved(broken, '/f')).toBe(why);
  });

  test('with any one character changed is refused, or harmless', () => {
    fc.assert(
      fc.property(
        fc.nat(text.length - 2),
        fc.constantFrom('"', '{', '9', 'x', ',', '-'),
        (at, put) => {
          const found = readSaved(text.slice(0, at) + put + text.slice(at + 1), '/f');
          if (typeof found !== 'string') look(new DiskIndex(disk, found), disk);
        },
      ),
      { numRuns: 200 },
    );
  });
});

describe('a file', () => {
  test('whose walls cannot be read gives its record all the same', () => {
    const text = jobWith(['sent 2026-03-02 £5.00']).replace('length 3.37 m', 'lenght ??? £');
    expect(summaryOf(text).entries.map((e) => e.kind)).toEqual(['sent']);
  });

  test('of any text is read without a fault of the program', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
        for (const each of [
          text,
          `record\n  paid ${text}`,
          `job "x"\n  ${text}\nrecord\n  worked ${text}`,
        ])
          expect(summaryOf(each).entries.every((e) => /^\d{4}-\d\d-\d\d$/.test(e.date))).toBe(true);
      }),
      { numRuns: 30 },
    );
  });

  test('too large for the engine holds nothing', () => {
    expect(summaryOf(`job "x"\n${'#'.repeat(4 * 1024 * 1024)}`).isJob).toBe(false);
  });
});
