/** An arch over an opening: struck from its line, with its rings. */
import { decisionFor } from '../../../findings/fit/decision';
import { defaultLine, type LineFacts } from '../../../resolve/env';
import {
  type Arch,
  type ArchCourse,
  archCourses,
  archOf,
  type Ring,
  ringsOf,
  type Standing,
  type Voussoir,
  widthOver,
} from '../../../setting-out';
import type { OpeningFacts } from '../openings';
import { MOST_COURSES, type Site, type Zone } from './site';

export interface HeadArch {
  readonly line: LineFacts;
  readonly kind: 'segmental' | 'semicircular';
  readonly arch: Arch;
  readonly how: Voussoir;
  readonly rings: readonly Ring[];
  readonly at: Standing;
  readonly courses: readonly ArchCourse[];
  readonly zone: Zone;
  /** Some joint at the back is wider than the library accepts. */
  readonly wide: boolean;
}

/** More rings than anyone turns. */
export const MOST_RINGS = 12;

/** Joints of a rough arch: the least at the soffit, the most at the back, mm. */
export function archJoints({ masonry, joints }: Site): { least: number; most: number } {
  const value = defaultLine(masonry.env, 'arch-joints')?.values.joints;
  if (value?.kind !== 'quantity') return { least: joints.least, most: Number.POSITIVE_INFINITY };
  const factor = value.unit?.factor.toNumber() ?? 1;
  const [low, high] = [value.low, value.high ?? value.low].map((v) => v.toNumber() * factor);
  return { least: low!, most: high! };
}

/** Arch and rings of a shape that an opening could have; nothing where it is none. */
export function struck(rise: number, rings: number, width: number, how: Voussoir, site: Site) {
  const { unit, joints } = site.spec;
  if (rings > MOST_RINGS) return undefined;
  const arch = archOf({ span: width, rise, rings, ring: unit.width, bed: joints.perpend });
  if (!arch || arch.crown > MOST_COURSES * site.gauge) return undefined;
  const { least, most } = archJoints(site);
  const found = ringsOf(arch, unit.height, how === 'rough' ? least : joints.perpend, how);
  return { arch, rings: found, wide: found.some(({ back }) => back > most + 1e-6) };
}

/** What its line says; a rise that is still to be measured is none. */
export function archSaid({ facts, spec }: OpeningFacts) {
  const line = facts.line('head');
  const kind = line?.word('kind');
  if (!line || (kind !== 'segmental' && kind !== 'semicircular')) return undefined;
  const rise = kind === 'semicircular' ? spec.width / 2 : line.number('rise');
  return { line, kind: kind as HeadArch['kind'], rise, rings: line.number('rings') ?? 1 };
}

/** Nothing where there is none, or none can be struck: `archRise` says why. */
export function archIn(opening: OpeningFacts, site: Site): HeadArch | undefined {
  const said = archSaid(opening);
  const { spec, facts } = opening;
  if (!said || said.rise === undefined || spec.top === null) return undefined;
  const how = decisionFor(facts, 'arch')?.how === 'cut' ? 'axed' : 'rough';
  const rough = struck(said.rise, said.rings, spec.width, 'rough', site);
  const made = how === 'axed' ? struck(said.rise, said.rings, spec.width, how, site) : rough;
  if (!made || !rough) return undefined;
  const { arch, rings } = made;
  const at: Standing = { middle: spec.from + spec.width / 2, course: spec.top };
  const courses = archCourses(arch, at, { gauge: site.gauge, bed: site.spec.joints.bed });
  const half = widthOver(arch) / 2;
  const high = spec.top + courses.length;
  const zone = { from: at.middle - half, to: at.middle + half, low: spec.top, high };
  const { line, kind } = said;
  return { line, kind, arch, how, rings, at, courses, zone, wide: rough.wide };
}
