/** Steps of a working that a reader learns nothing from: what they were made of is shown in their place. */
import type { Step } from '../workings';

/** Ops that leave a value as it was, where it is whole or exact already. */
const ROUNDED = new Set(['cents', 'up', 'down']);

/** The step that says something: past rounding that changed nothing, sums of one thing, and one times it. */
export function telling(step: Step): Step {
  const inner = rounded(step) ?? alone(step) ?? onceOver(step);
  return inner && same(step, inner) ? telling(inner) : step;
}

/** The fact that a length or a weight is said in another unit of; nothing for other steps. */
export function converted({ term, parts: [fact, ...more] }: Step): Step | undefined {
  const plain = fact && !more.length && !fact.parts.length && !fact.detail.length;
  return term.op === 'convert' && plain && fact.view.label === term.label ? fact : undefined;
}

function rounded({ term, parts }: Step): Step | undefined {
  return ROUNDED.has(term.op) && parts.length === 1 ? parts[0] : undefined;
}

function alone({ term, parts, detail }: Step): Step | undefined {
  const one = (term.op === 'sum' || term.op === 'product') && parts.length === 1;
  return one && !detail.length ? parts[0] : undefined;
}

/** Where no line says the one: what a line says is a source, and stays. */
function onceOver({ term, parts, detail }: Step): Step | undefined {
  if (term.op !== 'product' || detail.length) return undefined;
  const rest = parts.filter((part) => !isUnsaidOne(part));
  return rest.length === 1 && rest.length < parts.length ? rest[0] : undefined;
}

function isUnsaidOne({ term, parts }: Step): boolean {
  if (term.op !== 'fact' || parts.length || !term.value.eq(1) || term.range) return false;
  const { origin } = term;
  return !origin || origin.span.line === origin.block.read.syntax.heading?.span.line;
}

/** And what is said of it, whatever its unit is called. */
function same({ term, view }: Step, inner: Step): boolean {
  const { value, gaps } = inner.term;
  return (
    value.eq(term.value) && gaps.length === term.gaps.length && inner.view.result === view.result
  );
}
