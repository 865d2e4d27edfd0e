/** What perpend new prints with --json. Its shape is promised in shared/json-schema. */
import { answerNow, askable, asksOf, templateOf } from '../../engine/life/template';
import { TEMPLATES } from '../../engine/templates';
import { SourceFile } from '../../engine/workspace/source';
import type { Made } from '../show/new';
import { madeDocument } from './made';
import { amountJson } from './measure';

export function newDocument({ template, out, firm, answers, job }: Made): string {
  return madeDocument('new', {
    template,
    out,
    firm,
    answers: answers.map(({ ask: { what, word, question }, value, from }) => {
      return { what, line: word, question, value, from };
    }),
    price: amountJson(job.price.total, job),
    complete: job.price.total.gaps.length === 0,
  });
}

export function templatesDocument(): string {
  return madeDocument('templates', {
    templates: [...TEMPLATES].map(([name, text]) => {
      const file = new SourceFile('', text);
      const targets = askable(file.blocks);
      const asks = asksOf(text).map((ask) => {
        const { what, word, question } = ask;
        return { what, line: word, question, value: answerNow(ask, targets) };
      });
      return { name, title: templateOf(file)!.title, asks };
    }),
  });
}
