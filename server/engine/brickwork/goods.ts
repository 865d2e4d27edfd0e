/** Bricks and mixes as the work uses them: sizes in mm, joints with where they come from. */
import { phrase } from '../../../shared/phrase';
import { type BlockFacts, defaultTerm, type Env, factsNamed, type LineFacts } from '../resolve/env';
import type { UnitSize } from '../setting-out';
import {
  difference,
  fact,
  type Gap,
  missing,
  type Origin,
  quotient,
  type Term,
} from '../working/term';
import { inMm } from './lengths';

export interface Brick {
  readonly name: string;
  readonly title: string;
  readonly facts?: BlockFacts;
  /** Nothing when the brick or its size is not known. */
  readonly size?: UnitSize;
  /** Share of its volume that the frog takes, as a percentage. */
  readonly frog: Term;
  readonly origin: Origin;
  readonly gaps: readonly Gap[];
}

export interface Mix {
  readonly name: string;
  readonly title: string;
  readonly facts?: BlockFacts;
  readonly origin: Origin;
  readonly gaps: readonly Gap[];
}

/** The brick a line names. One that no file gives, or without a size, is a gap in every figure made of it. */
export function brickOf(line: LineFacts | undefined, env: Env, home: Origin, key = 'brick'): Brick {
  return brickNamed(line?.word(key) ?? '', env, line?.at(key) ?? home);
}

/** The same by its name, which stands at `origin`. */
export function brickNamed(name: string, env: Env, origin: Origin): Brick {
  const facts = factsNamed(env, 'brick', name);
  if (!facts) {
    const what = name ? phrase`the brick “${name}” is not known` : phrase`no brick is named`;
    return {
      name,
      title: name,
      frog: fact(phrase`frog`, 0, '%'),
      origin,
      gaps: [{ what, origin }],
    };
  }
  const size = sizeOf(facts);
  const gaps = size
    ? []
    : [{ what: phrase`the size of ${name} is not known`, origin: facts.origin }];
  const frog =
    facts.line('frog')?.term('share', phrase`frog`, '%') ??
    fact(phrase`frog`, 0, '%', facts.origin);
  return { name, title: facts.title, facts, size, frog, origin, gaps };
}

function sizeOf(facts: BlockFacts): UnitSize | undefined {
  const [length, width, height] = facts.line('size')?.sides('size') ?? [];
  return length && width && height ? { length, width, height } : undefined;
}

/** The mix that a line names, else the defaults’; with no such mix, one whose gaps say so. */
export function mixOf(line: LineFacts | undefined, env: Env, home: Origin, key = 'mix'): Mix {
  const origin = line?.at(key) ?? home;
  const name = line?.word(key) ?? '';
  const facts = factsNamed(env, 'mix', name);
  if (facts) return { name, title: facts.title, facts, origin, gaps: [] };
  const what = name ? phrase`the mix “${name}” is not known` : phrase`no mix is named`;
  return { name, title: name, origin, gaps: [{ what, origin }] };
}

export interface JointTerms {
  /** The upright joint, mm. */
  readonly perpend: Term;
  /** The bed joint, mm: what the gauge leaves over the brick, else the upright joint. */
  readonly bed: Term;
}

/** Joints of a piece of work: its own lines, else the brick’s, else the mix’s. */
export function jointsOf(facts: BlockFacts, brick: Brick, mix: Mix): JointTerms {
  const line = facts.line('joint') ?? brick.facts?.line('joint') ?? mix.facts?.line('joint');
  const perpend = line
    ? inMm(line.term('joint', phrase`joint`))
    : missing(phrase`joint`, 'mm', phrase`no joint is given`, facts.origin);
  const gauge = facts.line('gauge') ?? brick.facts?.line('gauge');
  return { perpend, bed: gauge && brick.size ? bedFrom(gauge, brick.size.height, brick) : perpend };
}

/** The bed joint that a brick is laid at where nothing else is measured: by its own gauge, else its joint, else the mix’s. */
export function usualBed(brick: Brick, mix: Mix): Term | undefined {
  const gauge = brick.facts?.line('gauge');
  if (gauge && brick.size) return bedFrom(gauge, brick.size.height, brick);
  const line = brick.facts?.line('joint') ?? mix.facts?.line('joint');
  return line && inMm(line.term('joint', phrase`bed joint`));
}

function bedFrom(gauge: LineFacts, height: number, brick: Brick): Term {
  const over = inMm(gauge.term('height', phrase`height of the courses`));
  const course = quotient(
    phrase`height of a course`,
    'mm',
    over,
    gauge.term('courses', phrase`courses`),
  );
  const origin = brick.facts?.line('size')?.at('size');
  return difference(
    phrase`bed joint`,
    'mm',
    course,
    fact(phrase`height of the brick`, height, 'mm', origin),
    phrase`from the gauge`,
  );
}

/** What a brick loses to breakage. */
export function brickWaste(brick: BlockFacts | undefined, env: Env): Term {
  return (
    brick?.line('waste')?.term('share', phrase`waste`, '%') ??
    defaultTerm(env, 'brick-waste', 'share', phrase`waste`)
  );
}

/** How much of a mix is lost, in %: as its block says, else the defaults. */
export function mixWaste(mix: BlockFacts | undefined, env: Env): Term {
  return (
    mix?.line('waste')?.term('share', phrase`waste`, '%') ??
    defaultTerm(env, 'mortar-waste', 'share', phrase`waste`)
  );
}
