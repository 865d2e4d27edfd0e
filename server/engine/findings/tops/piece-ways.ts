/** Ways out that ask for a larger cap or coping: what is bought has to be as large as the line then says. */
import { phrase } from '../../../../shared/phrase';
import { sizeText } from '../../brickwork/lengths';
import { type Env, factsNamed, type LineFacts } from '../../resolve/env';
import { type RemarkWay, rewrite } from '../remark';

/** More of what is sold than this nobody reads through, and larger than so many times what is wanted nobody lays. */
const MOST = 2;
const LARGEST = 1.5;

interface Sold {
  readonly name: string;
  readonly sides: readonly number[];
}

/**
 * What the files sell by its size and that is large enough, the smallest first; then the size alone. That takes the name of
 * what is too small out with it: else that one would be bought, at its price.
 */
export function piecesLarger(
  line: LineFacts,
  wanted: readonly number[],
  what: string,
  env: Env,
): RemarkWay[] {
  const sold = soldFor(line, wanted, env);
  const named = sold.map(({ name, sides }) => {
    const text = `${sizeText(env, sides)} ${name}`;
    return { title: `${what} ${text}`, edits: [rewrite(sizeAndName(line), text)] };
  });
  const text = sizeText(env, wanted);
  const old = line.word('material');
  const more = old ? phrase` instead of ${old}` : '';
  const plain = { title: `${what} ${text}${more}`, edits: [rewrite(sizeAndName(line), text)] };
  const [first, ...rest] = [...named, plain];
  return [{ ...first!, preferred: true }, ...rest];
}

function soldFor(line: LineFacts, wanted: readonly number[], env: Env): Sold[] {
  const [long, wide] = wanted as [number, number];
  const free = line.line.kind.key === 'coping';
  const names = env.book.names('material');
  const fits = ([along, across]: readonly number[]) =>
    across! >= wide - SAME &&
    across! <= wide * LARGEST &&
    (free || (along! >= long - SAME && along! <= long * LARGEST));
  return [...names]
    .flatMap((name): Sold[] => {
      const sides = factsNamed(env, 'material', name)?.line('size')?.sides('size');
      return sides && sides.length > 1 && fits(sides) ? [{ name, sides }] : [];
    })
    .sort((a, b) => a.sides[0]! * a.sides[1]! - b.sides[0]! * b.sides[1]!)
    .slice(0, MOST);
}

/** Mm. */
const SAME = 0.5;

function sizeAndName(line: LineFacts) {
  const size = line.at('size');
  if (!line.values.material) return size;
  return { ...size, span: { ...size.span, end: line.at('material').span.end } };
}
