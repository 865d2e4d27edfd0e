/** What a job does not know yet, and what stops its price. */
import { phrase } from '../../../../shared/phrase';
import { counted } from '../../../../shared/show';
import { toFindOut } from '../../views/find-out';
import { rangePlace, rangeText, unmeasuredIn } from '../../views/measure';
import type { Gap } from '../../working/term';
import type { Job } from '../../workspace/job';
import { groupPart, heard, type JobPart, placeOf } from './part';
import { Steady } from './steady';

/** More of one sort are not listed: a long job may lack the same thing a thousand times. */
const MOST = 100;

export function openParts(job: Job): JobPart[] {
  const asked = [...unmeasured(job), ...unsaid(job), ...ranges(job)];
  return [
    ...groupPart({ id: 'find-out', kind: 'find-out', label: phrase`To find out` }, asked),
    ...groupPart({ id: 'stops', kind: 'stops', label: phrase`Stops the price` }, stops(job)),
  ];
}

/** Lines with a question mark. */
function unmeasured(job: Job): JobPart[] {
  const seen = new Steady('find-out/line');
  return unmeasuredIn(job)
    .slice(0, MOST)
    .map(({ block, span, text, waiting }) => {
      const count = counted(waiting.length, phrase`figure waits`, phrase`figures wait`);
      const said = waiting.length ? count : '';
      return {
        id: seen.id(text),
        kind: 'unmeasured' as const,
        label: text,
        text: said,
        heard: heard(text, said, false),
        at: block.place(span),
        more: waiting.length ? phrase`Waits for it: ${waiting.slice(0, 8).join(', ')}` : undefined,
        children: [],
      };
    });
}

/** What a caution hangs on and no line says. */
function unsaid(job: Job): JobPart[] {
  return toFindOut(job).map(({ what, line, for: cautions, works, place }) => {
    const text = works.join(', ');
    const why = phrase`It decides: ${cautions.join('; ')}.`;
    return {
      id: `find-out/${what}`,
      kind: 'unmeasured' as const,
      label: what,
      text,
      heard: heard(what, text, false),
      at: place,
      more: line ? phrase`${why} Say it in a line such as: ${line}` : why,
      children: [],
    };
  });
}

/** What is known only between two values, the one that moves the price most first. */
function ranges({ spread }: Job): JobPart[] {
  const seen = new Steady('find-out/range');
  return (spread?.ranges ?? []).slice(0, MOST).map((range) => {
    const label = rangeText(range);
    const share = `${Math.round(range.share * 100)}%`;
    return {
      id: seen.id(label),
      kind: 'range' as const,
      label,
      text: phrase`${share} of the spread`,
      heard: phrase`${label}, ${share} of the spread of the price`,
      at: rangePlace(range),
      more: phrase`So much of what the price may be more or less comes from this line: measure it before you price.`,
      children: [],
    };
  });
}

/** Errors of the file, and what the price lacks where no finding says it. */
function stops(job: Job): JobPart[] {
  const seen = new Steady('stops');
  const errors = job.findings.filter(({ severity }) => severity === 'error').slice(0, MOST);
  const told = errors.map(({ code, message, place }) => ({
    id: seen.id(code),
    kind: 'error' as const,
    label: message,
    text: '',
    heard: phrase`Error: ${message}`,
    at: place,
    children: [],
  }));
  return [...told, ...lacking(job).map((gap) => lack(gap, seen))];
}

function lacking({ price }: Job): Gap[] {
  const first = new Map<string, Gap>();
  for (const gap of price.total.gaps)
    if (!gap.told && !first.has(gap.what)) first.set(gap.what, gap);
  return [...first.values()].slice(0, MOST);
}

function lack({ what, origin }: Gap, seen: Steady): JobPart {
  return {
    id: seen.id(what),
    kind: 'missing',
    label: what,
    text: '',
    heard: phrase`Missing: ${what}`,
    at: placeOf(origin),
    children: [],
  };
}
