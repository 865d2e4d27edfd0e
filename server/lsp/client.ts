/** What is asked of the client about files. */
import type { Connection } from 'vscode-languageserver';
import {
  FIND,
  type FileRead,
  type FindParams,
  READ,
  type ReadParams,
} from '../../shared/protocol/files';
import { type AskFor, ClientFiles } from './client-files';
import { type AskWhere, ClientFolders } from './client-folders';

/** @param reads whether the client says that it answers; without it nothing is there */
export function clientFiles(connection: Connection, reads: boolean) {
  const ask: AskFor = async (params: ReadParams) =>
    reads ? connection.sendRequest<FileRead>(READ, params) : { none: 'missing' };
  const where: AskWhere = async (folder, most) => {
    const params: FindParams = { folder, most };
    return reads ? connection.sendRequest<string[]>(FIND, params) : [];
  };
  return { files: new ClientFiles(ask), jobFiles: new ClientFolders(where, ask) };
}
