/** For readers that are programs: a job checked, priced, a figure explained. Nothing is changed. */
import { phrase } from '../../../shared/phrase';
import type { Refused } from '../../../shared/protocol/pages';
import {
  CHECK,
  type CheckParams,
  EXPLAIN,
  type ExplainParams,
  PRICE,
  type Told,
  type ToldParams,
} from '../../../shared/protocol/tools';
import { checkedFile, checkTold } from '../../documents/tools/check';
import { explainTold } from '../../documents/tools/explain';
import { priceTold } from '../../documents/tools/price';
import { jobAt, lastOf } from '../beside';
import type { Parts } from '../parts';
import type { Session } from '../session';
import type { Stretch } from '../stretch';
import { onMany } from './asked';
import { refused } from './exports';
import { progress, within } from './jobs';

export function registerTools(parts: Parts): void {
  const { connection, session } = parts;
  onMany<CheckParams, Told | Refused>(parts, CHECK, async (params, stretch) => {
    const { uri, workDoneToken } = params;
    if (uri !== undefined) return checkOne(session(), uri);
    const told = await progress(connection, workDoneToken, phrase`Checking jobs`);
    try {
      return await checkAll(session(), stretch, (part) => told?.report(part * 100));
    } finally {
      told?.done();
    }
  });
  onMany<ToldParams, Told | Refused>(parts, PRICE, async ({ uri }) => {
    const job = jobAt(session(), uri);
    return job ? priceTold(job, called(uri)) : unread(uri);
  });
  onMany<ExplainParams, Told | Refused>(parts, EXPLAIN, async ({ uri, figure }) => {
    const job = jobAt(session(), uri);
    if (!job) return unread(uri);
    const found = explainTold(job, called(uri), figure);
    return typeof found === 'string' ? refused(found) : found;
  });
}

function called(uri: string): string {
  return lastOf(uri) ?? uri;
}

function unread(uri: string): Refused {
  return refused(phrase`${called(uri)} cannot be read.`);
}

function checkOne(session: Session, uri: string): Told | Refused {
  const job = jobAt(session, uri);
  return job ? checkTold([checkedFile(job, wayIn(session, uri))]) : unread(uri);
}

/** Every file in the notation in the open folders, those that are open as they stand there. */
async function checkAll(
  session: Session,
  stretch: Stretch,
  told: (part: number) => void,
): Promise<Told> {
  const names = await within(session, undefined, stretch);
  const files = [];
  for (const [i, name] of names.entries()) {
    const uri = session.uriOf(name);
    const job = jobAt(session, uri);
    if (job) files.push(checkedFile(job, wayIn(session, uri)));
    told(i / names.length);
    if (stretch.due) await stretch.rest();
  }
  return checkTold(files);
}

/** From the open folder that it is in, and that too where there are several: many files of jobs have one name. */
function wayIn(session: Session, uri: string): string {
  const { names } = session.lent;
  const root = session.rootOf(uri);
  const way = root && names.wayTo(names.nameOf(root), names.nameOf(uri));
  if (!way) return called(uri);
  return [...(session.folders > 1 ? [called(root)] : []), ...way].join('/');
}
