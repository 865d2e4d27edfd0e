/** A head, a lintel or an arch that something else stands in the way of. */
import { phrase } from '../../../../shared/phrase';
import type { Head } from '../../brickwork/wall/heads/head';
import type { Obstacle } from '../../brickwork/wall/heads/placed';
import type { LineFacts } from '../../resolve/env';
import { coursesText, coursesTold } from '../courses';
import type { Remark, RemarkWay } from '../remark';

export function headClash({ opening }: Head, asked: LineFacts, other: Obstacle): Remark {
  const { facts, spec } = opening;
  const message = phrase`What spans the opening ${facts.name} reaches into ${other.what}, and is left out. Move one of them.`;
  const origin = asked.origin;
  const ways = lowered(other, spec.top!);
  return { code: 'head-clash', about: facts.name, severity: 'error', origin, message, ways };
}

/** A pier beside the opening may end where the head begins, and carry it. */
function lowered({ pier }: Obstacle, top: number): RemarkWay[] {
  const line = pier?.facts.line('height');
  if (!pier || !line?.values.courses || top <= (pier.spec.base ?? 0)) return [];
  const text = coursesText(top - (pier.spec.base ?? 0));
  const title = phrase`End the pier ${pier.spec.name} under it: ${coursesTold(top - (pier.spec.base ?? 0))} high`;
  return [{ title, edits: [{ ...line.at('courses'), text }] }];
}
