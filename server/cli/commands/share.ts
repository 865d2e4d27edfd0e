/** perpend share: a copy of a job for a partner firm. */

import { existsSync } from 'node:fs';
import path from 'node:path';
import { later, phrase } from '../../../shared/phrase';
import type { Place } from '../../../shared/span';
import {
  type ForPartner,
  LEVELS,
  type Level,
  type PartnerCopy,
  partnerCopy,
  partnerFile,
  whomSaid,
} from '../../engine/share/partner';
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

const FOR: Option = {
  name: '--for',
  value: 'FIRM',
  about: later`whom it is for: said at its head`,
};
const WITHOUT: Option = {
  name: '--without',
  value: 'WHAT',
  about: later`costs, money or nothing; and client, after a comma`,
};
const OUT: Option = {
  name: '--out',
  value: 'PATH',
  about: later`the new file, or a folder for it; nothing is written over`,
};

export const shareCommand: Command = {
  name: 'share',
  takes: 'JOB',
  about: later`copy a job for a partner firm, without costs or money`,
  more: [
    later`The copy is one file: what the job needs of the files it uses is in it, and
libraries that ship stay named. It is the job as it was agreed.
  --without costs    no prices of what is bought, no labour, outputs, travel,
                     costs, overhead, profit, discounts, record, sources and
                     comments; what the client pays stays, if a price was given
  --without money    that too is left out
  --without nothing  the whole job, comments and record too
With client after a comma (money,client) also client, site and reference. Money
in titles and notes is taken out and told. Work, bricks, mixes and their packs
and waste stay: from a price and the work anyone can judge what is left of it.`,
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

function levelOf(said: string | undefined) {
  const words = (said ?? '').split(',').map((word) => word.trim());
  const levels = words.filter((w): w is Level => LEVELS.some((each) => each === w));
  const client = !words.includes('client');
  const known = levels.length + (client ? 0 : words.filter((w) => w === 'client').length);
  if (levels.length !== 1 || known !== words.length)
    throw new WrongUse(
      phrase`Say what the copy is to be without: --without costs, --without money or --without nothing; and client after a comma, as in --without money,client.`,
    );
  if (levels[0] === 'nothing' && !client)
    throw new WrongUse(phrase`--without nothing is the whole job, with its client.`);
  return { level: levels[0]!, client };
}

/** @throws WrongUse where nothing is said */
function wordsOf(said: string | undefined): string {
  const words = whomSaid(said ?? '');
  if (!words) throw new WrongUse(phrase`Say whom the copy is for: --for "Halden Brothers".`);
  return words;
}

function fileNamed(out: string | undefined, whom: string, io: Io): string {
  if (out === undefined) throw new WrongUse(phrase`perpend share needs --out PATH: the new file.`);
  if (!isFolder(out, io)) return out;
  if (!existsSync(path.resolve(io.cwd, out)))
    throw new FileTrouble(phrase`The folder ${out} is not there.`);
  return path.join(out, partnerFile(whom));
}

/** @throws FileTrouble */
function copyOf(job: Job, shown: string, wanted: ForPartner, session: Session): PartnerCopy {
  const called = {
    file: shown,
    check: `perpend check ${shown}`,
    at: ({ file, line }: Place) => `${session.shown(file)}:${line + 1}`,
  };
  const copy = partnerCopy(job, wanted, called);
  if (typeof copy === 'string') throw new FileTrouble(copy);
  return copy;
}
