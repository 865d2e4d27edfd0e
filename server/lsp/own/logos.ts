/** Logos of firms that have been read, for previews: those are asked for at every key, and wait for no file. */
import { CHANGED } from '../../../shared/protocol';
import { logoNamed } from '../../documents/letterhead';
import type { Job } from '../../engine/workspace/job';
import type { Parts } from '../parts';
import { logoOf } from './pages';

export type Logo = Awaited<ReturnType<typeof logoOf>>;

const NONE: Logo = { asides: [] };
/** So long what was read is taken for what stands there, ms: nobody tells of a picture that has changed. */
const FRESH_MS = 5000;
/** So many firms nobody works for in one window. */
const MOST = 8;

export class Logos {
  private readonly known = new Map<string, { logo: Logo; at: number }>();

  constructor(private readonly parts: Parts) {}

  /** What is known of it now. When it is read, and is another, the client is told to ask again. */
  of(job: Job): Logo {
    const named = logoNamed(job);
    if (!named) return NONE;
    const key = JSON.stringify(named);
    const known = this.known.get(key);
    if (!known || performance.now() - known.at > FRESH_MS) void this.read(key, job);
    return known?.logo ?? NONE;
  }

  private async read(key: string, job: Job): Promise<void> {
    const before = this.known.get(key)?.logo ?? NONE;
    this.put(key, before);
    const logo = await logoOf(this.parts.session(), job).catch(() => NONE);
    this.put(key, logo);
    if (!alike(logo, before)) void this.parts.connection.sendNotification(CHANGED);
  }

  private put(key: string, logo: Logo): void {
    this.known.set(key, { logo, at: performance.now() });
    const [oldest] = this.known.keys();
    if (this.known.size > MOST) this.known.delete(oldest!);
  }
}

function alike(one: Logo, other: Logo): boolean {
  const [a, b] = [bytesOf(one), bytesOf(other)];
  if (a?.length !== b?.length || one.asides.join() !== other.asides.join()) return false;
  return !a || a.every((byte, i) => byte === b![i]);
}

function bytesOf(logo: Logo): Uint8Array | undefined {
  return 'logo' in logo ? logo.logo?.bytes : undefined;
}
