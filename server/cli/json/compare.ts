/** What perpend compare --json prints. Its shape is promised in shared/json-schema. */
import type { Exact } from '../../../shared/exact';
import type { FaceChange } from '../../documents/compared';
import {
  type CautionChange,
  type Comparison,
  type FactChange,
  type FigureChange,
  type LineChange,
  type MoneyPart,
  type SinceSent,
  saidChange,
  type WorkChange,
} from '../../engine/compare';
import type { Env } from '../../engine/resolve/env';
import { figureView } from '../../engine/views/job-view';
import { showValue } from '../../engine/views/show';
import type { Term } from '../../engine/working/term';
import type { Job } from '../../engine/workspace/job';
import type { Session } from '../session';
import { VERSION } from '../version';
import { amountJson } from './measure';
import { findingJson, placeJson } from './plain';

/** A side of a comparison, as the caller named it. */
export interface SideJson {
  readonly file: string;
  /** The full name of a commit. */
  readonly revision?: string;
  /** The day that it was sent, where it is known by the record alone. */
  readonly sent?: string;
}

export function compareDocument(
  found: Comparison,
  faces: readonly FaceChange[],
  sides: { readonly before: SideJson; readonly after: SideJson },
  session: Session,
): string {
  const figure = (change: FigureChange) => figureJson(change, found.before.env, found.after.env);
  const { cautions, findings } = found;
  return printed({
    ...sides,
    nothing: found.nothing,
    reordered: found.reordered,
    idle: found.idle,
    work: found.work.map((change) => workJson(change, figure, session)),
    facts: found.facts.map((fact) => factJson(fact, session)),
    figures: found.figures.map(figure),
    money: moneyJson(found),
    cautions: { new: cautions.new.map(cautionJson), gone: cautions.gone.map(cautionJson) },
    findings: {
      new: findings.new.map((f) => findingJson(f, session)),
      gone: findings.gone.map((f) => findingJson(f, session)),
    },
    faces: faces.map(({ change, name, title, face, placed }) => {
      return { change, name, title, face, ...placed };
    }),
  });
}

/** Where no revision holds what was sent: the figures that the record keeps. */
export function sentDocument(
  { figures, total }: SinceSent,
  { env }: Job,
  sides: { readonly before: SideJson; readonly after: SideJson },
): string {
  const moved = [...figures, ...(total ? [total] : [])];
  return printed({
    ...sides,
    nothing: !moved.length,
    figures: moved.map((change) => figureJson(change, env, env)),
  });
}

function printed(body: object): string {
  const head = {
    $schema: 'perpend-1.schema.json',
    format: 'perpend-compare',
    version: 1,
    tool: { name: 'perpend', version: VERSION },
  };
  return `${JSON.stringify({ ...head, ...body })}\n`;
}

function workJson(
  { change, before, after, lines, figures }: WorkChange,
  figure: (change: FigureChange) => object,
  session: Session,
) {
  const { kind, name, title } = (after ?? before)!;
  return {
    change,
    kind,
    name,
    title,
    was: change === 'renamed' ? before!.name : undefined,
    lines: lines.map((line) => lineJson(line, session)),
    figures: figures.map(figure),
  };
}

function factJson({ change, head, used, lines, before, after }: FactChange, session: Session) {
  return {
    change,
    head,
    used,
    place: placeJson((after ?? before)!.place(), session),
    lines: lines.map((line) => lineJson(line, session)),
  };
}

function lineJson(line: LineChange, session: Session) {
  const place = placeJson((line.after ?? line.before)!.place(), session);
  return { change: line.change, under: line.under, ...saidChange(line), place };
}

function figureJson({ id, label, before, after, difference }: FigureChange, old: Env, now: Env) {
  const amount = (term: Term | undefined, env: Env) => {
    if (!term) return undefined;
    const { value, unit, text } = figureView('', term, env);
    return { value, unit, text };
  };
  const by = difference && exactJson(difference, (after ?? before)!.unit, after ? now : old);
  return { id, label, before: amount(before, old), after: amount(after, now), difference: by };
}

function exactJson(value: Exact, unit: string, env: Env) {
  return { value: value.toFixed(), unit, text: showValue(value, unit, env) };
}

/** What moved a price, as every document that compares two has it. */
export function moneyJson({ money, before, after }: Comparison) {
  if (!money) return undefined;
  const { code } = after.env.money;
  const amount = (value: Exact | undefined) => value && exactJson(value, code, after.env);
  const part = ({ key, label, bought, ...of }: MoneyPart) => ({
    key,
    label,
    before: amount(of.before),
    after: amount(of.after),
    difference: amount(of.difference),
    boughtBefore: bought?.before && amountJson(bought.before, before),
    boughtAfter: bought?.after && amountJson(bought.after, after),
  });
  return {
    currency: code,
    incomplete: money.incomplete,
    net: part(money.net),
    total: part(money.total),
    steps: money.steps.map(part),
    parts: money.parts.map(part),
    works: money.works.map(part),
  };
}

function cautionJson({ caution: { code, title }, works }: CautionChange) {
  return { code, title, works };
}
