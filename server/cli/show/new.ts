/** A job that was made from a template, and the templates there are. */
import { phrase } from '../../../shared/phrase';
import { asksOf, templateOf } from '../../engine/life/template';
import { TEMPLATES } from '../../engine/templates';
import { showTerm } from '../../engine/views/show';
import type { Job } from '../../engine/workspace/job';
import { SourceFile } from '../../engine/workspace/source';
import { type Io, paint } from '../io';
import type { Answer } from '../new/answers';
import { hanging } from './changes';
import { table } from './table';

export interface Made {
  readonly template: string;
  readonly out: string;
  /** The firm’s file, as the new one reaches it. */
  readonly firm?: string;
  readonly answers: readonly Answer[];
  readonly job: Job;
}

export function newReport({ template, out, firm, answers, job }: Made, io: Io): string {
  const said = answers.filter(({ from }) => from !== 'template');
  const kept = answers.filter(({ from }) => from === 'template');
  const uses = firm === undefined ? [] : [phrase`It uses ${firm}.`];
  const { total } = job.price;
  const sections = [
    [paint(io, 'bold', `${template} → ${out}`), ...uses],
    titled(phrase`Said`, said, io),
    titled(phrase`As the template has it`, kept, io),
    [
      phrase`Price: ${total.gaps.length && total.value.isZero() ? '?' : showTerm(total, job.env)}`,
      ...(total.gaps.length
        ? [phrase`It is incomplete: perpend check ${out} tells what it lacks.`]
        : []),
    ],
  ];
  const text = sections.filter((lines) => lines.length).map((lines) => lines.join('\n'));
  return `${text.join('\n\n')}\n`;
}

function titled(title: string, answers: readonly Answer[], io: Io): string[] {
  const rows = answers.map(({ ask, value }) => [`${ask.what} ${ask.word}`, value ?? '–']);
  return rows.length ? [paint(io, 'bold', title), ...table(rows, ['left', 'left'])] : [];
}

export function templatesReport(io: Io): string {
  const one = ([name, text]: [string, string]) => {
    const { title } = templateOf(new SourceFile('', text))!;
    const asks = asksOf(text).map((a) => `${a.what} ${a.word}: ${a.question}`);
    return [`${paint(io, 'bold', name)}  ${title}`, ...asks.flatMap((ask) => hanging('·', ask, 2))];
  };
  return `${[...TEMPLATES].map((each) => one(each).join('\n')).join('\n\n')}\n`;
}
