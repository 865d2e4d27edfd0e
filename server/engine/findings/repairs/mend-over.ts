/** More mended than there is of what it is in: coping, indents, or a face to point. */
import { lengthText } from '../../brickwork/lengths';
import { MEASURED } from '../../brickwork/repair/as-it-stands';
import type { Site } from '../../brickwork/repair/site';
import type { LineFacts } from '../../resolve/env';
import { type Remark, rewrite } from '../remark';

export function mendOver(site: Site): Remark[] {
  if (!site.called) return [];
  return [...tooLong(site), ...tooHigh(site)];
}

/** Coping and what lies on top is no longer than the wall. */
function tooLong(site: Site): Remark[] {
  const { facts, size, env } = site;
  const { length } = size;
  if (!length) return [];
  const lines = ['recope', 'rebed'].flatMap((key) => facts.lines(key));
  return lines.flatMap((line) => {
    const said = line.number('length');
    if (said === undefined || said <= length + MEASURED) return [];
    const text = lengthText(env, length);
    return [over(line, 'length', lengthText(env, said), `${text} long`, text, site)];
  });
}

/** Where it steps, its height is that of its left end alone, and nothing is held against it. */
function tooHigh(site: Site): Remark[] {
  const { facts, size, stands } = site;
  const { courses } = size;
  if (!courses || stands.line('top') || stands.line('ground')) return [];
  return facts.lines('tooth-in').flatMap((line) => {
    const said = line.number('courses') ?? 0;
    if (said <= courses) return [];
    const text = `${courses} courses`;
    return [over(line, 'courses', `${said} courses`, `${text} high`, text, site)];
  });
}

function over(
  line: LineFacts,
  key: string,
  said: string,
  stands: string,
  text: string,
  { called }: Site,
): Remark {
  const message = `${said} are mended of ${called}, which is ${stands}. It is counted as it is written. Write what is done.`;
  const ways = [{ title: `All of it: ${text}`, edits: [rewrite(line.at(key), text)] }];
  return { code: 'mend-over', severity: 'warning', origin: line.at(key), message, ways };
}
