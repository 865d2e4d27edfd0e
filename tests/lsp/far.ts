/** Files that are on no disk, as an editor would read them for the server. */

import { base64 } from '../../shared/base64';
import {
  FIND,
  type FileRead,
  type FindParams,
  READ,
  type ReadParams,
} from '../../shared/protocol/files';
import type { Peer } from './peer';

export class Far {
  /** By their addresses. */
  readonly files = new Map<string, string | Uint8Array>();
  /** What was asked for, in order. */
  readonly asked: ReadParams[] = [];
  /** Before each answer. */
  before: (uri: string) => Promise<void> | void = () => undefined;

  /** Answers for this client from now on. */
  serve(peer: Peer): this {
    peer.connection.onRequest<FileRead, never>(READ, async (params: ReadParams) => {
      this.asked.push(params);
      await this.before(params.uri);
      return this.read(params);
    });
    peer.connection.onRequest(FIND, ({ folder, most }: FindParams) =>
      [...this.files.keys()].filter((uri) => uri.startsWith(`${folder}/`)).slice(0, most),
    );
    return this;
  }

  private read({ uri, most }: ReadParams): FileRead {
    const found = this.files.get(uri);
    if (found === undefined) return { none: 'missing' };
    const bytes = typeof found === 'string' ? new TextEncoder().encode(found) : found;
    return bytes.length > most ? { none: 'large' } : { base64: base64(bytes) };
  }

  get uris(): string[] {
    return this.asked.map(({ uri }) => uri);
  }
}
