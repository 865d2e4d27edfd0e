import type { Metafile } from 'esbuild';

/** What the tests use of bundles.mjs. */
export interface Bundle {
  /** Not there for the engine, which is made of what the others ask for. */
  readonly entry?: string;
  readonly out: string;
}

export const root: string;
export const shipped: readonly Bundle[];
export function makeBundle(
  bundle: Bundle,
  options?: { dev?: boolean; write?: boolean; apart?: boolean },
): Promise<Metafile>;
