/** Walls bonded into walls of half a brick, from their lines to the face of the one they run through. */
import { placeCourse, type SettingOut } from '../../server/engine/setting-out';
import { type BuiltCourse, proveFace } from '../../server/engine/setting-out/prove';
import { jobOf } from './world';

export const COURSES = 9;

export interface HalfTee {
  readonly use: string;
  readonly bond: string;
  readonly arm: readonly [bond: string, thick: string];
  readonly length: number;
  readonly at: number;
  readonly side?: 'left' | 'right';
  /** Lines of the wall that goes on. */
  readonly more?: string;
}

export const textOf = ({ use, bond, arm, length, at, side = 'left', more = '' }: HalfTee) =>
  `perpend 1
use ${use}
wall main
  bond ${bond}
  length ${length} mm
  height ${COURSES} courses
  stands held
${more}wall arm
  bond ${arm[0]}
  thick ${arm[1]}
  length 2240 mm
  height ${COURSES} courses
  stands held
  ${side} tee main ${at} mm bonded
`;

const WIDE = 40;

/** A face in its clear stretches: wider than any joint is an opening. */
function stretches(pieces: readonly { readonly from: number; readonly to: number }[]) {
  const found: { from: number; to: number }[] = [];
  for (const { from, to } of pieces) {
    const last = found.at(-1);
    if (last && from - last.to < WIDE) last.to = to;
    else found.push({ from, to });
  }
  return found.map((s) => ({ ...s, left: 'stopped' as const, right: 'stopped' as const }));
}

function faceOf(out: SettingOut, also: (course: number) => readonly Piece[]): BuiltCourse[] {
  return Array.from({ length: out.spec.courses }, (_, course) => {
    const own = placeCourse(out, course).map((p) => ({ from: p.x, to: p.x + p.along }));
    const pieces = [...own, ...also(course)]
      .map(({ from, to }) => ({ piece: 'cut' as const, from, to }))
      .sort((a, b) => a.from - b.from);
    return { course, pieces, outline: stretches(pieces) };
  });
}

interface Piece {
  readonly from: number;
  readonly to: number;
}

const of = (job: ReturnType<typeof jobOf>, name: string) =>
  job.works.find((w) => w.name === name)!.facts;

/** What is wrong in the face of the wall that goes on, that was not there when the other was only tied to it; and what is told. */
export function lookAt(tee: HalfTee) {
  const text = textOf(tee);
  const job = jobOf(text);
  const { met } = of(job, 'main');
  const before = of(jobOf(text.replace(' bonded', ' tied')), 'main').settingOut!;
  const { unit, joints, limits } = before.spec;
  // What rules still call a lap, 41 mm of 56: see `STILL_LAP` and its sources.
  const lap = ((unit.length + joints.perpend) * 2.2) / 12 - 0.1;
  const joint = { least: limits.least, most: limits.most };
  const rules = { joint, lap, tooth: unit.length / 2, leastCut: limits.leastCut };
  const known = proveFace(
    faceOf(before, () => []),
    rules,
  );
  const out = met!.settingOut;
  const faults = proveFace(
    faceOf(out, (course) => met!.ends('front', course)),
    rules,
  ).filter((f) => !known.some((k) => k.course === f.course && Math.abs(k.at - f.at) < 0.5));
  const told = job.findings.filter(
    (f) => f.code === 'perpends-aligned' && f.message.includes('beside the wall arm'),
  );
  return { out, faults, told };
}
