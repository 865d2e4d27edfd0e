/** Findings of files, short, for a reader that is a program. */
import type { Finding } from '../../../shared/finding';
import { phrase } from '../../../shared/phrase';
import type { Told } from '../../../shared/protocol/tools';
import { plain } from '../../engine/ide/markdown';
import type { Job } from '../../engine/workspace/job';
import { usedWithErrors } from '../used';

export interface CheckedFile {
  readonly file: string;
  readonly isJob: boolean;
  readonly findings: readonly Checked[];
  /** Files that it uses with lines that cannot be read. */
  readonly used: readonly { readonly file: string; readonly errors: number }[];
}

interface Checked {
  readonly severity: Finding['severity'];
  readonly code: string;
  /** From 1, and so is the column, in UTF-16 units. */
  readonly line: number;
  readonly column: number;
  readonly message: string;
  /** Titles of ways out of it. */
  readonly ways: readonly string[];
}

/** More are counted, and not told one by one. */
const MOST_TOLD = 200;

const WEIGHT: Readonly<Record<Finding['severity'], number>> = {
  error: 0,
  warning: 1,
  information: 2,
  hint: 3,
};

/** The gravest first. @param file as its reader knows it */
export function checkedFile(job: Job, file: string): CheckedFile {
  const findings = job.findings
    .map(({ severity, code, place, message, ways }): Checked => {
      const [line, column] = [place.line + 1, place.start + 1];
      return { severity, code, line, column, message, ways: ways.map((w) => w.title) };
    })
    .sort((a, b) => WEIGHT[a.severity] - WEIGHT[b.severity] || a.line - b.line);
  const used = usedWithErrors(job).map((each) => ({
    file: each.file.split(/[\\/]/).at(-1)!,
    errors: each.errors,
  }));
  return { file, isJob: job.isJob, findings, used };
}

export function checkTold(files: readonly CheckedFile[]): Told {
  const all = files.flatMap(({ findings }) => findings);
  const counts = countsOf(all);
  let left = MOST_TOLD;
  const some = files.map((file) => {
    const findings = file.findings.slice(0, left);
    left -= findings.length;
    return { ...file, findings };
  });
  const json = JSON.stringify({ files: some, counts, told: Math.min(all.length, MOST_TOLD) });
  return { json, markdown: markdownOf(some, counts, all.length) };
}

function countsOf(findings: readonly Checked[]) {
  const of = (severity: Finding['severity']) =>
    findings.filter((each) => each.severity === severity).length;
  return {
    error: of('error'),
    warning: of('warning'),
    information: of('information'),
    hint: of('hint'),
  };
}

function markdownOf(
  files: readonly CheckedFile[],
  { error, warning, information, hint }: ReturnType<typeof countsOf>,
  all: number,
): string {
  const head = phrase`Errors: ${error}; warnings: ${warning}; notes: ${information}; hints: ${hint}; files: ${files.length}.`;
  const lines = files.flatMap(({ file, findings, used }) => [
    ...findings.map(({ line, column, severity, code, message }) => {
      return `- ${flat(file)}:${line}:${column} ${severity} \`${code}\`: ${flat(message)}`;
    }),
    ...used.map((each) => {
      return `- ${flat(file)}: ${flat(phrase`${each.file} has ${each.errors} errors.`)}`;
    }),
  ]);
  const more = all > MOST_TOLD ? [phrase`And ${all - MOST_TOLD} more.`] : [];
  return `${[head, ...(lines.length ? [lines.join('\n')] : []), ...more].join('\n\n')}\n`;
}

/**
 * A message holds words of a file that anybody may have written, and so does a file’s name: it stays on its line, and is
 * no link, picture or element where it is shown as a page.
 */
function flat(text: string): string {
  return plain(text.replace(/\s+/g, ' '));
}
