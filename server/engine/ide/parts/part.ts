/** A part of a job before its places are addresses: what the tree is made of. */
import { phrase } from '../../../../shared/phrase';
import type { PartKind } from '../../../../shared/protocol/parts';
import type { Place } from '../../../../shared/span';
import type { Env } from '../../resolve/env';
import { missingOf, showTerm } from '../../views/show';
import type { Origin, Term } from '../../working/term';

export interface JobPart {
  readonly id: string;
  readonly kind: PartKind;
  readonly label: string;
  readonly text: string;
  readonly heard: string;
  readonly figure?: string;
  readonly draws?: string;
  readonly at?: Place;
  readonly lacks?: readonly string[];
  readonly more?: string;
  readonly children: readonly JobPart[];
}

/** So many lines are looked through for the one that a figure comes from. */
const MOST_LOOKED = 200;

/** The line that a term comes from: its own, or the nearest of those below it. */
export function originOf(term: Term): Origin | undefined {
  const queue: Term[] = [term];
  for (let i = 0; i < queue.length && i < MOST_LOOKED; i++) {
    const { origin, args } = queue[i]!;
    if (origin) return origin;
    queue.push(...args);
  }
  return undefined;
}

export function placeOf(origin: Origin | undefined): Place | undefined {
  return origin?.block.place(origin.span);
}

interface Shown {
  readonly id: string;
  readonly kind: PartKind;
  readonly figure?: string;
  readonly term: Term;
  readonly label?: string;
  readonly at?: Place;
  readonly children?: readonly JobPart[];
}

/** A figure of the job as a part. */
export function figurePart(shown: Shown, env: Env): JobPart {
  const { term, label = term.label, at, children = [], ...rest } = shown;
  const text = showTerm(term, env);
  const lacks = term.gaps.length ? missingOf(term) : undefined;
  return {
    ...rest,
    label,
    text: lacks ? `${text} …` : text,
    heard: heard(label, text, lacks !== undefined),
    at: at ?? placeOf(originOf(term)),
    lacks,
    children,
  };
}

/** As a sentence: a screen reader says neither a middle dot nor three dots. */
export function heard(label: string, text: string, incomplete: boolean): string {
  const said = text ? `${label}, ${text.replaceAll(' · ', ', ')}` : label;
  return incomplete ? phrase`${said}, not complete` : said;
}

/** A heading over parts; nothing where there are none. */
export function groupPart(
  head: Pick<JobPart, 'id' | 'kind' | 'label'> & { readonly text?: string },
  children: readonly JobPart[],
): JobPart[] {
  if (!children.length) return [];
  const { text = String(children.length) } = head;
  return [{ ...head, text, heard: heard(head.label, text, false), children }];
}
