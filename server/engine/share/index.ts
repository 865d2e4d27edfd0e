/**
 * A copy of a job for a partner firm, complete in one text. It is written anew from what was read, line by line, and
 * only from lines that may go out; nothing is copied and then taken out of.
 */
import { format } from '../../../grammar/print';
import type { ReadLine } from '../../../grammar/read/values';
import { agreedJob, fixedPrice, heldPrice } from '../life/agreed';
import { isIn } from '../life/in-option';
import { kept } from '../life/was';
import { moneyText } from '../life/write';
import { wordOf } from '../resolve/book';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { hiddenIn } from './hidden';
import { isHidden, KEPT, OF_CLIENT } from './kept';
import { merged, type Whole } from './merge';
import { neededOf } from './need';
import { printed, type Replaced } from './print';
import type { Hidden } from './texts';

export interface ShareWishes {
  /** `costs`: what the client pays is in it, where a price was given. `money`: no money at all. */
  readonly without: 'costs' | 'money';
  /** With who it is for and where. */
  readonly client: boolean;
  /** A line about it at its head. */
  readonly head: string;
}

export interface SharedCopy {
  readonly text: string;
  /** Lines that are not in it: their word, and of how many. `price`, `record` for whole blocks. */
  readonly left: ReadonlyMap<string, number>;
  readonly replaced: readonly Replaced[];
  /** Names of things that say who it is for: they cannot go out. */
  readonly names: readonly string[];
}

export function sharedCopy(job: Job, wishes: ShareWishes): SharedCopy {
  const { own, used } = blocksOf(job);
  const all = [...job.file.blocks, ...used];
  const copy = new Copy(
    hiddenIn(
      job,
      all.filter(({ file }) => !file.shipped),
      wishes.client,
    ),
    wishes.client,
  );
  const going = neededOf(own.filter(goes), used.filter(goes));
  for (const block of job.file.blocks)
    if (!own.includes(block as never) || !goes(block)) copy.leave(block.kind);
  const blocks = merged(going).flatMap((whole) => copy.block(whole));
  const price = wishes.without === 'costs' ? priceOf(job) : [];
  const parts = [`# ${wishes.head}`, ...blocks, usesOf(job), ...price];
  const text = format(['perpend 1', ...parts].filter(Boolean).join('\n\n'));
  return { text, left: copy.left, replaced: copy.replaced, names: copy.names };
}

/** The job as it was agreed: options that were not taken are not in it. */
function blocksOf(job: Job) {
  const { file, taken, scope } = agreedJob(job);
  const own = file.blocks.filter((block) => isIn(block, taken));
  return { own, used: scope.files.slice(1).flatMap((each) => each.blocks) };
}

function goes({ kind }: SourceBlock): boolean {
  return kind !== undefined && KEPT.has(kind);
}

/** What the client was told to pay, and nothing where no price was given yet. */
function priceOf(job: Job): string[] {
  if (!fixedPrice(job)) return [];
  const price = heldPrice(job);
  return [`price\n  agreed ${moneyText(kept(price, job.env), job.env)} with tax`];
}

/** Libraries that ship, in the order they are asked. */
export function usesOf(job: Job): string {
  const files = job.scope.files.filter((file) => !file.shipped);
  const names = files.flatMap((file) =>
    file.blocks.map((b) => (b.kind === 'use' ? wordOf(b.read.heading?.values.library) : '')),
  );
  const known = [...new Set(names)].filter((name) => job.libraries.includes(name));
  return known.map((name) => `use ${name}`).join('\n');
}

class Copy {
  readonly left = new Map<string, number>();
  readonly replaced: Replaced[] = [];
  readonly names: string[] = [];

  constructor(
    private readonly hidden: Hidden,
    private readonly client: boolean,
  ) {}

  leave(word: string | undefined): void {
    if (!word || ['perpend', 'use', 'template'].includes(word)) return;
    this.left.set(word, (this.left.get(word) ?? 0) + 1);
  }

  block({ block, heading, body }: Whole): string[] {
    const head = this.line(block, heading, '');
    if (head === undefined) return [];
    const lines = body.flatMap((each) => this.lines(each.block, each.line, heading.kind.key, '  '));
    // Of defaults that only say what goes on top of cost nothing is left.
    const idle =
      body.length && !lines.length && block.name === undefined && block.kind === 'defaults';
    return idle ? [] : [[head, ...lines].join('\n')];
  }

  private lines(block: SourceBlock, line: ReadLine, kind: string, indent: string): string[] {
    const word = line.kind.key;
    const ofClient = kind === 'job' && !this.client && OF_CLIENT.has(word);
    const said = isHidden(kind, word) || ofClient ? undefined : this.line(block, line, indent);
    if (said === undefined) {
      this.leave(`${kind} ${word}`);
      return [];
    }
    return [said, ...line.body.flatMap((l) => this.lines(block, l, kind, `${indent}  `))];
  }

  /** Nothing for what cannot be read, or says what it costs. */
  private line(block: SourceBlock, line: ReadLine, indent: string): string | undefined {
    const at = line.syntax.span.line;
    if (block.read.faults.some((f) => f.severity === 'error' && f.span.line === at))
      return undefined;
    const said = printed(block, line, this.hidden, this.replaced);
    this.look(line);
    return said === undefined ? undefined : indent + said;
  }

  /** A name in the notation cannot be replaced by dots. */
  private look({ syntax }: ReadLine): void {
    for (const item of syntax.items) {
      if (item.kind !== 'word') continue;
      const words = item.text.toLowerCase().split('-');
      const says = this.hidden.names.some((name) => words.includes(name.toLowerCase()));
      if (says && !this.names.includes(item.text)) this.names.push(item.text);
    }
  }
}
