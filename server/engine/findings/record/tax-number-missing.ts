/** Tax that is invoiced by a firm whose block gives no tax number. */
import { phrase } from '../../../../shared/phrase';
import { recordOf } from '../../life/record';
import { lineWithin } from '../../life/write';
import { factsOf } from '../../resolve/env';
import type { Job } from '../../workspace/job';
import type { SourceBlock } from '../../workspace/source';
import { headOrigin, type Remark, type RemarkWay, rewrite } from '../remark';

/** Once it invoices: before, there is time. At the first invoice, whoever wrote the firm’s block. */
export function taxNumberMissing(job: Job): Remark[] {
  const [first] = recordOf(job).invoiced;
  const [firm] = job.book.blocksOf('firm');
  const facts = firm && factsOf(firm, job.env);
  if (!first || !facts || facts.line('tax-number')?.word('text')) return [];
  if (!job.price.tax.value.gt(0)) return [];
  const { taxName } = job.price;
  return [
    {
      code: 'tax-number-missing',
      severity: 'information',
      origin: first.line.origin,
      message: phrase`${taxName} is charged, and the firm’s block gives no tax-number. Whoever charges ${taxName} is registered for it and names the number on each invoice; who is not charges none: tax none "why".`,
      related: [{ origin: headOrigin(firm), message: phrase`The firm` }],
      ways: chargeNone(job),
      // One that is still to be filled in says so itself.
      fills: facts.line('tax-number') ? [] : [numberIn(firm)],
    },
  ];
}

function chargeNone(job: Job): RemarkWay[] {
  const why = `The firm is not registered for ${job.price.taxName}`;
  const text = `tax none ${JSON.stringify(why)}`;
  const block = job.file.blocks.find((each) => each.kind === 'job');
  if (!block) return [];
  const own = block.read.heading?.body.find((line) => line.kind.key === 'tax');
  const edit = own ? rewrite({ block, span: own.syntax.span }, text) : lineWithin(block, text);
  return [{ title: phrase`Charge none: the firm is not registered`, edits: [edit] }];
}

/** The number itself only the firm knows. */
function numberIn(firm: SourceBlock): RemarkWay {
  // biome-ignore lint/suspicious/noTemplateCurlyInString: a place to fill in, as editors write it; left alone it stays marked
  const text = 'tax-number "${1:? number}"';
  return { title: phrase`Add the tax number to the firm`, edits: [lineWithin(firm, text)] };
}
