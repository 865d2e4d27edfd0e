/** What is done in a piece of work: cutting, raking, taking down, digging, laying. */
import { type Gathered, lineIn, type Standing, type What } from './holding';

/** Lines that a thing done is told of at, the nearest first; else the name of the work. */
const AT: Readonly<Partial<Record<What, readonly string[]>>> = {
  cutting: ['length', 'size', 'rebuild', 'match'],
  'taking-down': ['rebuild', 'recope', 'rebed', 'replace'],
  raking: ['repoint', 'cut-out', 'stitch', 'rebed'],
  piers: ['pier', 'at'],
  lintel: ['lintel'],
  arch: ['head'],
  'free-standing': ['stands'],
  held: ['stands'],
  retaining: ['stands'],
  footing: ['footing'],
};

/** What a piece of work may say it does; any other word is no caution’s. */
const DONE: readonly What[] = [
  'cutting',
  'raking',
  'taking-down',
  'piers',
  'lintel',
  'arch',
  'free-standing',
  'retaining',
];

export function doing(standing: Standing, into: Gathered): void {
  const { work, facts } = standing;
  const at = (what: What) => lineIn(facts, AT[what] ?? []) ?? into.home;
  const kinds = mendsPier(standing) ? ['repair', 'pier'] : [work.kind];
  for (const what of ['any', ...kinds] as What[]) into.add(what, { origin: into.home });
  const done = new Set([...standsHow(standing), ...DONE.filter((w) => work.facts.does.has(w))]);
  for (const what of done) into.add(what, { origin: at(what) });
  if (isLaid(standing)) into.add('laying', { origin: into.home });
  if (work.needs.tasks.some(({ task }) => task === 'footing'))
    into.add('footing', { origin: at('footing') });
}

/** A pier that is mended leans and falls as one that is built does. */
function mendsPier({ work, wall, facts }: Standing): boolean {
  if (work.kind !== 'repair') return false;
  return wall?.kind === 'pier' || !!work.facts.rebuilt?.pier || facts.line('size') !== undefined;
}

/** Known of a wall or a pier even where it cannot be laid yet. */
function standsHow({ work, facts }: Standing): What[] {
  if (work.kind === 'pier') return ['free-standing', 'piers'];
  if (work.kind !== 'wall') return [];
  const how = facts.orDefault('stands')?.word('how') ?? 'free';
  return [how === 'free' ? 'free-standing' : (how as What)];
}

/** In mortar or concrete: a wall or a pier always, a repair where it takes some. */
function isLaid({ work }: Pick<Standing, 'work'>): boolean {
  return work.kind !== 'repair' || work.needs.mixes.length > 0;
}
