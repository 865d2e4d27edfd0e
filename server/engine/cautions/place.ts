/** How high a piece of work is, how thick, how far out of plumb, and what it stands near: as lines say or as it was laid. */
import { lengthSaid, sizeSaid } from '../brickwork/said';
import { type Gathered, lineIn, measured, type Standing, type What } from './holding';

export function place(standing: Standing, into: Gathered): void {
  height(standing, into);
  thick(standing, into);
  const { facts, env } = standing;
  const leans = facts.line('leans');
  const out = measured(leans, 'leans');
  if (leans && out !== undefined)
    into.add('leans', {
      origin: leans.origin,
      amount: out,
      why: () => `it leans ${sizeSaid(out, env)}`,
    });
  near('boundary', { name: 'the boundary', at: 'it is on the boundary' }, standing, into);
  near('road', { name: 'a road', at: 'it is beside a road' }, standing, into);
}

interface Near {
  readonly name: string;
  /** With nothing between. */
  readonly at: string;
}

/** Over all, coping included. Of a repair, the wall’s that it is in; where no line has it, what is built again. */
function height({ work, facts, wall, env }: Standing, into: Gathered): void {
  const mm = work.facts.height ?? wall?.facts.height ?? rebuiltHigh(work);
  if (mm === undefined || !Number.isFinite(mm)) return;
  const origin = lineIn(facts, ['height', 'rebuild']) ?? into.home;
  into.add('height', { origin, amount: mm, why: () => `it is ${lengthSaid(mm, env)} high` });
}

/** Mm of a wall or a pier that is built again. */
function rebuiltHigh({ facts }: Standing['work']): number | undefined {
  const { settingOut, pier } = facts.rebuilt ?? {};
  if (pier) return (pier.unit.height + pier.joints.bed) * pier.plan.courses;
  const courses = settingOut?.bands.reduce((high, band) => Math.max(high, band.to), 0) ?? 0;
  return settingOut && settingOut.gauge * courses;
}

function thick({ work, facts }: Standing, into: Gathered): void {
  const laid = work.facts.settingOut ?? work.facts.rebuilt?.settingOut;
  const line = facts.orDefault('thick');
  const bricks = laid ? laid.spec.thickness / 2 : measured(line, 'thick');
  if (bricks === undefined || work.kind === 'pier') return;
  into.add('thick', { origin: line?.origin ?? into.home, amount: bricks });
}

function near(what: What, where: Near, { facts, env }: Standing, into: Gathered): void {
  const line = facts.line(what);
  const away = measured(line, 'distance');
  if (!line || away === undefined) return;
  const there = { origin: line.origin, amount: away };
  if (away > 0)
    into.add(what, { ...there, why: () => `${where.name} is ${lengthSaid(away, env)} away` });
  // Within nought of it says no more than that it is there.
  else
    into.add(what, {
      ...there,
      why: (limit) => `${where.at}${limit?.amount ? `, within ${limit.text}` : ''}`,
      saysLimit: true,
    });
}
