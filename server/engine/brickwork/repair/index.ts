/** Mending of standing work: each kind adds what it takes; what comes down is shared out, and the rest is waste or bought. */
import { phrase } from '../../../../shared/phrase';
import { higherThanALift } from '../../findings/lift';
import { repairRemarks } from '../../findings/repairs';
import type { Gang } from '../../labour/gang';
import { taskHours } from '../../labour/output';
import type { BlockFacts, Env } from '../../resolve/env';
import { sum, type Term } from '../../working/term';
import type { SourceBlock } from '../../workspace/source';
import { facedBy } from '../faced';
import type { Figure, Needs, TaskNeed } from '../needs';
import { saidFrom } from '../said';
import type { Work, WorkFacts } from '../work';
import { amountIn } from './amounts';
import { gaugeIn } from './gauge';
import { matchIn } from './match';
import type { Mending } from './mending';
import { highOf, needsOf } from './needs';
import { lacking, placeGaps } from './nowhere';
import { mendingsOf } from './parts';
import { type Salvage, salvageOf } from './salvage';
import { type Site, siteOf } from './site';
import { type Waste, wasteFigures, wasteOf } from './waste';

/** `block` is what stands there, when the file has it: a wall or a pier. Its lines hold where the repair says nothing. */
export function workRepair(
  facts: BlockFacts,
  env: Env,
  gang: Gang,
  block: SourceBlock | undefined,
): Work {
  const site = siteOf(facts, env, block);
  const mendings = mendingsOf(site);
  const salvage = salvageOf(site, mendings);
  const waste = wasteOf(site, mendings, salvage);
  const gauge = gaugeIn(site, salvage.wanted !== undefined);
  const match = matchIn(site, salvage.short, gauge.says.length > 0);
  const needs = needsOf(site, mendings, salvage, waste, tasksOf(site, mendings, salvage, gang));
  const said = [
    ...mendings.flatMap((m) => m.says ?? []),
    ...saidFrom(gauge.says, facts.line('gauge')),
    ...saidFrom(match.says, facts.line('match') ?? facts.line('candidates')),
  ];
  const work: Work = {
    block: facts.block,
    kind: 'repair',
    name: facts.name,
    title: facts.title,
    figures: [...figuresOf(mendings, salvage, gauge.figures, waste, needs), ...match.figures],
    needs,
    remarks: [
      ...mendings.flatMap((m) => m.remarks ?? []),
      ...gauge.remarks,
      ...repairRemarks(site, mendings, salvage),
      ...match.remarks,
      ...[higherThanALift(facts, highOf(mendings), env) ?? []].flat(),
    ],
    facts: {
      does: new Set([...mendings.flatMap((m) => m.does ?? []), ...gauge.does]),
      said,
      says: said.map(({ text }) => text),
      matching: match.matching,
      cuts: mendings.find((m) => m.cuts)?.cuts,
      rebuilt: rebuiltOf(mendings, salvage),
    },
    notes: facts.lines('note').map((n) => n.word('text')),
  };
  return lacking(work, placeGaps(facts, block));
}

function tasksOf(
  site: Site,
  mendings: readonly Mending[],
  { cleaned }: Salvage,
  gang: Gang,
): TaskNeed[] {
  const tasks = mendings.flatMap((m) => m.tasks ?? []);
  const all = cleaned ? [...tasks, amountIn('clean', phrase`Cleaning bricks`, cleaned)] : tasks;
  return all.map(({ task, label, amount }) => ({
    task,
    hours: taskHours(task, label, amount, site.env, gang, () => together(task, amount, site)),
  }));
}

/** Bricks that stand together in a wall, as an area and a volume of it. */
function together(task: string, bricks: Term, { isPier, thickness, masonry }: Site) {
  const wall = !isPier && (task === 'take-down' || task === 'facework');
  return wall ? facedBy(bricks, thickness ?? 1, masonry) : [];
}

/** In the order a reader wants them: what comes down and what becomes of it, then what is mended, bought and taken away. */
function figuresOf(
  mendings: readonly Mending[],
  salvage: Salvage,
  gauge: readonly Figure[],
  waste: Waste | undefined,
  needs: Needs,
): Figure[] {
  const hours = needs.tasks.map((t) => t.hours);
  return [
    ...shown({ down: salvage.down }),
    ...mendings.flatMap((m) => m.figures ?? []),
    ...shown({
      cleaned: salvage.cleaned,
      reused: salvage.reused,
      broken: salvage.broken,
      halves: salvage.halves,
      'halves-used': salvage.used,
    }),
    ...gauge,
    ...shown({ short: needs.bricks[0]?.bricks, mortar: mortarIn(mendings, needs) }),
    ...wasteFigures(waste),
    { key: 'hours', term: sum(phrase`Hours of the gang`, 'h', hours) },
  ];
}

/** A mix that something else of it is in comes behind. */
function mortarIn(mendings: readonly Mending[], { mixes }: Needs): Term | undefined {
  return mendings.some((m) => m.mortar) ? mixes[0]?.litres : undefined;
}

function shown(terms: Readonly<Record<string, Term | undefined>>): Figure[] {
  return Object.entries(terms).flatMap(([key, term]) => (term ? [{ key, term }] : []));
}

/** For its drawing: of bricks that show, so many are those that came down. */
function rebuiltOf(
  mendings: readonly Mending[],
  { down, reused, saved }: Salvage,
): WorkFacts['rebuilt'] {
  const drawn = mendings.find((m) => m.rebuilt)?.rebuilt;
  if (!drawn) return undefined;
  const whole = (down?.value.toNumber() ?? 0) - (saved?.value.toNumber() ?? 0);
  const old = reused?.value.toNumber() ?? 0;
  return { ...drawn, reused: whole > 0 ? Math.min(1, old / whole) : 0 };
}
