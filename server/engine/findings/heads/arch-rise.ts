/** A segmental arch that rises too much to be one, or too little to stand. */
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import { archSaid } from '../../brickwork/wall/heads/arch';
import type { OpeningFacts } from '../../brickwork/wall/openings';
import { defaultLine } from '../../resolve/env';
import type { Remark } from '../remark';

export function archRise(opening: OpeningFacts): Remark | undefined {
  const said = archSaid(opening);
  if (said?.kind !== 'segmental' || said.rise === undefined) return undefined;
  return said.rise > opening.spec.width / 2 + 1e-6 ? tooHigh(opening) : tooFlat(opening, said.rise);
}

function tooHigh({ facts, spec }: OpeningFacts): Remark {
  const { env } = facts;
  const line = facts.line('head')!;
  const most = lengthText(env, spec.width / 2);
  const message = phrase`A segmental arch rises less than half its span: at ${most} it is a semicircle. It is left out.`;
  const rings = line.number('rings');
  const text = `head semicircular${rings ? ` rings ${rings}` : ''}`;
  const edits = [{ block: line.block, span: line.line.syntax.span, text }];
  const ways = [{ title: phrase`Make it a semicircle`, preferred: true, edits }];
  const origin = line.at('rise');
  return { code: 'arch-rise', about: facts.name, severity: 'error', origin, message, ways };
}

/** Rises are marked out in steps of so much: 5 mm, or a quarter of an inch. */
export const riseStep = (imperial: boolean) => (imperial ? 6.35 : 5);

function tooFlat({ facts, spec }: OpeningFacts, rise: number): Remark | undefined {
  const { env } = facts;
  const line = facts.line('head')!;
  const least = defaultLine(env, 'arch-rise');
  const share = least?.number('share');
  if (!least || share === undefined || rise >= share * spec.width - 1e-6) return undefined;
  const step = riseStep(env.imperial);
  const text = lengthText(env, Math.ceil((share * spec.width) / step - 1e-9) * step);
  const message = phrase`An arch so flat does not hold itself: over ${lengthText(env, spec.width)} it rises at least ${text}, or lies on a lintel for good.`;
  const edits = [{ ...line.at('rise'), text }];
  return {
    code: 'arch-rise',
    about: facts.name,
    severity: 'warning',
    origin: line.at('rise'),
    message,
    related: [{ origin: least.origin, message: phrase`The least rise` }],
    ways: [{ title: phrase`Make it rise ${text}`, preferred: true, edits }],
  };
}
