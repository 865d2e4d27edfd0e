/** A working as an indented tree. */

import { phrase } from '../../../shared/phrase';
import type { Figure } from '../../engine/brickwork/needs';
import type { Env } from '../../engine/resolve/env';
import { type Io, paint } from '../io';
import type { Session } from '../session';
import { type Step, Workings } from '../workings';
import { placeText } from './findings';
import { converted, telling } from './plain-step';

interface Showing {
  readonly session: Session;
  readonly io: Io;
  readonly depth: number;
  /** Steps, and facts by what is said of them and where. */
  readonly shown: Set<Step | string>;
  readonly lines: string[];
}

/** The figure first, then each part under what it is part of, at most `depth` levels down. */
export function workingLines(
  { key, term }: Figure,
  env: Env,
  session: Session,
  depth: number,
  io: Io,
): string[] {
  const to: Showing = { session, io, depth, shown: new Set(), lines: [paint(io, 'bold', key)] };
  show(new Workings(env).of(term), 1, to);
  return to.lines;
}

function show(whole: Step, level: number, to: Showing): void {
  const step = telling(whole);
  const room = '  '.repeat(level);
  const again = shownBefore(whole.view.label, step, to);
  to.lines.push(`${room}${saying(whole.view.label, step)}${again ? phrase` (above)` : ''}`);
  const fact = converted(step);
  const from = said(fact ?? step, to);
  if (from && !again) to.lines.push(`${room}    ${paint(to.io, 'dim', from)}`);
  if (again) return;
  if (level > to.depth) return;
  for (const detail of step.detail) to.lines.push(`${room}  - ${detail}`);
  if (!fact) for (const part of step.parts) show(part, level + 1, to);
}

/**
 * Whether a reader has seen it, which is marked. A step that more than one count rests on is one; a fact is also the
 * same where it has the same name, value and line, whoever made it. A bare number is quicker read than looked up.
 */
function shownBefore(label: string, step: Step, { shown }: Showing): boolean {
  const { place, result, sum } = step.view;
  const fact = place && JSON.stringify([label, result, sum, place]);
  const again = shown.has(step) || (fact !== undefined && shown.has(fact));
  if (step.parts.length + step.detail.length > 0) shown.add(step);
  if (fact !== undefined) shown.add(fact);
  return again;
}

function saying(name: string, { view }: Step): string {
  const label = name ? `${name}: ` : '';
  const sum = view.sum === undefined || view.sum === view.result ? '' : ` = ${view.sum}`;
  const missing = view.missing ? phrase` [incomplete: ${view.missing.join('; ')}]` : '';
  return `${label}${view.result}${sum}${view.note ? ` (${view.note})` : ''}${missing}`;
}

/** Where a fact stands, and the line that says it, its comment with it. */
function said({ view }: Step, { session }: Showing): string {
  if (!view.place) return '';
  return `${placeText(view.place, session)}  ${(view.line ?? '').replace(/\s+/g, ' ')}`.trimEnd();
}
