/** What there is to say of what spans an opening. */

import { phrase } from '../../../../../shared/phrase';
import { type Decidable, idleFits } from '../../../findings/fit/fit-idle';
import { archJoint } from '../../../findings/heads/arch-joint';
import { archRise } from '../../../findings/heads/arch-rise';
import { archThin } from '../../../findings/heads/arch-thin';
import { bearingShort } from '../../../findings/heads/bearing-short';
import { headUnfit } from '../../../findings/heads/fit-head';
import { headBrick } from '../../../findings/heads/head-brick';
import { type HighThing, headHeight } from '../../../findings/heads/head-height';
import { headMissing } from '../../../findings/heads/head-missing';
import { headSize } from '../../../findings/heads/head-size';
import { headSpan } from '../../../findings/heads/head-span';
import { headUnsupported } from '../../../findings/heads/head-unsupported';
import { lintelNarrow } from '../../../findings/heads/lintel-narrow';
import { skinUncarried } from '../../../findings/heads/skin-uncarried';
import { headIdle } from '../../../findings/idle';
import type { Remark, RemarkWay } from '../../../findings/remark';
import { lengthText, sizeText } from '../../lengths';
import { MOST_RINGS } from './arch';
import type { Head } from './head';
import { coursedHeights, coursing, MOST_COURSES, type Site, topOver } from './site';

export function headRemarks(head: Head, site: Site): Remark[] {
  const { opening, lintel, row, arch, subsill } = head;
  const { facts } = opening;
  const spans = arch?.line ?? row?.line ?? lintel?.line;
  const found = [
    headMissing(opening, topOver(site, opening.spec.from, opening.spec.from + opening.spec.width)),
    spans && headSpan(opening, spans),
    lintel && bearingShort(opening, lintel),
    lintel && lintelNarrow(facts.name, lintel, site),
    spans && skinUncarried(opening, spans, lintel, site),
    ...highThings(head, site).map((thing) => headHeight(thing, site)),
    row && !lintel && !facts.line('lintel')
      ? headUnsupported(opening, row.line, row.text.pieces)
      : undefined,
    ...[row, subsill].map((each) => each && headUnfit(each, site)),
    ...[row, arch, subsill].map((each) => each && headBrick(each.line, site)),
    archRise(opening),
    arch && archJoint(opening, arch, site),
    arch && archThin(opening, arch),
    tooLarge(head),
    ...headIdle(facts),
    ...idleFits(facts, decidables(head)),
  ];
  return found.filter((remark): remark is Remark => remark !== undefined);
}

/** Rings without end, a lintel or an arch as high as a house: limits of the tool. */
function tooLarge({ opening, large }: Head): Remark | undefined {
  const most = phrase`up to ${MOST_COURSES} courses and ${MOST_RINGS} rings`;
  return large && headSize(opening.facts.name, large, most);
}

function decidables({ lintel, row, arch, subsill }: Head): Decidable[] {
  return [
    ...[row, subsill].flatMap((each) =>
      each ? [{ name: each.text.name, open: each.fit.works === 'no' }] : [],
    ),
    ...(row ? [{ name: 'head-height', open: !row.coursing.works }] : []),
    ...(lintel ? [{ name: 'lintel-height', open: !lintel.coursing.works }] : []),
    ...(arch ? [{ name: 'arch', open: arch.wide }] : []),
  ];
}

function highThings({ opening, lintel, row }: Head, site: Site): HighThing[] {
  const { env } = site.masonry;
  const home = opening.facts;
  const things: HighThing[] = [];
  if (lintel)
    things.push({
      run: { name: 'lintel-height', home },
      line: lintel.line,
      what: phrase`A lintel ${lengthText(env, lintel.high)} high`,
      coursing: lintel.coursing,
      others: otherLintels(lintel.line, site),
    });
  if (row)
    things.push({
      run: { name: 'head-height', home },
      line: row.line,
      what:
        row.kind === 'soldier' ? phrase`A course of soldiers` : phrase`A course of bricks on edge`,
      coursing: row.coursing,
      others: row.kind === 'soldier' ? [] : soldiers(row.line, site),
    });
  return things;
}

/** The same lintel, of the next heights that make whole courses. */
function otherLintels(line: NonNullable<Head['lintel']>['line'], site: Site): RemarkWay[] {
  const [wide, high, ...long] = line.sides('size') ?? [];
  if (wide === undefined || high === undefined) return [];
  return coursedHeights(high, site).map((other) => {
    const text = sizeText(site.masonry.env, [wide, other, ...long]);
    const title = phrase`A lintel ${lengthText(site.masonry.env, other)} high`;
    return { title, edits: [{ ...line.at('size'), text }] };
  });
}

/** Soldiers in place of bricks on edge, where they make whole courses. */
function soldiers(line: NonNullable<Head['row']>['line'], site: Site): RemarkWay[] {
  if (!coursing(site.spec.unit.length, site).works) return [];
  return [{ title: phrase`Soldiers instead`, edits: [{ ...line.at('kind'), text: 'soldier' }] }];
}
