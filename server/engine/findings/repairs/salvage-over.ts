/** More bricks laid again, or halves kept, than come down. */
import { phrase } from '../../../../shared/phrase';
import type { Salvage } from '../../brickwork/repair/salvage';
import type { BlockFacts, LineFacts } from '../../resolve/env';
import { type Remark, rewrite } from '../remark';

/** At the upper end of a range: what is not possible there is not known either. */
export function salvageOver(facts: BlockFacts, { down }: Salvage): Remark | undefined {
  const all = down && !down.gaps.length ? down.value.toNumber() : 0;
  if (!all) return undefined;
  const salvage = facts.line('salvage');
  const halves = facts.line('halves');
  const whole = salvage ? most(salvage, ['bricks', 'share'], all) : 0;
  if (salvage && whole > all) return tooMany(salvage, whole, all);
  const kept = halves ? most(halves, ['count', 'share'], all) : 0;
  if (!halves || whole + kept <= all) return undefined;
  return noneLeft(halves, kept, all - whole);
}

function most(line: LineFacts, keys: readonly string[], all: number): number {
  for (const key of keys) {
    const value = line.values[key];
    if (value?.kind !== 'quantity') continue;
    const said = (value.high ?? value.low).toNumber();
    return key === 'share' ? Math.floor((said / 100) * all + 1e-9) : said;
  }
  return 0;
}

function tooMany(line: LineFacts, said: number, all: number): Remark {
  const message = phrase`${said} bricks are salvaged, and only ${all} come down. No more than those are laid again.`;
  return {
    code: 'salvage-over',
    severity: 'warning',
    origin: line.at('bricks'),
    message,
    ways: [
      {
        title: phrase`All that come down: ${all} bricks`,
        edits: [rewrite(line.at('bricks'), `${all} bricks`)],
      },
    ],
  };
}

function noneLeft(line: LineFacts, kept: number, rest: number): Remark {
  const key = line.values.count ? 'count' : 'share';
  const message = phrase`${kept} bricks are to leave a half, and after those that are laid again ${rest} are left of what comes down. No more halves than those are kept.`;
  const ways = rest
    ? [{ title: phrase`Keep ${rest} halves`, edits: [rewrite(line.at(key), String(rest))] }]
    : [];
  return { code: 'salvage-over', severity: 'warning', origin: line.at(key), message, ways };
}
