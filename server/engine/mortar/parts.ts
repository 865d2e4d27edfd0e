/** What a mix is made of, in parts by volume, dry and loose: as its parts say, or as it is put into the mixer. */
import { phrase } from '../../../shared/phrase';
import { unitNames } from '../brickwork/lengths';
import { type BlockFacts, type Env, factsNamed, type LineFacts } from '../resolve/env';
import { type Origin, product, type Term } from '../working/term';
import { loose, measureOf } from './measures';

export interface MixPart {
  readonly material: string;
  readonly origin: Origin;
  /** A plain number where the mix is given in parts, else a volume of one batch. */
  readonly part: Term;
}

/** A list longer than any mix: what comes after is left out. */
const MOST_PARTS = 30;

export function partsOf(facts: BlockFacts | undefined, env: Env): readonly MixPart[] {
  const parts = facts?.line('parts');
  if (parts) return partsIn(parts);
  const batch = facts?.line('batch');
  return batch ? batchIn(batch, env) : [];
}

function partsIn(line: LineFacts): MixPart[] {
  return listed(line, 'parts').map((values) => {
    const { material, parts } = values;
    const origin = { block: line.block, span: (parts ?? line.values.parts!).span };
    const name = textOf(material);
    return { material: name, origin, part: line.termOf(parts, phrase`parts of ${name}`, '') };
  });
}

function listed(line: LineFacts, key: string) {
  const list = line.values[key];
  return list?.kind === 'list' ? list.of.slice(0, MOST_PARTS) : [];
}

function textOf(value: LineFacts['values'][string]): string {
  return value && 'text' in value ? value.text : '';
}

/** By the bag, the trowel, the weight: each turned into loose volume, dry. */
function batchIn(line: LineFacts, env: Env): MixPart[] {
  return listed(line, 'batch').map((values) => {
    const name = textOf(values.material);
    const said = values.amount ?? values.count;
    const origin = { block: line.block, span: (said ?? line.values.batch!).span };
    const unit = said?.kind === 'quantity' ? said.unit : undefined;
    const facts = factsNamed(env, 'material', name);
    const part = unit
      ? loose(line.termOf(said, name), facts, name, env, origin)
      : measured(name, line.termOf(said, name, ''), textOf(values.countOf), env, origin);
    return { material: name, origin, part };
  });
}

function measured(name: string, count: Term, measure: string, env: Env, at: Origin): Term {
  const holds = measureOf(measure, name, env, at);
  return product(phrase`${name}, in a batch`, unitNames(env).volume, [count, holds]);
}
