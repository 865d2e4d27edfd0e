/** A job that is recorded as lost after the client said yes. */
import { phrase } from '../../../../shared/phrase';
import { recordOf } from '../../life/record';
import type { Job } from '../../workspace/job';
import { type Remark, takenOut } from '../remark';

/** One that was lost first and accepted later came back: nothing is wrong with it. */
export function lostAccepted(job: Job): Remark[] {
  const { accepted, lost } = recordOf(job);
  const yes = accepted.findLast((each) => lost && each.date <= lost.date);
  if (!lost || !yes) return [];
  return [
    {
      code: 'lost-accepted',
      severity: 'warning',
      origin: lost.line.at('date'),
      message: phrase`It was accepted on ${yes.date}, and is lost on ${lost.date}: a job is one or the other. Where the client called it off, what was done by then is owed all the same: keep the acceptance, and invoice that.`,
      related: [{ origin: yes.line.at('date'), message: phrase`Where it is accepted` }],
      ways: [
        takenOut(lost.line, phrase`Take out that it is lost`),
        takenOut(yes.line, phrase`Take out that it was accepted`),
      ],
    },
  ];
}
