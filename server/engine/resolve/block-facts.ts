/** What a block and the defaults say, and what a named thing is by all files that say something of it. */
import type { NamedKind } from '../../../grammar/lines/slots';
import type { ReadLine } from '../../../grammar/read/values';
import { phrase } from '../../../shared/phrase';
import { missing, type Origin, type Term } from '../working/term';
import type { SourceBlock } from '../workspace/source';
import { lineOrigin, wordOf } from './book';
import type { Env } from './env';
import { LineFacts } from './line-facts';

/** The lines of a heading (or of a heading within it), by their word. */
export class BlockFacts {
  private readonly byKey = new Map<string, LineFacts[]>();

  constructor(
    readonly block: SourceBlock,
    readonly heading: ReadLine,
    readonly env: Env,
    private readonly also: readonly SourceBlock[] = [],
  ) {
    this.take(block, heading.body);
    for (const other of also) this.take(other, other.read.heading?.body ?? []);
  }

  /** Lines of a word that a nearer block has already said are passed over. */
  private take(block: SourceBlock, lines: readonly ReadLine[]): void {
    const said = new Set(this.byKey.keys());
    for (const line of lines) {
      const key = line.kind.key;
      if (said.has(key)) continue;
      const facts = new LineFacts(block, line, this.env);
      const list = this.byKey.get(key);
      if (list) list.push(facts);
      else this.byKey.set(key, [facts]);
    }
  }

  get name(): string {
    return wordOf(this.heading.values.name);
  }

  /** As the nearest file that gives one has it. */
  get title(): string {
    const titles = [this.heading, ...this.also.map((b) => b.read.heading)];
    return titles.map((h) => wordOf(h?.values.title)).find(Boolean) ?? this.name;
  }

  get origin(): Origin {
    return lineOrigin(this.block, this.heading);
  }

  line(key: string): LineFacts | undefined {
    return this.byKey.get(key)?.[0];
  }

  lines(key: string): readonly LineFacts[] {
    return this.byKey.get(key) ?? [];
  }

  /** The block's own line, else the nearest defaults' line of the same word. */
  orDefault(key: string): LineFacts | undefined {
    return this.line(key) ?? defaultLine(this.env, key);
  }
}

/** What was looked up in an environment: its book never changes, and every piece of work asks for the same few. */
class LookedUp {
  readonly defaults = new Map<string, LineFacts | undefined>();
  readonly named = new Map<string, BlockFacts | undefined>();
  readonly blocks = new WeakMap<SourceBlock, BlockFacts>();
}

const looked = new WeakMap<Env, LookedUp>();

function lookedUp(env: Env): LookedUp {
  let known = looked.get(env);
  if (!known) {
    known = new LookedUp();
    looked.set(env, known);
  }
  return known;
}

function once<K, V>(known: Map<K, V>, key: K, make: () => V): V {
  if (!known.has(key)) known.set(key, make());
  return known.get(key)!;
}

export function defaultLine(env: Env, key: string): LineFacts | undefined {
  return once(lookedUp(env).defaults, key, () => {
    const setting = env.book.setting('defaults', key);
    return setting && new LineFacts(setting.block, setting.line, env);
  });
}

/** A default that is a number; a gap when no library gives it. */
export function defaultTerm(env: Env, key: string, value: string, label: string): Term {
  const line = defaultLine(env, key);
  return line?.term(value, label) ?? missing(label, '', phrase`no defaults give ${key}`);
}

export function factsOf(block: SourceBlock, env: Env): BlockFacts | undefined {
  const heading = block.read.heading;
  if (!heading) return undefined;
  const { blocks } = lookedUp(env);
  const facts = blocks.get(block) ?? new BlockFacts(block, heading, env);
  blocks.set(block, facts);
  return facts;
}

/** A named thing with all that any file of the scope says of it, the nearest first. */
export function factsNamed(env: Env, kind: NamedKind, name: string): BlockFacts | undefined {
  return once(lookedUp(env).named, `${kind} ${name}`, () => {
    const [first, ...also] = env.book.findAll(kind, name);
    const heading = first?.read.heading;
    return first && heading && new BlockFacts(first, heading, env, also);
  });
}
