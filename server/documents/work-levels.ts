/** Heights of a piece of work that have a name: what a gauge rod is marked with beside its courses. */
import { phrase } from '../../shared/phrase';
import type { Work } from '../engine/brickwork/work';
import type { BandShown, Level } from '../engine/drawing';
import { wordOf } from '../engine/resolve/book';
import type { OpeningSpec, SettingOut } from '../engine/setting-out';
import { calledIn, dpcCourses, toppingsOn } from './work-tops';

/** From the lowest ground, mm. */
export function levelsOf(work: Work, gauge: number, bed: number): Level[] {
  const { settingOut, pier } = work.facts;
  const dpc = dpcCourses(work);
  const level = (name: string, courses: number): Level => ({ name, at: courses * gauge });
  const top = settingOut
    ? level(phrase`wall top`, settingOut.spec.courses)
    : level(phrase`pier top`, pier!.plan.courses);
  const copings = toppingsOn(work, gauge, bed).filter((t) => t.kind !== 'cap' && !t.unsaid);
  return [
    ...(dpc ? [level(phrase`damp-proof course`, dpc)] : []),
    ...bandLevels(work).map(({ name, at }) => level(name, at)),
    ...(settingOut ? insideOf(work, settingOut).map(({ name, at }) => level(name, at)) : []),
    top,
    ...copings.map(({ at, height }) => ({ name: phrase`coping top`, at: at + height })),
  ];
}

/** `at` in courses. */
function insideOf(work: Work, { spec }: SettingOut): Level[] {
  const openings = spec.openings.flatMap((opening) => openingOf(work, opening));
  const piers = spec.piers.map(({ name, base = 0, courses }): Level => {
    return { name: phrase`${calledIn(work, 'pier', name)} top`, at: base + courses };
  });
  return [...openings, ...piers];
}

const ARCHES: readonly string[] = ['segmental', 'semicircular'];

/** Sill, and head; an arch springs where another opening has its head. */
function openingOf(work: Work, { name, sill, top }: OpeningSpec): Level[] {
  const called = calledIn(work, 'opening', name);
  const lines = work.block.read.heading?.body ?? [];
  const line = lines.find((l) => l.kind.key === 'opening' && wordOf(l.values.name) === name);
  const kind = wordOf(line?.body.find((l) => l.kind.key === 'head')?.values.kind);
  const end = kind && ARCHES.includes(kind) ? phrase`springing` : phrase`head`;
  return [
    ...(sill > 0 ? [{ name: phrase`${called} sill`, at: sill }] : []),
    ...(top === null ? [] : [{ name: phrase`${called} ${end}`, at: top }]),
  ];
}

/** Where courses in another brick begin and end; `at` in courses. */
function bandLevels(work: Work): Level[] {
  return bandsOf(work).flatMap(({ name, from, to }) => [
    { name: phrase`band of ${name} begins`, at: from },
    { name: phrase`band of ${name} ends`, at: to },
  ]);
}

/** Courses in another brick, as its lines say. */
export function bandsOf(work: Work): BandShown[] {
  const lines = work.block.read.heading?.body.filter((l) => l.kind.key === 'band') ?? [];
  return lines.flatMap(({ values }): BandShown[] => {
    const [first, last] = [values.first, values.last ?? values.first];
    if (first?.kind !== 'quantity' || last?.kind !== 'quantity') return [];
    const name = wordOf(values.brick).replaceAll('-', ' ');
    return [{ name, from: first.low.toNumber() - 1, to: last.low.toNumber() }];
  });
}
