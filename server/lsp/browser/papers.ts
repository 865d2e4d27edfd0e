/** What draws papers, handed over by the client when the first one is asked for. */

import type { Connection } from 'vscode-languageserver';
import { fromBase64 } from '../../../shared/base64';
import { type FileRead, PART, type PartParams } from '../../../shared/protocol/files';
import type * as heavy from '../../documents/paper/heavy';
import type { Papers } from '../surroundings';
import { evaluated } from './script';

export function papersFrom(connection: Connection): Papers {
  const part = async (name: string) => {
    const params: PartParams = { name };
    const read = await connection.sendRequest<FileRead>(PART, params);
    if ('none' in read) throw new Error(`The editor has no file ${name} beside the extension.`);
    return fromBase64(read.base64);
  };
  return { writers: once(() => writers(part)), fonts: once(() => fonts(part)) };
}

type Part = (name: string) => Promise<Uint8Array<ArrayBuffer>>;

async function writers(part: Part): Promise<typeof heavy> {
  return evaluated(await part('papers.cjs')) as typeof heavy;
}

async function fonts(part: Part): Promise<heavy.Fonts> {
  const named = (name: string) => part(`fonts/${name}.ttf`);
  const [regular, bold, signs] = await Promise.all(
    ['NotoSans-Regular', 'NotoSans-Bold', 'NotoSansMath-Signs'].map(named),
  );
  return { regular: regular!, bold: bold!, signs: signs! };
}

/** Asked for once; again only after it failed. */
function once<T>(work: () => Promise<T>): () => Promise<T> {
  let known: Promise<T> | undefined;
  return () => {
    known ??= work().catch((error) => {
      known = undefined;
      throw error;
    });
    return known;
  };
}
