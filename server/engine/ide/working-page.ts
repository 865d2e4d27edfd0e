/**
 * A whole working as a page: a section for each sum, what it is made of under it, and the sums among those in
 * sections of their own. Deep lists would run out of the page.
 */
import { phrase } from '../../../shared/phrase';
import type { WorkingView } from '../../../shared/views';
import { plain, saidAt } from './markdown';
import { type Linker, PLAIN } from './types';

/** More than any working has; a guard against a page that no one can open. */
const MOST_SECTIONS = 400;

export function workingPage(view: WorkingView, link: Linker = PLAIN): string {
  const sections: string[] = [];
  const seen = new Set<string>();
  const open = (each: WorkingView) => {
    const inner = through(each);
    if (!inner.parts.length || seen.has(keyOf(inner)) || sections.length >= MOST_SECTIONS) return;
    seen.add(keyOf(inner));
    sections.push(section(inner, sections.length > 0, link));
    for (const part of inner.parts) open(part);
  };
  open(view);
  return sections.length ? sections.join('\n\n') : `- ${line(view, link)}`;
}

/** A step that only passes its one part on, as rounding does that changes nothing, is passed over. */
function through(view: WorkingView): WorkingView {
  const [only, more] = view.parts;
  const passes = only?.result === view.result && only.parts.length > 0 && !more;
  return passes ? through({ ...only, label: view.label }) : view;
}

/** The same sum may be part of several: one section is enough. */
function keyOf({ label, result, sum, parts }: WorkingView): string {
  return JSON.stringify([label, result, sum, parts.map((p) => [p.label, p.result])]);
}

/** The first has the page’s own title over it. */
function section(view: WorkingView, titled: boolean, link: Linker): string {
  const title = titled ? `### ${plain(view.label)}: ${plain(view.result)}` : '';
  const sum = view.sum && view.sum !== view.result ? `= ${plain(view.sum)}` : '';
  const note = view.note ? `*${plain(view.note)}*` : '';
  const parts = view.parts.map((part) => `${indent(part)}- ${line(part, link)}`).join('\n');
  return [title, [sum, note].filter(Boolean).join(' '), parts].filter(Boolean).join('\n\n');
}

function indent({ result, label }: WorkingView): string {
  return result ? '' : (/^ */.exec(label)?.[0] ?? '');
}

/** A fact with where it was said; a sum with its value only, since it has a section. */
function line(view: WorkingView, link: Linker): string {
  if (!view.result) return plain(view.label.trim());
  const from = view.line ? ` — ${saidAt(view, link)}` : '';
  const note = view.note && !view.parts.length ? ` *(${plain(view.note)})*` : '';
  const missing = view.missing?.length ? phrase` — incomplete` : '';
  return `${plain(view.label)}: **${plain(view.result)}**${note}${from}${missing}`;
}
