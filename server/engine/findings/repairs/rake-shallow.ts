/** Joints raked too little for new mortar to hold. */
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { Masonry } from '../../brickwork/masonry';
import { defaultLine, type LineFacts } from '../../resolve/env';
import { type Remark, rewrite } from '../remark';

export function rakeShallow(line: LineFacts, { env, jointTerms }: Masonry): Remark[] {
  const rule = defaultLine(env, 'rake-depth');
  const depth = line.number('depth');
  const times = rule?.number('times');
  const joint = jointTerms.perpend.value.toNumber();
  if (!rule || depth === undefined || !times || !joint || depth >= times * joint - 0.5) return [];
  const wanted = lengthText(env, times * joint);
  const message = phrase`Joints ${lengthText(env, joint)} wide are raked ${times} times as deep, ${wanted}, for new mortar to hold in them. ${lengthText(env, depth)} is less.`;
  return [
    {
      code: 'rake-shallow',
      severity: 'information',
      origin: line.at('depth'),
      message,
      related: [{ origin: rule.origin, message: phrase`How deep, in widths of the joint` }],
      ways: [{ title: phrase`Rake ${wanted}`, edits: [rewrite(line.at('depth'), wanted)] }],
    },
  ];
}
