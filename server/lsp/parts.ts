/** What every feature is registered with. */
import type { Connection } from 'vscode-languageserver';
import type { Answers } from './answers';
import type { Client } from './from-proto';
import type { Session } from './session';

export interface Parts {
  readonly connection: Connection;
  readonly answers: Answers;
  readonly client: () => Client;
  readonly session: () => Session;
}
