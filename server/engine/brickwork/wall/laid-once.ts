/** Walls that were set out a moment ago: a line changed that moves no brick, or that is tried and taken back, lays none again. */
import { type SettingOut, setOut, type WallSpec } from '../../setting-out';

/** More than the ways out of one wall ask for; then all are let go. */
const MOST_KEPT = 64;
/** A wall with more openings than this is not kept: it takes much room, and nobody tries its ways one by one. */
const MOST_OPENINGS = 60;

const kept = new Map<string, SettingOut>();

/** The same as {@link setOut}: what it takes in is plain numbers and names, and all of them are its key. */
export function laidOnce(spec: WallSpec): SettingOut {
  if (spec.openings.length > MOST_OPENINGS) return setOut(spec);
  const key = JSON.stringify(spec);
  const known = kept.get(key);
  if (known) return known;
  if (kept.size >= MOST_KEPT) kept.clear();
  const out = setOut(spec);
  kept.set(key, out);
  return out;
}
