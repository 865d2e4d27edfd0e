/** More built again than stands there. */

import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import { measuredWithin } from '../../brickwork/repair/as-it-stands';
import { coursesSaid } from '../../brickwork/repair/extent';
import type { Site } from '../../brickwork/repair/site';
import type { LineFacts } from '../../resolve/env';
import type { Origin } from '../../working/term';
import { coursesText, coursesTold } from '../courses';
import { type Remark, rewrite } from '../remark';

interface Over {
  readonly origin: Origin;
  readonly said: string;
  readonly stands: string;
  /** What may stand there instead. */
  readonly text: string;
  /** The same as a line of the job says it. */
  readonly written: string;
}

export function rebuildOver(site: Site): Remark | undefined {
  const line = site.facts.line('rebuild');
  const over = line && site.called ? (tooLong(line, site) ?? tooHigh(line, site)) : undefined;
  if (!over) return undefined;
  const { origin, said, stands, text, written } = over;
  const counted = site.pier
    ? phrase`No more than stands is counted.`
    : phrase`It is counted as it is written.`;
  const message = phrase`${said} are built again of ${site.called}, which is ${stands}. ${counted} Write what comes down.`;
  const ways = [{ title: phrase`All of it: ${text}`, edits: [rewrite(origin, written)] }];
  return { code: 'rebuild-over', severity: 'warning', origin, message, ways };
}

function tooLong(line: LineFacts, { size, env, pier }: Site): Over | undefined {
  const said = line.number('length');
  if (pier || said === undefined || !size.length || said <= size.length + measuredWithin(env))
    return undefined;
  const text = lengthText(env, size.length);
  return {
    origin: line.at('length'),
    said: lengthText(env, said),
    stands: phrase`${text} long`,
    text,
    written: text,
  };
}

function tooHigh(line: LineFacts, site: Site): Over | undefined {
  const { courses: stand } = site.size;
  const key = ['courses', 'height', ...(site.pier ? ['length'] : [])].find((k) => line.values[k]);
  const said = key && coursesSaid(line, site)?.value.toNumber();
  if (!key || !said || !stand || said <= stand) return undefined;
  const text = coursesTold(stand);
  return {
    origin: line.at(key),
    said: coursesTold(said),
    stands: phrase`${text} high`,
    text,
    written: coursesText(stand),
  };
}
