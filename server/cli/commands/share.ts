/** perpend share: a copy of a job for a partner firm. */
import { existsSync } from 'node:fs';
import path from 'node:path';
import { sharedCopy } from '../../engine/share';
import { unreadIn, wrongIn } from '../../engine/share/proof';
import { wholeCopy } from '../../engine/share/whole';
import type { Job } from '../../engine/workspace/job';
import type { Given, Option } from '../args';
import { CLEAN, FileTrouble, WrongUse } from '../exits';
import { isFolder } from '../files/deliver';
import { assertFree, writeNew } from '../files/new';
import type { Io } from '../io';
import { shareDocument } from '../json/share';
import type { Session } from '../session';
import { type Shared, shareReport } from '../show/share';
import { type Command, fileAnd, JSON_OPTION, sessionOf, WORKSPACE } from './command';

const FOR: Option = { name: '--for', value: 'FIRM', about: 'whom it is for: said at its head' };
const WITHOUT: Option = {
  name: '--without',
  value: 'WHAT',
  about: 'costs, money or nothing; and client, after a comma',
};
const OUT: Option = {
  name: '--out',
  value: 'PATH',
  about: 'the new file, or a folder for it; nothing is written over',
};

export const shareCommand: Command = {
  name: 'share',
  takes: 'JOB',
  about: 'copy a job for a partner firm, without costs or money',
  more: [
    'The copy is one file: what the job needs of the files it uses is in it, and',
    'libraries that ship stay named. It is the job as it was agreed.',
    '  --without costs    no prices of what is bought, no labour, outputs, travel,',
    '                     costs, overhead, profit, discounts, record, sources and',
    '                     comments; what the client pays stays, if a price was given',
    '  --without money    that too is left out',
    '  --without nothing  the whole job, comments and record too',
    'With client after a comma (money,client) also client, site and reference. Money',
    'in titles and notes is taken out and told. Work, bricks, mixes and their packs',
    'and waste stay: from a price and the work anyone can judge what is left of it.',
  ],
  options: [FOR, WITHOUT, OUT, JSON_OPTION, WORKSPACE],
  run(given: Given, io: Io): number {
    const [file] = fileAnd(given, 'share', 0);
    const { level, client } = levelOf(given.value(WITHOUT.name));
    const whom = wordsOf(given.value(FOR.name));
    const session = sessionOf(given, io);
    const out = fileNamed(given.value(OUT.name), whom, io);
    const name = session.nameOfNew(out);
    assertFree(name, out);
    const { job, shown } = session.open(file);
    const made = copyOf(job, shown, { level, client, whom }, session);
    writeNew(name, made.text, out);
    const shared: Shared = { ...made, file: shown, out, whom, level, client };
    if (given.has(JSON_OPTION.name)) io.raw(shareDocument(shared));
    else io.out(shareReport(shared, io));
    return CLEAN;
  },
};

export type Level = 'costs' | 'money' | 'nothing';

function levelOf(said: string | undefined) {
  const words = (said ?? '').split(',').map((word) => word.trim());
  const levels = words.filter((w): w is Level => ['costs', 'money', 'nothing'].includes(w));
  const client = !words.includes('client');
  const known = levels.length + (client ? 0 : words.filter((w) => w === 'client').length);
  if (levels.length !== 1 || known !== words.length)
    throw new WrongUse(
      'Say what the copy is to be without: --without costs, --without money or --without nothing; and client after a comma, as in --without money,client.',
    );
  if (levels[0] === 'nothing' && !client)
    throw new WrongUse('--without nothing is the whole job, with its client.');
  return { level: levels[0]!, client };
}

/** One line of plain words. */
function wordsOf(said: string | undefined): string {
  const words = (said ?? '').replace(/[\p{C}\p{Z}]+/gu, ' ').trim();
  if (!words) throw new WrongUse('Say whom the copy is for: --for "Halden Brothers".');
  return words.slice(0, 120);
}

/** The job’s own name may say who it is for, and so is not used. */
function fileNamed(out: string | undefined, whom: string, io: Io): string {
  if (out === undefined) throw new WrongUse('perpend share needs --out PATH: the new file.');
  if (!isFolder(out, io)) return out;
  if (!existsSync(path.resolve(io.cwd, out)))
    throw new FileTrouble(`The folder ${out} is not there.`);
  const slug =
    whom
      .toLowerCase()
      .match(/[\p{L}\p{N}]+/gu)
      ?.join('-') ?? 'partner';
  return path.join(out, `job-for-${slug.slice(0, 60)}.perp`);
}

interface For {
  readonly level: Level;
  readonly client: boolean;
  readonly whom: string;
}

const SAID: Readonly<Record<Level, string>> = {
  costs: 'without costs and margin',
  money: 'without money',
  nothing: 'whole',
};

function copyOf(job: Job, shown: string, { level, client, whom }: For, session: Session) {
  const head = `A copy for ${whom}, ${SAID[level]}.`;
  if (level === 'nothing')
    return { text: wholeCopy(job, head), left: new Map<string, number>(), replaced: [] };
  const unread = unreadIn(job.scope.files);
  if (unread)
    throw new FileTrouble(
      `${shown} is not shared: ${session.shown(unread.file)}:${unread.line + 1} cannot be read, and so what it would hide is not known. See: perpend check ${shown}`,
    );
  const copy = sharedCopy(job, { without: level, client, head });
  if (copy.names.length)
    throw new FileTrouble(
      `${shown} is not shared: ${copy.names.map((n) => `“${n}”`).join(', ')} says who it is for, and a name cannot be left out. Give it another in the job.`,
    );
  const wrong = wrongIn(copy.text, level);
  if (wrong) throw new Error(`The copy holds ${wrong}, and is not written.`);
  return copy;
}
