/** perpend compare: two revisions of a job by what they mean. */
import { later, phrase } from '../../../shared/phrase';
import { faceChanges } from '../../documents/compared';
import { type Comparison, compared } from '../../engine/compare';
import type { Given, Option } from '../args';
import { drawChanges } from '../compare/draw';
import { driven } from '../compare/driver';
import { keptBySent } from '../compare/sent';
import { sidesOf, type Two } from '../compare/sides';
import { CLEAN, ERRORS, WrongUse } from '../exits';
import { deliver } from '../files/deliver';
import type { Io } from '../io';
import { compareDocument } from '../json/compare';
import type { Session } from '../session';
import { compareReport } from '../show/compare';
import { type Command, JSON_OPTION, OUT, sessionOf, WORKSPACE } from './command';

export const SINCE: Option = {
  name: '--since',
  value: 'REVISION',
  about: later`with JOB as it stood in this revision of git`,
};
const SENT: Option = {
  name: '--sent',
  about: later`with what was sent last, as the record says`,
};
const DRAWING: Option = {
  name: '--drawing',
  about: later`draw the faces that changed, as SVG or DXF`,
};
const BLOCK: Option = {
  name: '--block',
  value: 'NAME',
  about: later`draw only this piece of work`,
};
const CHECK: Option = {
  name: '--check',
  about: later`exit with 1 when anything that counts changed`,
};
const DRIVER: Option = { name: '--driver', about: later`be the diff of git: see above` };

export const compare: Command = {
  name: 'compare',
  takes: 'OLD NEW',
  about: later`tell what changed between two revisions of a job`,
  more: [
    later`OLD and NEW are files; or give JOB alone with --since or --sent. Told are pieces
of work, facts, quantities, money, cautions, findings and faces that look other
than before. Comments, layout and how a length is written are no change. Files
that a job uses are taken from the same revision; libraries that ship are those
of this version. It exits with 0 whatever changed, and whatever is wrong in the
files; with --check it exits with 1 when anything that counts changed.

git diff shows the same where .gitattributes holds *.perp diff=perpend, after:
  git config diff.perpend.command "perpend compare --driver --"
It is given the seven words that git gives to such a command, or nine for a
file that was renamed. Files that a job uses are then those of the work tree.`,
  ],
  options: [
    SINCE,
    SENT,
    DRAWING,
    BLOCK,
    { ...OUT, about: later`write the drawing or the JSON to this file` },
    CHECK,
    DRIVER,
    JSON_OPTION,
    WORKSPACE,
  ],
  run(given: Given, io: Io): number {
    if (given.has(DRIVER.name)) return driven(given, io);
    const session = sessionOf(given, io);
    const two = sidesOf(given, session);
    if ('kept' in two) return keptBySent(two, given, given.has(CHECK.name), io);
    const found = compared(two.before, two.after);
    tell(found, two, given, session, io);
    return given.has(CHECK.name) && !found.nothing ? ERRORS : CLEAN;
  },
};

function tell(found: Comparison, two: Two, given: Given, session: Session, io: Io): void {
  const block = given.value(BLOCK.name);
  if (block !== undefined && !given.has(DRAWING.name))
    throw new WrongUse(phrase`--block NAME says what to draw: give --drawing with it.`);
  const out = given.value(OUT.name);
  if (given.has(DRAWING.name)) drawChanges(found, block, out, io);
  else if (given.has(JSON_OPTION.name))
    deliver(compareDocument(found, faceChanges(found), two.sides, session), out, io);
  else io.out(compareReport(found, faceChanges(found), two.shown, session, io));
}
