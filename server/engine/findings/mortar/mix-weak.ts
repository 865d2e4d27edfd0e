/** A mix that is weaker than its place wants: the whole wall, or some of its courses. */

import { listed } from '../../../../grammar/read/numbers';
import { later, phrase, spoken } from '../../../../shared/phrase';
import { mixOf } from '../../brickwork/goods';
import type { Work } from '../../brickwork/work';
import { classesIn, gradeOf, type MortarClass } from '../../mortar/classes';
import { type Place, type Wanted, wantedIn } from '../../mortar/wanted';
import { type BlockFacts, type Env, factsOf } from '../../resolve/env';
import { headOrigin, nameOrigin, type Remark } from '../remark';
import { ownMixes, strongerMixes } from './stronger';

const WORDS: Readonly<Record<Place, string>> = {
  'free-standing': later`a wall that stands free`,
  retaining: later`a wall that holds back soil`,
  dpc: later`its damp course`,
  'below-dpc': later`its lowest courses, which have no damp course under them`,
  coping: later`the bricks on its top`,
};

/** A piece of work is worked out anew when its lines change, or those of any mix or class. */
const known = new WeakMap<Work, Remark[]>();

/** Of each piece of work that is laid in a mix whose class is known. */
export function mixWeak(works: readonly Work[], env: Env): Remark[] {
  if (!classesIn(env).length) return [];
  const all = works.flatMap((work) => {
    const told = known.get(work) ?? weakIn(work, env);
    known.set(work, told);
    return told;
  });
  return together(all);
}

/** More places than these are not looked up one by one. */
const MOST_PLACES = 10;

/** What is the same of several pieces of work is told once, at the first; what is a warning, of each. */
function together(all: readonly Remark[]): Remark[] {
  const alike = new Map<string, Remark[]>();
  const key = (remark: Remark, i: number) =>
    remark.severity === 'information' ? remark.message : `${i}`;
  for (const [i, remark] of all.entries()) {
    const same = alike.get(key(remark, i));
    if (same) same.push(remark);
    else alike.set(key(remark, i), [remark]);
  }
  return [...alike.values()].map(([first, ...others]) => {
    const also = others
      .slice(0, MOST_PLACES)
      .map(({ origin }) => ({ origin, message: phrase`Here too` }));
    return also.length ? { ...first!, related: [...also, ...(first!.related ?? [])] } : first!;
  });
}

function weakIn(work: Work, env: Env): Remark[] {
  const facts = factsOf(work.block, env);
  const mix = facts && mixOf(facts.orDefault('mix'), env, facts.origin);
  const graded = mix?.facts && gradeOf(mix.facts, env);
  if (!facts || !mix) return [];
  const all = wantedIn(work, env);
  const apart = all.filter(({ own }) => own?.values.mix);
  const told = apart.flatMap((w) => apartWeak(w, work, facts, env));
  if (!graded || !(graded.of || graded.sandier)) return told;
  const strength = graded.of?.strength ?? 0;
  const short = all.filter((w) => !apart.includes(w) && w.of.strength > strength);
  const whole = short.find(isWhole);
  const parts = short.filter((w) => !isWhole(w));
  const about = { work, facts, title: mix.title, of: graded.of, env };
  const [lines, rest] = [parts.filter((w) => w.own), parts.filter((w) => !w.own)];
  return [
    ...(whole ? [wholeWeak(about, whole)] : []),
    ...(lines.length ? [linesWeak(about, lines)] : []),
    ...(rest.length ? [partsWeak(about, rest)] : []),
    ...told,
  ];
}

/** A mix of its own that is no stronger than it should be. */
function apartWeak(wanted: Wanted, work: Work, facts: BlockFacts, env: Env): Remark[] {
  const line = wanted.own!;
  const mix = mixOf(line, env, line.origin);
  const graded = mix.facts && gradeOf(mix.facts, env);
  if (!graded || !(graded.of || graded.sandier)) return [];
  if ((graded.of?.strength ?? 0) >= wanted.of.strength) return [];
  const about = { work, facts, title: mix.title, of: graded.of, env };
  return [linesWeak(about, [wanted])];
}

/** Other places have an engineer to ask, or are a few courses that can be mixed for. */
const isWhole = ({ place }: Wanted) => place === 'free-standing';

export interface About {
  readonly work: Work;
  readonly facts: BlockFacts;
  readonly title: string;
  readonly of: MortarClass | undefined;
  readonly env: Env;
}

function classText(of: MortarClass | undefined): string {
  return of ? named(of) : phrase`weaker than every class here`;
}

function named(of: MortarClass): string {
  return of.title === of.name ? of.name : `${of.name} (${of.title})`;
}

function wholeWeak(about: About, wanted: Wanted): Remark {
  const { work, facts, title, of } = about;
  const line = facts.line('mix');
  const from = sourceText([wanted]);
  const message = phrase`${title} is ${classText(of)}, and ${spoken(WORDS[wanted.place])} wants ${named(wanted.of)}: a weaker one is washed and frozen out of the joints. Take a stronger mix, or keep it if the brick or old work asks for a soft one and the wall is well covered${from}.`;
  return {
    code: 'mix-weak',
    severity: 'warning',
    origin: line?.at('mix') ?? nameOrigin(work.block),
    message,
    related: relatedTo([wanted]),
    ways: () => strongerMixes(about, wanted),
  };
}

/** Places whose lines may name a mix for them alone. */
function linesWeak(about: About, wanted: readonly Wanted[]): Remark {
  const advice = phrase`Give them a mix of their own, stronger, on their line: it is counted and bought apart.`;
  return { ...inPlaces(about, wanted, advice), ways: () => ownMixes(about, wanted) };
}

function partsWeak(about: About, wanted: readonly Wanted[]): Remark {
  return inPlaces(
    about,
    wanted,
    phrase`Mix those courses’ mortar apart, with more cement; the amounts here count one mix for all.`,
  );
}

function inPlaces({ work, title, of }: About, wanted: readonly Wanted[], advice: string): Remark {
  const places = wanted.map((w) => `${spoken(WORDS[w.place])} ${named(w.of)}`);
  const message = phrase`${title} is ${classText(of)}. Wanted ${places.length === 1 ? phrase`is` : phrase`are`}: for ${listed(places, 'and')}. ${advice} Soft old work may ask for less: ask whoever looks after it${sourceText(wanted)}.`;
  return {
    code: 'caution-mortar',
    severity: 'information',
    origin: nameOrigin(work.block),
    message,
    related: relatedTo(wanted),
  };
}

function sourceText(wanted: readonly Wanted[]): string {
  const sources = [...new Set(wanted.flatMap((w) => w.source))];
  return sources.length ? ` (${listed(sources, 'and')})` : '';
}

function relatedTo(wanted: readonly Wanted[]): Remark['related'] {
  const lines = wanted.map(({ line }) => ({
    origin: line.origin,
    message: phrase`What the library wants there`,
  }));
  const classes = wanted.map(({ of }) => ({
    origin: headOrigin(of.facts.block),
    message: phrase`${named(of)} in the library`,
  }));
  return [...lines, ...classes];
}
