/** perpend result: what became of a job, beside what was reckoned. */
import type { Given } from '../args';
import type { Io } from '../io';
import { resultDocument } from '../json/result';
import { resultReport } from '../show/result';
import { type Command, codeOf, fileAnd, JSON_OPTION, sessionOf, WORKSPACE } from './command';

export const resultCommand: Command = {
  name: 'result',
  takes: 'FILE',
  about: 'show what became of a job: cost, margin, hours, owed',
  more: [
    'From what the record says was worked and spent, beside what was reckoned for the',
    'job as it was accepted. Hours are of one person; each costs what one of the gang',
    'does on average. What is not recorded stands as it was reckoned.',
  ],
  options: [JSON_OPTION, WORKSPACE],
  run(given: Given, io: Io): number {
    const [file] = fileAnd(given, 'result', 0);
    const opened = sessionOf(given, io).open(file);
    if (given.has(JSON_OPTION.name)) io.raw(resultDocument(opened));
    else io.out(`${resultReport(opened, io).join('\n')}\n`);
    return codeOf({ opened: [opened], unread: [] });
  },
};
