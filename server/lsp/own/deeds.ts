/** What changes a job or makes a new one, as edits and texts that the client applies. */
import { phrase } from '../../../shared/phrase';
import type { FileParams } from '../../../shared/protocol';
import { NEXT, type NextMade, type NextParams } from '../../../shared/protocol/new';
import type { Refused } from '../../../shared/protocol/pages';
import {
  SHARE,
  type SharedMade,
  type ShareParams,
  TAKE,
  type TakeEdits,
  type TakeParams,
} from '../../../shared/protocol/partners';
import {
  RECORD,
  RECORD_KINDS,
  type RecordEdits,
  type RecordKind,
  type RecordParams,
} from '../../../shared/protocol/record';
import { dayOf } from '../../documents/words/dates';
import { agreedJob } from '../../engine/life/agreed';
import { nextJob } from '../../engine/life/next';
import { settled } from '../../engine/life/next/settled';
import { recordKinds } from '../../engine/life/record-kinds';
import { RECORDED } from '../../engine/life/recorded';
import { recording } from '../../engine/life/recording';
import { LEVELS, partnerCopy, partnerFile, priceTold, whomSaid } from '../../engine/share/partner';
import { taken } from '../../engine/share/take';
import { showTerm } from '../../engine/views/show';
import type { Job } from '../../engine/workspace/job';
import { SourceFile } from '../../engine/workspace/source';
import { jobOfText, lastOf } from '../beside';
import type { Parts } from '../parts';
import type { OpenFile, Session } from '../session';
import { wayFrom } from '../uri-names';
import { onFile } from './asked';
import { editsIn, editsTo } from './edits';
import { refused } from './exports';

export function registerDeeds(parts: Parts): void {
  const { session } = parts;
  onFile<FileParams, readonly RecordKind[] | Refused>(parts, RECORD_KINDS, (_, file) => {
    const job = session().job(file);
    // Said before three questions are asked for nothing.
    if (job.isJob) return recordKinds(job);
    return refused(phrase`${called(file).shown} is no job, and so keeps no record.`);
  });
  onFile<RecordParams, RecordEdits | Refused>(parts, RECORD, (params, file) =>
    recorded(session(), file, params),
  );
  onFile<NextParams, NextMade | Refused>(parts, NEXT, (params, file) =>
    next(session(), file, params),
  );
  onFile<ShareParams, SharedMade | Refused>(parts, SHARE, (params, file) =>
    shared(session(), file, params),
  );
  onFile<TakeParams, TakeEdits | Refused>(parts, TAKE, (params, file) =>
    takenFrom(session(), file, params),
  );
}

/** What a reader calls an open file. */
function called({ uri }: OpenFile) {
  return { shown: lastOf(uri) ?? uri, check: phrase`the problems of the file` };
}

function recorded(session: Session, file: OpenFile, { what, date, words = [] }: RecordParams) {
  if (!RECORDED.includes(what)) return refused(phrase`Nothing of a record is called ${what}.`);
  if (!dayOf(date)) return refused(phrase`${date} is no date. Write it like this: 2026-03-02.`);
  const source = session.source(file);
  const said = words.map((word) => word.slice(0, LONGEST));
  const made = recording(session.job(file), source.text, { what, date, words: said }, called(file));
  if (typeof made === 'string') return refused(made);
  const { text, line, lines, asides } = made;
  return { edit: editsTo(text, source.lines, file), line: line - 1, lines, asides };
}

/** So many characters nobody types. */
const LONGEST = 2000;

function next(session: Session, file: OpenFile, { to, ...wishes }: NextParams): NextMade | Refused {
  const job = session.job(file);
  const { shown } = called(file);
  if (!job.isJob) return refused(phrase`${shown} is no job: there is nothing to begin from.`);
  if (wishes.date && !dayOf(wishes.date))
    return refused(phrase`${wishes.date} is no date. Write it like this: 2026-03-02.`);
  const reach = to === undefined ? undefined : reaching(session, file, to);
  const made = nextJob(settled(job), job.scope.files.slice(1), { ...wishes, reach });
  const fresh = jobOfText(session, to ? session.lent.names.nameOf(to) : file.name, made.text);
  const price = (of: Job) => showTerm(of.price.total, of.env);
  return {
    text: made.text,
    cleared: made.cleared.map(({ text }) => text),
    rates: made.rates.map(({ what, was, now }) => ({ what, was, now })),
    before: job.isJob ? price(agreedJob(job)) : '',
    after: fresh.isJob ? price(fresh) : '',
  };
}

/** A file that one job names, as a job at another address names it; as it is written where no way leads there. */
export function reaching(
  { lent }: Session,
  { name }: Pick<OpenFile, 'name'>,
  to: string,
): (file: string) => string {
  return (file) => {
    const reached = lent.files.resolve(name, file);
    const way = reached === undefined ? undefined : wayFrom(to, lent.names.uriOf(reached));
    return way === undefined ? file : way.replace(/["\\]/g, '\\$&');
  };
}

function shared(session: Session, file: OpenFile, params: ShareParams): SharedMade | Refused {
  const { without: level, client } = params;
  const whom = whomSaid(params.whom);
  if (!whom) return refused(phrase`Say whom the copy is for.`);
  if (!LEVELS.includes(level)) return refused(phrase`Say what the copy is to be without.`);
  const { shown, check } = called(file);
  const at = (place: { readonly file: string; readonly line: number }) =>
    `${lastOf(session.uriOf(place.file)) ?? place.file}:${place.line + 1}`;
  const wanted = { level, client: client || level === 'nothing', whom };
  const copy = partnerCopy(session.job(file), wanted, { file: shown, check, at });
  if (typeof copy === 'string') return refused(copy);
  const { text, left, replaced } = copy;
  return {
    text,
    name: partnerFile(whom),
    left: [...left].map(([what, count]) => ({ what, count })),
    replaced,
    price: priceTold(copy),
    asides: left.size
      ? [phrase`Read it before you send it: names in titles and notes are yours to judge.`]
      : [],
  };
}

function takenFrom(session: Session, file: OpenFile, params: TakeParams): TakeEdits | Refused {
  const source = session.source(file);
  const theirs = new SourceFile('', params.theirs);
  if (theirs.refused) return refused(phrase`Their file is too large.`);
  const used = session
    .job(file)
    .scope.files.slice(1)
    .flatMap((each) => each.blocks);
  const names = params.names && new Set(params.names);
  const found = taken(source.text, theirs, used, { names, rates: params.rates ?? false });
  const missing = params.names?.find((name) => !found.offered.includes(name));
  if (missing !== undefined)
    return refused(phrase`Their file has no block ${missing} that could be taken.`);
  const { lines, edits, refused: left, ours, offered } = found;
  const edit = editsIn(lines, source.lines, file);
  return { edit, taken: edits, refused: left, ours, offered };
}
