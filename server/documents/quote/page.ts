/** The quote as one page of HTML that needs nothing else: no script, no file, no address outside it. */
import { element, escaped, linesIn, picture, textIn } from '../html';
import type { Amount } from './money';
import { styleFor } from './style';
import type { Letterhead, QuoteView } from './view';
import type { QuotedWork } from './work';

/** Nothing may run, and nothing may be fetched, even if something got in. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:";

/** @param version of the tool, for the small print */
export function quotePage(view: QuoteView, version: string): string {
  const name = view.draft ? 'Draft' : 'Quote';
  return [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${POLICY}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    textIn('title', [name, view.ref, view.title].filter(Boolean).join(' · ')),
    element('style', styleFor(view.paper)),
    '</head>',
    element('body', `\n${body(view, name, version)}\n`),
    '</html>',
    '',
  ].join('\n');
}

function body(view: QuoteView, name: string, version: string): string {
  const parts = [
    view.firm ? head(view.firm) : '',
    element('main', main(view, name)),
    element('footer', escaped(`${view.rounding} Made with Perpend ${version}.`.trim())),
  ];
  return parts.filter(Boolean).join('\n');
}

function head(firm: Letterhead): string {
  const contact = [firm.phone, firm.email, firm.taxNumber].filter(Boolean);
  const parts = [
    textIn('p', firm.name, 'class="firm"'),
    linesIn('p', [firm.address.join(', '), contact.join(' · ')].filter(Boolean)),
  ];
  return element('header', parts.join('\n'));
}

function main(view: QuoteView, name: string): string {
  const parts = [
    view.draft ? warning(view.draft) : '',
    element('h1', `${escaped(name)}<span>${escaped(view.title)}</span>`),
    about(view),
    element('section', work(view), 'class="work"'),
    element('section', money(view), 'class="money"'),
    view.stages.length ? element('section', stages(view), 'class="stages"') : '',
    view.terms.length ? element('section', terms(view), 'class="terms"') : '',
  ];
  return `\n${parts.filter(Boolean).join('\n')}\n`;
}

function warning(why: string): string {
  return element(
    'p',
    `<strong>NOT A QUOTE.</strong> ${escaped(why)} No amount on this page is offered.`,
    'class="draft" role="alert"',
  );
}

/** For whom, where and when: only what the file says. */
function about(view: QuoteView): string {
  const rows: [string, readonly string[]][] = [
    ['For', view.client],
    ['Site', view.site],
    ['Reference', view.ref ? [view.ref] : []],
    ['Date', view.date ? [view.date] : []],
    ['Valid until', view.validUntil && !view.draft ? [view.validUntil] : []],
  ];
  const said = rows.filter(([, lines]) => lines.length);
  return element(
    'dl',
    said.map(([label, lines]) => `\n${textIn('dt', label)}${linesIn('dd', lines)}`).join(''),
  );
}

function work(view: QuoteView): string {
  const parts = [
    textIn('h2', 'What will be done'),
    ...view.works.map(oneWork),
    also(view),
    ...view.notes.map((note) => textIn('p', note)),
  ];
  return `\n${parts.filter(Boolean).join('\n')}\n`;
}

/** Under each other, as the work is. */
function also({ also: costs }: QuoteView): string {
  if (!costs.length) return '';
  const items = costs.map(({ title, notes }) => linesIn('li', [title, ...notes])).join('\n');
  const list = element('ul', `\n${items}\n`);
  return element('article', `\n${textIn('h3', 'Also included')}\n${list}\n`);
}

function listOf(texts: readonly string[]): string {
  const items = texts.map((text) => textIn('li', text)).join('\n');
  return items && element('ul', `\n${items}\n`);
}

function oneWork({ title, says, notes, drawing }: QuotedWork): string {
  const parts = [
    textIn('h3', title),
    listOf(says),
    ...notes.map((note) => textIn('p', note)),
    drawing ? element('figure', picture(drawing.svg, drawing.words)) : '',
  ];
  return element('article', `\n${parts.filter(Boolean).join('\n')}\n`);
}

function money(view: QuoteView): string {
  const rows = view.tax ? [view.net, view.tax] : [];
  const body = rows.map((amount) => moneyRow(amount)).join('\n');
  const foot = moneyRow(view.tax ? view.total : { ...view.total, label: 'Price' });
  return `\n${textIn('h2', 'Price')}\n${element(
    'table',
    `\n${heads('What', 'Amount')}\n${body ? element('tbody', body) : ''}\n${element('tfoot', foot)}\n`,
  )}\n`;
}

function heads(...titles: string[]): string {
  const cells = titles.map((title) => textIn('th', title, 'scope="col"')).join('');
  return element('thead', element('tr', cells));
}

function moneyRow({ label, text }: Amount): string {
  const amount = text === undefined ? 'not complete' : text;
  return element('tr', `${textIn('th', label, 'scope="row"')}${textIn('td', amount)}`);
}

function stages(view: QuoteView): string {
  const rows = view.stages.map(moneyRow).join('\n');
  const table = `\n${heads('When', 'Amount')}\n${element('tbody', rows)}\n`;
  return `\n${textIn('h2', 'Payment in stages')}\n${element('table', table)}\n`;
}

function terms(view: QuoteView): string {
  const lines = view.terms.map((term) => textIn('p', term)).join('\n');
  return `\n${textIn('h2', 'Terms')}\n${lines}\n`;
}
