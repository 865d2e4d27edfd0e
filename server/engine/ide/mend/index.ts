/** Many ways out at once: taken, looked at, and taken again, until nothing more is to be mended. */
import type { FormatEdit } from '../../../../grammar/print';
import type { Finding, WayOut } from '../../../../shared/finding';
import type { Job } from '../../workspace/job';
import { edited, editsBetween } from './edited';
import { SAFE } from './safe';

/** A mended line may show the next fault; more rounds than so many only a text made for it takes. */
const MOST_ROUNDS = 12;
/** So many ways out are tried by themselves, where all of a round together did not do. */
const MOST_ALONE = 40;

/** Whether a text may stand in place of the one that was asked about. */
type Better = (after: Job, before: Job) => boolean;

/** All that is safe to mend unasked. None of the prices changes that was complete before. */
export function mendAll(job: Job): FormatEdit[] {
  const good: Better = (after, before) => fewer(after, before) && priceStands(after, before);
  return mend(job, ({ code }) => SAFE.has(code), good);
}

/** All findings of one code, each by its preferred way. */
export function mendCode(job: Job, code: string): FormatEdit[] {
  const left = ({ findings }: Job) => findings.filter((f) => f.code === code).length;
  const good: Better = (after, before) =>
    left(after) < left(before) && errors(after) <= errors(before);
  return mend(job, (finding) => finding.code === code, good);
}

/** The best of the texts on the way: a heading that is mended shows the faults of its lines first. */
function mend(job: Job, wanted: (finding: Finding) => boolean, good: Better): FormatEdit[] {
  let best = job;
  let now: Job | undefined = job;
  for (let round = 0; round < MOST_ROUNDS && now; round += 1) {
    now = once(now, wanted);
    if (now && good(now, best)) best = now;
  }
  return best === job ? [] : editsBetween(job.file.lines, best.file.lines);
}

/** All ways together; where that makes more errors, one by one. */
function once(job: Job, wanted: (finding: Finding) => boolean): Job | undefined {
  job.anewTried();
  const ways = apart(job.findings.filter(wanted).flatMap((f) => preferred(f, job.file.name)));
  if (!ways.length) return undefined;
  const all = taken(job, ways);
  if (errors(all) <= errors(job)) return all;
  let now: Job | undefined;
  for (const way of ways.slice(0, MOST_ALONE)) {
    const next = taken(now ?? job, [way]);
    if (errors(next) <= errors(now ?? job)) now = next;
    // The edits of the others know the lines as they stood.
    if (now && now.file.lines.length !== job.file.lines.length) return now;
  }
  return now;
}

function preferred({ ways }: Finding, file: string): WayOut[] {
  const way = ways.find((each) => each.preferred);
  return way?.edits.every(({ place }) => place.file === file) ? [way] : [];
}

/** Those of which no two write in one line: the others wait for the next round. */
function apart(ways: readonly WayOut[]): WayOut[] {
  const lines = new Set<number>();
  return ways.filter(({ edits }) => {
    const own = edits.map(({ place }) => place.line);
    if (own.some((line) => lines.has(line))) return false;
    for (const line of own) lines.add(line);
    return true;
  });
}

function taken(job: Job, ways: readonly WayOut[]): Job {
  return job.withText(
    edited(
      job.file.lines,
      ways.flatMap(({ edits }) => edits),
    ),
  );
}

/** Fewer errors, or as many and fewer findings: a word that is mended may bring up what nobody could see before. */
function fewer(after: Job, before: Job): boolean {
  const left = errors(after) - errors(before);
  return left < 0 || (left === 0 && toMend(after) < toMend(before));
}

function errors({ findings }: Job): number {
  return findings.filter((f) => f.severity === 'error').length;
}

/** Cautions and the like come up as soon as a line is read, and are no faults. */
function toMend({ findings }: Job): number {
  return findings.filter((f) => f.severity !== 'information').length;
}

function priceStands(after: Job, before: Job): boolean {
  if (!before.isJob || errors(before) || before.price.total.gaps.length) return true;
  return after.price.total.value.eq(before.price.total.value);
}
