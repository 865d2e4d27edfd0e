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
  near('boundary', 'the boundary', standing, into);
  near('road', 'a road', standing, into);
}

/** Over all, coping included. Of a repair, the wall’s that it is in; where no line has it, what is built again. */
function height({ work, facts, wall, env }: Standing, into: Gathered): void {
  const rebuilt = work.facts.rebuilt?.settingOut;
  const courses = rebuilt?.bands.reduce((high, band) => Math.max(high, band.to), 0) ?? 0;
  const mm = work.facts.height ?? wall?.facts.height ?? (rebuilt && rebuilt.gauge * courses);
  if (mm === undefined || !Number.isFinite(mm)) return;
  const origin = lineIn(facts, ['height', 'rebuild']) ?? into.home;
  into.add('height', { origin, amount: mm, why: () => `it is ${lengthSaid(mm, env)} high` });
}

function thick({ work, facts }: Standing, into: Gathered): void {
  const laid = work.facts.settingOut ?? work.facts.rebuilt?.settingOut;
  const line = facts.orDefault('thick');
  const bricks = laid ? laid.spec.thickness / 2 : measured(line, 'thick');
  if (bricks === undefined || work.kind === 'pier') return;
  into.add('thick', { origin: line?.origin ?? into.home, amount: bricks });
}

function near(what: What, name: string, { facts, env }: Standing, into: Gathered): void {
  const line = facts.line(what);
  const away = measured(line, 'distance');
  if (!line || away === undefined) return;
  const why = () => (away === 0 ? `it is on ${name}` : `${name} is ${lengthSaid(away, env)} away`);
  into.add(what, { origin: line.origin, amount: away, why });
}
