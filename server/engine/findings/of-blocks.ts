/** What is told of the blocks of a file one by one, kept: after an edit only the few beside the edit are looked at again. */
import type { Env } from '../resolve/env';
import { Groups, joined } from '../workspace/groups';
import type { SourceBlock, SourceFile } from '../workspace/source';
import { blanks } from './blank';
import { bondUnsound } from './bond-unsound';
import { checkBlock, type WorkNames } from './checks';
import type { Remark } from './remark';
import { whenUnknown } from './when-unknown';
import { namedBy, namesOf } from './work-names';

type Told = (block: SourceBlock) => readonly Remark[];

/** Names of a file’s work, and what is told of its blocks by themselves. */
export interface OfBlocks {
  readonly names: WorkNames;
  readonly remarks: readonly Remark[];
}

/** Stands as long as the same can be looked up, and work has the same names. */
class Kept {
  private readonly named = new Groups<SourceBlock, readonly string[]>((of) => of.flatMap(namedBy));
  private env: Env | undefined;
  private words: readonly string[] = [];
  private names: WorkNames = new Map();
  private told: Groups<SourceBlock, readonly Remark[]>[] = [];

  of(blocks: readonly SourceBlock[], env: Env): OfBlocks {
    const words = joined(this.named.of(blocks));
    if (env !== this.env || !same(words, this.words)) this.anew(words, env);
    return { names: this.names, remarks: joined(this.told.flatMap((each) => each.of(blocks))) };
  }

  private anew(words: readonly string[], env: Env): void {
    const names = namesOf(words);
    const each: Told[] = [
      (block) => checkBlock(block, env, names),
      (block) => bondUnsound(block, env),
      (block) => whenUnknown(block, env),
      blanks,
    ];
    this.told = each.map((told) => new Groups((of) => of.flatMap(told)));
    [this.env, this.words, this.names] = [env, words, names];
  }
}

const kept = new WeakMap<SourceFile, Kept>();

export function ofBlocks(file: SourceFile, env: Env): OfBlocks {
  const known = kept.get(file) ?? new Kept();
  kept.set(file, known);
  return known.of(file.blocks, env);
}

function same(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((word, i) => word === b[i]);
}
