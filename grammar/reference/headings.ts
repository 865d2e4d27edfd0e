/** Every heading with every line that may stand under it. */
import { HEADINGS, type LineKind } from '../lines';
import { article } from '../read/describe';
import { takes } from './phrases';

/** In the order of the table, which is the order that a job and then a library has them in. */
export function headings(): string {
  const list = HEADINGS.map((kind) => `[\`${kind.key}\`](#${kind.key})`).join(' · ');
  return ['## Headings', list, ...HEADINGS.map(heading)].join('\n\n');
}

function heading(kind: LineKind): string {
  const inner = (kind.body ?? []).filter((line) => line.body && !line.inColumn);
  const parts = [`### ${kind.key}`, ...about(kind), ...lines(kind)];
  for (const line of inner)
    parts.push(`#### ${line.key} in ${kind.key}`, ...about(line, kind), ...lines(line));
  return parts.join('\n\n');
}

function about(kind: LineKind, parent?: LineKind): string[] {
  const where = parent ? article(parent.key) : 'a file';
  const example = parent ? `${parent.example}\n  ${kind.example}` : kind.example;
  const often = kind.many ? ` There may be several in ${where}.` : ` Once in ${where}.`;
  const after = kind.takes.length ? ` After the word: ${takes(kind.takes)}.` : '';
  return [kind.means + often + after + later(kind), `\`\`\`perpend\n${example}\n\`\`\``];
}

function later(kind: LineKind): string {
  return kind.later ? ` **Not computed yet:** ${kind.later}. Each use says so.` : '';
}

function lines(kind: LineKind): string[] {
  const plain = (kind.body ?? []).filter((line) => !line.body || line.inColumn);
  if (!plain.length) return kind.body ? [] : ['No lines stand under it.'];
  return [plain.map((line) => item(kind, line)).join('\n')];
}

function item(parent: LineKind, line: LineKind): string {
  const taken = line.takes.length ? ` Takes ${takes(line.takes)}.` : '';
  const many = line.many ? ' May stand more than once.' : '';
  const rest = `${taken}${unless(parent, line)}${many}${later(line)}${below(line)}`.trim();
  return `- \`${line.example}\`: ${line.means}${rest && `\n  ${rest}`}`;
}

/** Lines under one that is no heading. */
function below({ body = [] }: LineKind): string {
  return body
    .map(
      (line) =>
        ` Under it, so often as wanted: \`${line.example}\` (${takes(line.takes)}). ${line.means}`,
    )
    .join('');
}

/** Some lines of the defaults are those of a wall, whose default they are themselves. */
function unless(parent: LineKind, line: LineKind): string {
  if (line.unless === undefined || parent.key === 'defaults') return '';
  return ` Left out: ${line.unless}.`;
}
