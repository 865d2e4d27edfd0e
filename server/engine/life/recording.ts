/** A record with what has happened written into it: the line as it was said, or made of what the job comes to. */
import { phrase } from '../../../shared/phrase';
import { showTerm, showValue } from '../views/show';
import type { Job } from '../workspace/job';
import { agreedJob, fixedPrice, heldPrice } from './agreed';
import { type Recorded, withRecorded } from './recorded';
import { acceptedLines, quotedOn, sentLines } from './write';

export interface Happened {
  /** The first word of a line of the record. */
  readonly what: string;
  /** `2026-03-02` */
  readonly date: string;
  /** What stands behind the date; of `sent` and `accepted` the price may be left out. */
  readonly words: readonly string[];
}

/** What a reader knows the file by, and where more is told of what is wrong with it. */
export interface Called {
  readonly shown: string;
  readonly check: string;
}

export interface Recording extends Recorded {
  /** What the firm should know about it. */
  readonly asides: readonly string[];
}

/** @param text of the job’s file. @returns a sentence where it cannot be written */
export function recording(
  job: Job,
  text: string,
  happened: Happened,
  called: Called,
): Recording | string {
  if (!job.isJob) return phrase`${called.shown} is no job, and so keeps no record.`;
  const ways = linesFor({ ...happened, words: happened.words.map(oneLine) }, job, called);
  if (typeof ways === 'string') return ways;
  const tried = ways.map((lines) => withRecorded(text, lines));
  const good = tried.find(({ fault }) => !fault);
  if (!good) {
    const [{ fault, lines }] = tried as [Recorded];
    return phrase`“${lines[0]}” cannot be read: ${fault!.message}`;
  }
  const aside = happened.what === 'accepted' ? otherThanHeld(happened.words, job, called) : '';
  return { ...good, asides: aside ? [aside] : [] };
}

/** Nothing that is said may end its line. */
function oneLine(word: string): string {
  return word.replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ');
}

/** Ways to read the words: what has a space in it is a text, as a shell takes the quotation marks off; else as it stands. */
function linesFor(
  { what, words, date }: Happened,
  job: Job,
  called: Called,
): readonly (readonly string[])[] | string {
  if (what === 'sent' && !words.length) {
    const quoted = quotedOn(date, job, 'same day');
    return whyIncomplete(quoted, called) ?? [sentLines(date, quoted)];
  }
  if (what === 'accepted' && !words.some((word) => /\d/.test(word) && !isOption(word, job)))
    return accepted(words, date, job, called);
  const line = (texts: readonly string[]) => [`  ${[what, date, ...texts].join(' ')}`];
  // A title of one word has lost its marks to the shell, and looks like any other word.
  const titled = words.map((word, i) => (i === words.length - 1 ? asText(word) : quotedText(word)));
  return [line(words.map(quotedText)), line(words), line(titled)];
}

function isOption(word: string, job: Job): boolean {
  return namesOf(word).every((name) => job.options.named(name));
}

function namesOf(word: string): string[] {
  return word.split(',').filter(Boolean);
}

function quotedText(word: string): string {
  return /\s/.test(word) && !/^["“]/.test(word) ? asText(word) : word;
}

function asText(word: string): string {
  return `"${word.replace(/["\\]/g, '\\$&')}"`;
}

/** At the price of the job with them and with what was accepted before. */
function accepted(words: readonly string[], date: string, job: Job, called: Called) {
  const names = words.flatMap(namesOf);
  const missing = names.find((name) => !job.options.named(name));
  if (missing !== undefined) {
    const known = job.options.all.map((option) => option.name).join(', ');
    return phrase`${called.shown} has no option ${missing}.${known ? phrase` It has ${known}.` : ''}`;
  }
  const agreed = job.options.with([...agreedJob(job).taken, ...names])!;
  return whyIncomplete(agreed, called) ?? [acceptedLines(date, names, agreed)];
}

/** An acceptance at another price than the client holds is written as it was asked for, and never in silence. */
function otherThanHeld(words: readonly string[], job: Job, { shown }: Called): string {
  const names = words.flatMap(namesOf);
  if (!fixedPrice(job) || !names.every((name) => job.options.named(name))) return '';
  const before = agreedJob(job);
  const now = job.options.with([...before.taken, ...names])!.price.total;
  const holds = heldPrice(job).value.add(now.value).sub(before.price.total.value);
  if (holds.eq(now.value)) return '';
  const text = showValue(holds, now.unit, job.env);
  return phrase`The client holds a price of ${text}; it is written at ${showTerm(now, job.env)}, what ${shown} comes to today. Where the old price holds, put it in its line.`;
}

/** Why a price cannot be fixed. */
function whyIncomplete(job: Job, { shown, check }: Called): string | undefined {
  if (!job.isJob) return phrase`${shown} holds no work, and so has no price.`;
  if (job.price.total.gaps.length)
    return phrase`The price of ${shown} is not complete, so it cannot be kept. Give the amount, or see: ${check}`;
  return undefined;
}
