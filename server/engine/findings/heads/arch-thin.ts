/** An arch that is not deep enough for its span. */
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import { type HeadArch, MOST_RINGS } from '../../brickwork/wall/heads/arch';
import type { OpeningFacts } from '../../brickwork/wall/openings';
import { defaultLine } from '../../resolve/env';
import { type Remark, type RemarkWay, rewrite } from '../remark';

export function archThin({ facts, spec }: OpeningFacts, head: HeadArch): Remark | undefined {
  const { env } = facts;
  const { arch, line } = head;
  const least = defaultLine(env, 'arch-depth');
  const share = least?.number('share');
  const depth = arch.back - arch.radius;
  if (!least || share === undefined || depth >= share * spec.width - 1e-6) return undefined;
  const message = phrase`An arch ${lengthText(env, depth)} deep is thin for a span of ${lengthText(env, spec.width)}: the rule of thumb asks for ${lengthText(env, share * spec.width)}.`;
  return {
    code: 'arch-thin',
    about: facts.name,
    severity: 'warning',
    origin: line.origin,
    message,
    related: [{ origin: least.origin, message: phrase`The rule` }],
    ways: deeper(head, share * spec.width),
  };
}

function deeper({ arch, line, kind }: HeadArch, depth: number): RemarkWay[] {
  const rings = Math.ceil((depth + arch.bed) / (arch.ring + arch.bed) - 1e-9);
  if (rings > MOST_RINGS) return [];
  const { block } = line;
  const rise = line.values.rise ? ` rise ${textOf(line)}` : '';
  const text = `head ${kind}${rise} rings ${rings}`;
  const edits = [rewrite({ block, span: line.line.syntax.span }, text)];
  return [{ title: phrase`Turn it in ${rings} rings`, preferred: true, edits }];
}

/** The rise as it stands in the file. */
function textOf(line: HeadArch['line']): string {
  const { span } = line.at('rise');
  return line.block.lines[span.line]!.slice(span.start, span.end);
}
