/** Mortar as it is mixed, in words: for a terminal and for papers. */
import { phrase } from '../../../shared/phrase';
import { inUnit } from '../brickwork/lengths';
import { type MortarOf, mortarIn } from '../mortar/figures';
import { firstMeasure } from '../mortar/measures';
import type { InBatch, Mixing } from '../mortar/mixing';
import { asBought } from '../price/buying/material';
import { factsNamed } from '../resolve/env';
import type { Term } from '../working/term';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { showTerm, showValue } from './show';

/** A mix: how much of it, in how many batches of how much, the last by itself, and what goes into a whole one. */
export interface Mixed {
  readonly title: string;
  readonly wet: string;
  readonly batches: string;
  readonly parts: readonly MixedPart[];
  /** Of how much it is, and of how large a batch. */
  readonly terms: readonly Term[];
  readonly block?: SourceBlock;
}

export interface MixedPart {
  /** Nothing of a ready mix, of which packs are told. */
  readonly title: string;
  readonly amount: string;
  /** The same in buckets and in packs, where it can be told so. */
  readonly measures: readonly string[];
  readonly term: Term;
}

export function mixedIn(job: Job): Mixed[] {
  return mortarIn(job.price, job.env).flatMap((mortar) => mixedOf(mortar, job));
}

function mixedOf({ mix, mixing }: MortarOf, job: Job): Mixed[] {
  if (!mixing || mixing.count.value.isZero()) return [];
  const show = (term: Term) => showTerm(term, job.env);
  const last = mixing.over.value.isZero() ? '' : phrase`, the last ${show(mixing.last)}`;
  const batches = phrase`${show(mixing.count)} of ${upTo(mixing)}${show(mixing.size)}${last}`;
  const parts = mixing.materials.map((part) => partOf(part, job));
  const terms = [mix.wet, mixing.size];
  const block = mix.facts?.block;
  return [{ title: mix.title, wet: show(mix.wet), batches, parts, terms, block }];
}

/** Nothing where all are alike but the last. */
export function upTo({ differ }: Pick<Mixing, 'differ'>): string {
  return differ ? phrase`up to ` : '';
}

function partOf(part: InBatch, job: Job): MixedPart {
  if (!part.origin)
    return { title: '', amount: packsText(part, job), measures: [], term: part.amount };
  const title = factsNamed(job.env, 'material', part.material)?.title ?? part.material;
  const measures = [measured(part.amount, job), inPacks(part, job)].filter(Boolean);
  return { title, amount: showTerm(part.amount, job.env), measures, term: part.amount };
}

/** Packs of a ready mix. */
function packsText({ amount }: InBatch, job: Job): string {
  return showValue(amount.value.toDecimalPlaces(2), amount.unit, job.env);
}

/** In the measure that stands first in the library’s list, where it is told by volume. */
function measured(amount: Term, job: Job): string {
  const line = firstMeasure(job.env);
  const holds = line && inUnit(line.term('content', ''), amount.unit);
  if (!line || !holds || holds.unit !== amount.unit || holds.value.lte(0)) return '';
  const count = amount.value.div(holds.value).toDecimalPlaces(1);
  if (count.lt('0.1')) return '';
  return showValue(count, line.line.syntax.key!.text, job.env);
}

/** In packs as it is bought, where a batch takes some of one and not of a whole load. */
function inPacks({ material, dry, origin }: InBatch, job: Job): string {
  const line = factsNamed(job.env, 'material', material)?.line('pack');
  if (!line || !origin || !dry) return '';
  const taken = asBought(material, dry, job.env, origin);
  const holds = inUnit(line.term('content', ''), taken.unit);
  if (holds.unit !== taken.unit || holds.value.lte(0)) return '';
  const count = taken.value.div(holds.value).toDecimalPlaces(2);
  return count.lt('0.1') ? '' : showValue(count, line.word('pack'), job.env);
}
