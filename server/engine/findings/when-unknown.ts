/** A caution that nothing would ever bring up: a word slipped, or it is measured in the wrong thing. */

import { BROUGHT_UP_BY } from '../../../grammar/lines/caution';
import type { Values } from '../../../grammar/read/values';
import { later, phrase, spoken } from '../../../shared/phrase';
import { originOf } from '../resolve/book';
import type { Env } from '../resolve/env';
import type { SourceBlock } from '../workspace/source';
import { meantBy } from './names';
import { type Remark, rewrite } from './remark';

export function whenUnknown(block: SourceBlock, env: Env): Remark[] {
  if (block.kind !== 'caution') return [];
  const lines = block.read.heading?.body.filter((line) => line.kind.key === 'when') ?? [];
  const conditions = lines.flatMap(({ values: { when } }) =>
    when?.kind === 'list' ? when.of : [],
  );
  return conditions.flatMap((values) => unknown(values, block, env) ?? unlike(values, block) ?? []);
}

/** Neither a word of the table nor a material. */
function unknown({ what }: Values, block: SourceBlock, env: Env): Remark | undefined {
  if (what?.kind !== 'word' || Object.hasOwn(BROUGHT_UP_BY, what.text)) return undefined;
  if (env.book.find('material', what.text)) return undefined;
  const known = [...Object.keys(BROUGHT_UP_BY), ...env.book.names('material')];
  const meant = meantBy(what.text, known);
  const origin = originOf(block, what);
  const ask = meant
    ? phrase` Is it ${meant}?`
    : phrase` The words that do stand under \`when\` in the reference.`;
  return {
    code: 'when-unknown',
    severity: 'warning',
    origin,
    message: phrase`Nothing in a job is called “${what.text}”, so this never brings the caution up.${ask}`,
    ways: meant
      ? [{ title: phrase`Write ${meant}`, edits: [rewrite(origin, meant)], preferred: true }]
      : [],
  };
}

/** A limit on what is not measured, or is measured in something else. */
function unlike({ what, amount }: Values, block: SourceBlock): Remark | undefined {
  if (what?.kind !== 'word' || amount?.kind !== 'quantity') return undefined;
  const dimension = Object.hasOwn(BROUGHT_UP_BY, what.text)
    ? BROUGHT_UP_BY[what.text as keyof typeof BROUGHT_UP_BY]
    : undefined;
  if (dimension === amount.unit?.dimension) return undefined;
  const how = dimension
    ? phrase`“${what.text}” is a ${spoken(SAID[dimension])}`
    : phrase`“${what.text}” is not measured`;
  const message = phrase`${how}, so this limit says nothing. ${dimension ? phrase`Write it as a ${spoken(SAID[dimension])}.` : phrase`Leave the limit out.`}`;
  return { code: 'when-unknown', severity: 'warning', origin: originOf(block, amount), message };
}

const SAID = {
  length: later`length`,
  mass: later`weight`,
  bricks: later`thickness in bricks`,
} as const;
