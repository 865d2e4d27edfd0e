/** The mortar that each place of a piece of work wants, as a library has it. */
import type { Work } from '../brickwork/work';
import { type BlockFacts, type Env, factsOf, LineFacts } from '../resolve/env';
import { classNamed, type MortarClass } from './classes';

export type Place = 'dpc' | 'coping' | 'free-standing' | 'below-dpc' | 'retaining';

export interface Wanted {
  readonly place: Place;
  readonly of: MortarClass;
  readonly line: LineFacts;
  readonly source: readonly string[];
  /** The line of the work that may name a mix for that place alone. */
  readonly own?: LineFacts;
}

/** What a wall or pier wants, place by place; nothing where no library says. */
export function wantedIn(work: Work, env: Env): Wanted[] {
  const facts = factsOf(work.block, env);
  if (!facts || work.kind === 'repair') return [];
  const zone = facts.orDefault('exposure')?.word('zone');
  return placesOf(work, facts).flatMap((place) => {
    const wanted = wantedAt(place, zone, env);
    const own = place === 'dpc' || place === 'coping' ? facts.line(place) : undefined;
    return wanted ? { ...wanted, own } : [];
  });
}

function placesOf(work: Work, facts: BlockFacts): Place[] {
  const { does } = work.facts;
  const dpc = facts.line('dpc') !== undefined;
  // Brickwork that begins on its footing and has no damp course stands as wet as what lies below one.
  const low = !dpc && facts.line('footing') !== undefined;
  const onTop = (facts.line('coping')?.word('kind') ?? '').startsWith('brick-on-e');
  const places: readonly (readonly [Place, boolean])[] = [
    ['free-standing', does.has('free-standing')],
    ['retaining', does.has('retaining')],
    ['dpc', dpc],
    ['below-dpc', low],
    ['coping', onTop],
  ];
  return places.flatMap(([place, there]) => (there ? [place] : []));
}

/** The line for that exposure, else the one for any. */
function wantedAt(place: Place, zone: string | undefined, env: Env): Wanted | undefined {
  const lines = env.book
    .all('least-mortar', place)
    .map(({ block, line }) => new LineFacts(block, line, env));
  const line =
    lines.find((l) => l.word('zone') && l.word('zone') === zone) ??
    lines.find((l) => !l.word('zone'));
  const of = line && classNamed(line.word('class'), env);
  if (!line || !of) return undefined;
  const source = factsOf(line.block, env)?.lines('source') ?? [];
  return { place, of, line, source: source.map((s) => s.word('text')) };
}
