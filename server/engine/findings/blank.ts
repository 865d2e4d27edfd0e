/** A text that papers show and that is still to be filled in. */
import { phrase } from '../../../shared/phrase';
import { type Blank, blanksIn } from '../resolve/blanks';
import { originOf } from '../resolve/book';
import type { SourceBlock } from '../workspace/source';
import { type Remark, type RemarkWay, takenOut } from './remark';

/** What stands in a firm’s file goes out with every job; a client may be named when the quote is written. */
export function blanks(block: SourceBlock): Remark[] {
  const severity = block.kind === 'job' ? 'information' : 'warning';
  return blanksIn(block).map((blank) => ({
    code: 'blank',
    severity,
    origin: originOf(block, blank.value),
    message: messageOf(blank),
    // A heading cannot go, and the rest of its block stand.
    ways: blank.line === block.read.heading ? [] : [takenOut(blank)],
    fills: [fillIn(blank)],
  }));
}

function messageOf({ block, line, value: { wanted } }: Blank): string {
  const what = wanted ? phrase`${line.kind.key} (${wanted})` : line.kind.key;
  return line === block.read.heading
    ? phrase`Still to be filled in: ${what}. Papers stand without a name until it is written here, in quotation marks.`
    : phrase`Still to be filled in: ${what}. Papers leave it out until it is written here, in quotation marks; where there is none, take the line out.`;
}

/** What is left as it is stays marked, so that no paper takes it for an answer. */
function fillIn({ block, value: { span } }: Blank): RemarkWay {
  const written = block.lines[span.line]!.slice(span.start, span.end);
  const mark = written
    .replace(/^\p{Quotation_Mark}|\p{Quotation_Mark}$/gu, '')
    .replace(/[\\$}]/g, '\\$&');
  return {
    title: phrase`Fill it in`,
    edits: [{ block, span, text: `"\${1:${mark}}"` }],
  };
}
