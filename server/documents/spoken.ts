/**
 * A paper is in one language throughout: its own words, and what the engine says on it. The engine speaks the reader's
 * language as it works a job out; so for a paper of another language the job is worked out anew in that one.
 */
import { type Bundle, language, speak } from '../../shared/phrase';
import type { Job } from '../engine/workspace/job';
import { languageOf } from './letterhead';
import { PHRASES_DE } from './words/de/phrases';

/** By the language without its country; English needs none. */
const BUNDLES: Readonly<Record<string, Bundle>> = { de: PHRASES_DE };

/** @param jobs the first says which language; all come worked out in it, in the same order */
export function inItsLanguage<T>(jobs: readonly Job[], make: (...jobs: Job[]) => T): T {
  const words = bundleFor(languageOf(jobs[0]!));
  const before = language();
  if (words === before) return make(...jobs);
  speak(words);
  try {
    return make(...jobs.map((job) => job.anew()));
  } finally {
    speak(before);
  }
}

function bundleFor(tag: string): Bundle | undefined {
  const [name = ''] = tag.split('-');
  return Object.hasOwn(BUNDLES, name) ? BUNDLES[name] : undefined;
}
