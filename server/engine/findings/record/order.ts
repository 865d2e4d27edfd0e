/** Days of a record that cannot be in that order. */

import type { Severity } from '../../../../shared/finding';
import { phrase } from '../../../../shared/phrase';
import { type Entry, type JobRecord, recordOf } from '../../life/record';
import type { Job } from '../../workspace/job';
import type { Remark } from '../remark';

export function recordOrder(job: Job): Remark[] {
  const record = recordOf(job);
  if (!record.block) return [];
  return [...yesBeforeSent(record), ...paidBeforeAsked(record), ...askedBeforeYes(record)];
}

function yesBeforeSent({ sent, accepted }: JobRecord): Remark[] {
  const [first] = sent;
  const [yes] = accepted;
  if (!first || !yes || yes.date >= first.date) return [];
  return [
    remark(
      yes,
      'warning',
      phrase`It was accepted on ${yes.date}, and first sent on ${first.date}, after that. One of the days is wrong.`,
    ),
  ];
}

/** A deposit may come in before the invoice for it: only told, no more. */
function paidBeforeAsked({ invoiced, paid }: JobRecord): Remark[] {
  const [asked] = invoiced;
  const [came] = paid;
  if (!came || (asked && asked.date <= came.date)) return [];
  const why = asked
    ? phrase`the first invoice is of ${asked.date}, after that`
    : phrase`no invoice is recorded`;
  return [remark(came, 'information', phrase`Money came in on ${came.date}, and ${why}.`)];
}

function askedBeforeYes({ invoiced, accepted }: JobRecord): Remark[] {
  const [asked] = invoiced;
  const [yes] = accepted;
  if (!asked || !yes || yes.date <= asked.date) return [];
  return [
    remark(
      asked,
      'warning',
      phrase`It was invoiced on ${asked.date}, and accepted on ${yes.date}, after that. One of the days is wrong.`,
    ),
  ];
}

function remark({ line }: Entry, severity: Severity, message: string): Remark {
  return { code: 'record-order', severity, origin: line.at('date'), message };
}
