/** A head, a lintel or an arch for which the wall above its opening is not high enough. */
import { phrase } from '../../../../shared/phrase';
import type { Head } from '../../brickwork/wall/heads/head';
import { type Site, topOver, type Zone } from '../../brickwork/wall/heads/site';
import type { LineFacts } from '../../resolve/env';
import { coursesText, coursesTold } from '../courses';
import { lastOwnLine } from '../fit/decision';
import { lineAfter, type Remark, type RemarkWay } from '../remark';

/** @param zone what it takes; nothing for an opening that runs to the top */
export function headRoom(
  { opening, takes }: Head,
  asked: LineFacts,
  zone: Zone | undefined,
  site: Site,
): Remark {
  const { facts, spec } = opening;
  const { from, to } = zone ?? { from: spec.from, to: spec.from + spec.width };
  const top = topOver(site, from, to);
  const message = zone
    ? phrase`This takes ${coursesTold(zone.high - spec.top!)} over the opening ${facts.name}, and the wall has ${coursesTold(top - spec.top!)} there: it is left out.`
    : phrase`The opening ${facts.name} runs to the top of the wall: there is nothing over it to carry, and this is left out. Say how many courses high it is.`;
  const ways = zone ? roomFor(opening, zone, top, site) : lowest(opening, takes ?? 1, top);
  const { origin } = asked;
  return { code: 'head-room', about: facts.name, severity: 'error', origin, message, ways };
}

function lowest({ facts, spec }: Head['opening'], takes: number, top: number): RemarkWay[] {
  const high = top - spec.sill - takes;
  const line = facts.line('height');
  if (high < 1) return [];
  const text = coursesText(high);
  const title = phrase`End it ${coursesTold(takes)} under the top: ${coursesTold(high)} high`;
  if (line) return [{ title, edits: [{ ...line.at('courses'), text }] }];
  const indent = ' '.repeat(facts.heading.syntax.indent + 2);
  return [
    { title, edits: [lineAfter(facts.block, lastOwnLine(facts), `${indent}height ${text}`)] },
  ];
}

function roomFor(
  { facts, spec }: Head['opening'],
  { high }: Zone,
  top: number,
  { masonry }: Site,
): RemarkWay[] {
  const ways: RemarkWay[] = [];
  const wall = masonry.facts.line('height');
  const said = wall?.number('courses');
  if (wall && said !== undefined) {
    const text = coursesText(Math.floor(said) + high - top);
    ways.push({
      title: phrase`Make the wall ${coursesTold(Math.floor(said) + high - top)} high`,
      edits: [{ ...wall.at('courses'), text }],
    });
  }
  const own = facts.line('height');
  const left = spec.top! - spec.sill - (high - top);
  if (own && left >= 1) {
    const text = coursesText(left);
    ways.push({
      title: phrase`Make the opening ${coursesTold(left)} high`,
      edits: [{ ...own.at('courses'), text }],
    });
  }
  return ways;
}
