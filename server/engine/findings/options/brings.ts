/** What an option brings up that is not there without it: told at the option, with where it is. */

import type { Fault } from '../../../../grammar/read/fault';
import type { Severity } from '../../../../shared/finding';
import { phrase } from '../../../../shared/phrase';
import type { Work } from '../../brickwork/work';
import type { PricedOption } from '../../life/priced';
import { VariantBlock } from '../../life/variant-block';
import type { Origin } from '../../working/term';
import type { Job } from '../../workspace/job';
import { cautions } from '../cautions';
import { checkBlock, type WorkNames } from '../checks';
import { headOrigin, type Remark } from '../remark';

/** More of one option are not told: the first are what to mend. */
const MOST = 12;

const TOLD: ReadonlySet<Severity> = new Set(['error', 'warning']);

/** Of work that comes out otherwise with the option; what only stands there with it is told where it stands. */
export function broughtBy(option: PricedOption, job: Job, names: WorkNames): Remark[] {
  const other = option.job;
  const changed = other.works.filter((w) => job.workAt(w.block) !== w && !isOnly(w, job));
  const blocks = other.file.blocks.filter((b) => b instanceof VariantBlock);
  const found = [
    ...blocks.flatMap((block) => checkBlock(block, job.env, names)),
    ...changed.flatMap((w) => w.remarks),
    ...cautions({ works: changed, env: job.env, wallOf: (block) => other.wallOf(block) }),
  ];
  const before = new Set(stood(job, changed));
  const fresh = found.filter((r) => isTold(r) && !before.has(sign(r)));
  return [...faultsOf(blocks, option), ...fresh.slice(0, MOST).map((r) => told(r, option))];
}

function isTold({ severity, code }: Remark): boolean {
  return TOLD.has(severity) || code.startsWith('caution-');
}

/** Work that is only done with an option: its block stands in the file as it is. */
function isOnly({ block }: Work, job: Job): boolean {
  return !(block instanceof VariantBlock) && job.homeOf(block) !== job;
}

/** What is told of the same work without the option. */
function stood(job: Job, changed: readonly Work[]): string[] {
  const works = changed.flatMap(({ block }) => job.workAt(asWritten(block)) ?? []);
  const own = cautions({ works, env: job.env, wallOf: (block) => job.wallOf(block) });
  return [...works.flatMap((w) => w.remarks), ...own].map(sign);
}

function asWritten(block: Work['block']) {
  return block instanceof VariantBlock ? block.of : block;
}

function sign({ code, about, message }: Remark): string {
  return [code, about, message].join('\n');
}

function told(remark: Remark, option: PricedOption): Remark {
  const { message, origin } = remark;
  const isError = remark.severity === 'error';
  const at = writtenAt(origin, option);
  return {
    code: isError ? 'option-error' : 'option-brings',
    severity: remark.severity,
    origin: at.origin,
    message: phrase`With the option ${option.name}: ${message}`,
    related: at.exact ? [] : [{ origin, message: phrase`The line it is about` }],
  };
}

/** In the line of the option that it is about, where it is about one; else at the first that changes that work; else at its heading. */
function writtenAt(
  { block, span }: Origin,
  option: PricedOption,
): { origin: Origin; exact: boolean } {
  const head = { origin: headOrigin(option.block), exact: false };
  if (!(block instanceof VariantBlock)) return head;
  const own = block.written(span.line);
  if (own.block === option.block) {
    const [start, end] = [span.start + own.shift, span.end + own.shift];
    return { origin: { block: option.block, span: { line: own.line, start, end } }, exact: true };
  }
  const first = block.from.find((f) => f.block === option.block)?.line;
  const step = option.steps.find((s) => s.syntax.span.line === first);
  return step ? { origin: { block: option.block, span: step.syntax.span }, exact: false } : head;
}

/** A changed line that cannot be read. */
function faultsOf(blocks: readonly VariantBlock[], option: PricedOption): Remark[] {
  return blocks.flatMap((block) =>
    block.read.faults
      .filter(({ span }) => block.written(span.line).block === option.block)
      .map((fault) => unread(fault, block)),
  );
}

/** Its ways out are edits of the option: the block knows where its lines are written. */
function unread(fault: Fault, block: VariantBlock): Remark {
  const ways = fault.ways.map(({ title, preferred, edits }) => ({
    title,
    preferred,
    edits: edits.map(({ span, text }) => ({ block, span, text })),
  }));
  const { severity, message } = fault;
  return { code: fault.code, severity, origin: { block, span: fault.span }, message, ways };
}
