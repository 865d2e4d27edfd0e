/** What a client is told of a pier. */
import { exact } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import { showNumber } from '../../../../shared/show';
import type { Term } from '../../working/term';
import type { Masonry } from '../masonry';
import { dampSaid, footingSaid, highSaid, planSaid, type Said, saidFrom } from '../said';
import { capSaid, finishSaid } from '../wall/says';
import type { Plan } from './plan';

export function sayPier(
  masonry: Masonry,
  plan: Plan,
  height: number,
  coping: number,
  alike: Term,
): Said[] {
  const { facts, env } = masonry;
  const many = alike.value.gt(1);
  const count = many ? phrase`${showNumber(exact(alike.value), 0)} piers` : phrase`a pier`;
  const each = many ? phrase` of each` : '';
  const size = planSaid(plan.width, plan.depth, env);
  const high = `${highSaid(height, coping, env)}${capSaid(facts, env)}`;
  const lines = ['size', 'height', 'cap', 'brick'].map((key) => facts.line(key));
  const built = phrase`Build ${count}, ${many ? phrase`each ` : ''}${size} and ${high}, in ${masonry.brick.title}.`;
  return [
    ...saidFrom([built], ...lines),
    ...dampSaid(facts, each),
    ...finishSaid(facts, each, env),
    ...footingSaid(facts, env, each),
  ];
}
