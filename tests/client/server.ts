/** A server that answers what a test says, and keeps what it was asked. */
import type { Server } from '../../client/server';

export interface Stub {
  readonly server: Server;
  readonly asked: { method: string; params: Record<string, unknown> }[];
}

type Answer = (params: Record<string, unknown>) => unknown;

/** @param answers by the method’s name: a value, or what makes it */
export function serverWith(answers: Readonly<Record<string, unknown>>): Stub {
  const asked: Stub['asked'] = [];
  const request = async (method: string, params: Record<string, unknown>) => {
    asked.push({ method, params });
    const answer = answers[method];
    return typeof answer === 'function' ? (answer as Answer)(params) : (answer ?? null);
  };
  const log = { error: () => undefined, debug: () => undefined, show: () => undefined };
  const onProgress = () => ({ dispose: () => undefined });
  const server = { request, ask: request, log, onProgress, uri: String };
  return { server: server as unknown as Server, asked };
}
