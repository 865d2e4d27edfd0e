/** What leads out of a text: «…» stands around each link, in order. */
import { describe, expect, test } from 'vitest';
import { linksOf } from '../../server/engine/ide/links';
import { SourceFile } from '../../server/engine/workspace/source';
import { took } from '../harness/took';
import { markedFiles } from './marked-files';

function found(marked: string) {
  const { files, file, places } = markedFiles(marked);
  const links = linksOf(new SourceFile(file, files[file]!));
  return {
    found: links.map(({ span }) => `${file}:${span.line}:${span.start}-${span.end}`),
    wanted: places,
    to: links.map(({ to }) => Object.values(to).join('')),
    tips: links.map(({ tip }) => tip),
  };
}

describe('links', () => {
  test.each<[title: string, marked: string, to: string[]]>([
    ['a used file', 'use "«firm.perp»"', ['firm.perp']],
    ['a file of another folder', 'use "«../common/firm.perp»"', ['../common/firm.perp']],
    ['two used files', 'use "«a.perp»"\nuse "«b.perp»"', ['a.perp', 'b.perp']],
    ['a name with an escaped mark', 'use "«a\\"b.perp»"', ['a"b.perp']],
    ['curved quotation marks', 'use “«firm.perp»”', ['firm.perp']],
    ['a text that is not closed', 'use "«firm.perp»', ['firm.perp']],
    ['a library', 'use «uk»', ['uk']],
    ['the file of a partner', 'partner abc "A"\n  file "«abc.perp»"', ['abc.perp']],
    ['the logo', 'firm "F"\n  logo "«logo.png»"', ['logo.png']],
    ['an address for mail', 'firm "F"\n  email "«a.b@reed.example»"', ['mailto:a.b@reed.example']],
    [
      'the mail of who is billed',
      'bill-to "F"\n  email "«a@reed.example»"',
      ['mailto:a@reed.example'],
    ],
    ['a telephone', 'firm "F"\n  phone "«01632 960 144»"', ['tel:01632960144']],
    ['a telephone from abroad', 'firm "F"\n  phone "«+44 (0)1632 960144»"', ['tel:+441632960144']],
    [
      'a page in a text',
      'brick red\n  source "Leaflet 4, «https://bricks.example/red?a=1», page 2"',
      ['https://bricks.example/red?a=1'],
    ],
    [
      'two pages in a text',
      'brick red\n  source "«http://a.example» and «https://b.example/c»."',
      ['http://a.example', 'https://b.example/c'],
    ],
    ['no address without an at', 'firm "F"\n  email "reed.example"', []],
    ['no address with a question in it', 'firm "F"\n  email "a@b.example?bcc=c@d.example"', []],
    ['no telephone of words', 'firm "F"\n  phone "ask at the yard"', []],
    [
      'no other scheme',
      'brick red\n  source "file:///etc/passwd javascript:alert(1) ftp://a.example"',
      [],
    ],
    ['nothing in a comment', '# use "firm.perp"\n# https://a.example', []],
    ['nothing in a faulty line', 'us "firm.perp"\nuse', []],
    ['no name of a thing', 'wall a\n  brick red', []],
    ['an empty name', 'use "«»"', ['']],
  ])('%s', (_, marked, to) => {
    const each = found(marked);
    expect(each.found).toEqual(each.wanted);
    expect(each.to).toEqual(to);
  });

  test('each says what it does', () => {
    const { tips } = found(
      'use "a.perp"\nuse uk\nfirm "F"\n  email "a@b.example"\n  phone "01632"\n  logo "l.png"',
    );
    expect(tips).toEqual([
      'Open the file that is used',
      'Open the library',
      'Write to a@b.example',
      'Call 01632',
      'Open the picture',
    ]);
  });

  test('very long texts take no time', () => {
    const long = `firm "F"\n  email "${'a@'.repeat(50_000)}"\n  phone "${'1 '.repeat(50_000)}x"\n  terms "${'http://.'.repeat(30_000)}"`;
    expect(took(() => linksOf(new SourceFile('a.perp', long)), 2)).toBeLessThan(1500);
  });
});
