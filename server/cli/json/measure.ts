/** What perpend measure --json prints. Its shape is promised in shared/json-schema. */

import { toFindOut } from '../../engine/views/find-out';
import { figureView } from '../../engine/views/job-view';
import { rangePlace, rangeText, unmeasuredIn } from '../../engine/views/measure';
import type { Job } from '../../engine/workspace/job';
import type { Opened, Session } from '../session';
import { VERSION } from '../version';
import { placeJson } from './plain';

export function measureDocument({ job, shown }: Opened, session: Session): string {
  const document = {
    $schema: 'perpend-1.schema.json',
    format: 'perpend-measure',
    version: 1,
    tool: { name: 'perpend', version: VERSION },
    file: shown,
    unmeasured: unmeasuredIn(job).map(({ block, span, text, waiting }) => ({
      text,
      place: placeJson(block.place(span), session),
      waiting,
    })),
    findOut: toFindOut(job).map(({ place, ...asked }) => ({
      ...asked,
      place: placeJson(place, session),
    })),
    likely: amountJson(job.price.total, job),
    ...spreadJson(job, session),
  };
  return `${JSON.stringify(document)}\n`;
}

function spreadJson(job: Job, session: Session) {
  const { spread } = job;
  if (!spread) return { ranges: [] };
  return {
    range: { low: amountJson(spread.low, job), high: amountJson(spread.high, job) },
    ranges: spread.ranges.map((range) => ({
      text: rangeText(range),
      place: placeJson(rangePlace(range), session),
      share: Math.round(range.share * 1e4) / 1e4,
    })),
  };
}

export function amountJson(term: Job['price']['total'], job: Job) {
  const { value, unit, text } = figureView('', term, job.env);
  return { value, unit, text };
}
