import type { Metafile } from 'esbuild';

/** What the tests use of bundles.mjs. */
export interface Bundle {
  readonly entry: string;
  readonly out: string;
}

export const root: string;
export const shipped: readonly Bundle[];
export function makeBundle(
  bundle: Bundle,
  options?: { dev?: boolean; write?: boolean },
): Promise<Metafile>;
