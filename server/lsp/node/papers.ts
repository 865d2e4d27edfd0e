/** What draws papers, in the files beside the bundle. */
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import type { Papers } from '../surroundings';

const FONTS = path.join(__dirname, 'fonts');

export const PAPERS: Papers = {
  // The build makes a file beside this one of it, which nothing reads before.
  writers: async () => require('../../documents/paper/heavy'),
  async fonts() {
    const [regular, bold, signs] = await Promise.all(
      ['NotoSans-Regular.ttf', 'NotoSans-Bold.ttf', 'NotoSansMath-Signs.ttf'].map(read),
    );
    return { regular: regular!, bold: bold!, signs: signs! };
  },
};

async function read(name: string): Promise<Uint8Array> {
  return new Uint8Array(await readFile(path.join(FONTS, name)));
}
