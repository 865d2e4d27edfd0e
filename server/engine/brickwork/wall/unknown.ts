/** What a wall does not say, without which nothing of it can be laid. */
import { phrase } from '../../../../shared/phrase';
import type { BlockFacts } from '../../resolve/env';
import type { Thickness } from '../../setting-out';
import type { Gap } from '../../working/term';
import { whyNoBond } from './bond';

interface Known {
  readonly unit: unknown;
  readonly joints: unknown;
  readonly length: number | undefined;
  readonly height: unknown;
  readonly bond: unknown;
  readonly halves: Thickness | undefined;
}

function whyNoJoints(facts: BlockFacts, name: string): string {
  const gauge = facts.line('gauge');
  return gauge
    ? phrase`the gauge of ${name} leaves no bed joint: its courses are no higher than its brick, or its joints are not known`
    : phrase`the joints of ${name} are not known, or no joints at all`;
}

/** What of it is not known, each where it would be said. Height and joints hang on the brick, which has its own gap. */
export function unknown(known: Known, facts: BlockFacts): Gap[] {
  const name = facts.name || phrase`this wall`;
  const gap = (key: string, what: string): Gap => ({
    what,
    origin: facts.orDefault(key)?.origin ?? facts.origin,
  });
  const { unit, length } = known;
  return [
    ...(length
      ? []
      : [
          gap(
            'length',
            length === 0
              ? phrase`the length of ${name} is nothing`
              : phrase`the length of ${name} is not known`,
          ),
        ]),
    ...(known.height || !unit || !known.joints
      ? []
      : [gap('height', phrase`the height of ${name} is not known`)]),
    ...(known.bond || !known.halves
      ? []
      : [gap(facts.line('bond') ? 'bond' : 'thick', whyNoBond(facts, known.halves))]),
    ...(known.joints || !unit
      ? []
      : [
          gap(
            facts.line('gauge') && !facts.line('joint') ? 'gauge' : 'joint',
            whyNoJoints(facts, name),
          ),
        ]),
    ...(known.halves
      ? []
      : [
          gap(
            'thick',
            phrase`${name} has a thickness that is not set out: it can be half a brick, one, one and a half or two bricks`,
          ),
        ]),
  ];
}
