/** A working as an indented tree. */
import type { Env } from '../../engine/resolve/env';
import type { Figure } from '../../engine/work/needs';
import { type Io, paint } from '../io';
import type { Session } from '../session';
import { type Step, Workings } from '../workings';
import { placeText } from './findings';

interface Showing {
  readonly session: Session;
  readonly io: Io;
  readonly depth: number;
  readonly shown: Set<Step>;
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
  const step = unrounded(whole);
  const room = '  '.repeat(level);
  const parts = step.parts.length + step.detail.length > 0;
  const again = parts && to.shown.has(step);
  to.lines.push(`${room}${saying(whole.view.label, step)}${again ? ' (above)' : ''}`);
  const from = said(step, to);
  if (from && !again) to.lines.push(`${room}    ${paint(to.io, 'dim', from)}`);
  if (again) return;
  to.shown.add(step);
  if (level > to.depth) return;
  for (const detail of step.detail) to.lines.push(`${room}  - ${detail}`);
  for (const part of step.parts) show(part, level + 1, to);
}

/** Rounding that changed nothing is no step for a reader. */
function unrounded(step: Step): Step {
  const [inner] = step.parts;
  if (step.term.op !== 'cents' || !inner?.term.value.eq(step.term.value)) return step;
  return unrounded(inner);
}

function saying(name: string, { view }: Step): string {
  const label = name ? `${name}: ` : '';
  const sum = view.sum === undefined || view.sum === view.result ? '' : ` = ${view.sum}`;
  const missing = view.missing ? ` [incomplete: ${view.missing.join('; ')}]` : '';
  return `${label}${view.result}${sum}${view.note ? ` (${view.note})` : ''}${missing}`;
}

/** Where a fact stands, and the line that says it, its comment with it. */
function said({ view }: Step, { session }: Showing): string {
  if (!view.place) return '';
  return `${placeText(view.place, session)}  ${(view.line ?? '').replace(/\s+/g, ' ')}`.trimEnd();
}
