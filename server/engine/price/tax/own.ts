/** Pieces of work that have a tax line of their own: most jobs have none, and are not looked through at every keystroke. */
import type { Setting } from '../../resolve/book';
import { Groups } from '../../workspace/groups';
import type { SourceBlock } from '../../workspace/source';

interface HasBlock {
  readonly block: SourceBlock;
}

/** By the place of the work in the list. */
export type OwnTaxes = ReadonlyMap<number, Setting>;

/** Kept from one state of a job to the next. */
export class TaxLines {
  private readonly groups = new Groups<HasBlock, readonly (readonly [number, Setting])[]>(
    (works, at) =>
      works.flatMap(({ block }, i) => {
        const own = ownTax(block);
        return own ? [[at + i, own] as const] : [];
      }),
  );

  of(works: readonly HasBlock[]): OwnTaxes {
    return new Map(this.groups.of(works).flat());
  }
}

export function ownTax(block: SourceBlock): Setting | undefined {
  const line = block.read.heading?.body.find((l) => l.kind.key === 'tax');
  return line && { line, block };
}
