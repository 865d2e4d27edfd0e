/** A paper as one page of HTML that needs nothing else: no script, no file, no address outside it. */
import { escaped } from '../../../../shared/escaped';
import { element, linesIn, picture, textIn } from '../../html';
import { sheetToSvg } from '../../svg';
import { wordsFor } from '../../words';
import { base64 } from '../base64';
import type { Letterhead, Paper } from '../model';
import { pictureSize } from '../picture';
import { type Marked, partsIn } from './parts';
import { styleFor } from './style';

/** Nothing may run, and nothing may be fetched, even if something got in. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:";

/** One file that fetches nothing: drawings and logo are in it. */
export function htmlOf(paper: Paper): string {
  return [
    '<!doctype html>',
    `<html lang="${escaped(paper.lang)}">`,
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${POLICY}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    textIn('title', paper.title),
    element('style', styleFor(paper, wordsFor(paper.lang))),
    '</head>',
    element('body', `\n${body(paper)}\n`),
    '</html>',
    '',
  ].join('\n');
}

/** What stands in the body of that page, for another page to show. */
export function bodyOf(paper: Paper): string {
  return body(paper);
}

type Drawn = Parameters<typeof partsIn>[1];

/**
 * What stands on a paper, for a page that is there already and shows it: drawings are whatever `show` makes of them, and
 * where things come from is told.
 */
export function shownIn(paper: Paper, show: Drawn, marked: Marked): string {
  return body(paper, show, marked);
}

function body(paper: Paper, show: Drawn = drawn, marked?: Marked): string {
  const parts = [
    paper.letterhead ? head(paper.letterhead, marked) : '',
    element('main', `\n${partsIn(paper.parts, show, marked)}\n`),
    paper.foot ? textIn('footer', paper.foot) : '',
  ];
  return parts.filter(Boolean).join('\n');
}

function drawn(sheet: Parameters<typeof sheetToSvg>[0], words: string): string {
  return element('figure', picture(sheetToSvg(sheet), words));
}

/** The name first, as it is read, and the sign at its right. */
function head(firm: Letterhead, marked: Marked = () => ''): string {
  const { name, address, contact, from } = firm;
  const parts = [
    name &&
      textIn('p', name, ['class="firm"', marked(from?.name, 'facts')].filter(Boolean).join(' ')),
    linesIn(
      'p',
      [address.join(', '), contact.join(' · ')].filter(Boolean),
      marked(from?.under, 'facts'),
    ),
  ];
  const words = element('div', parts.filter(Boolean).join('\n'));
  return element('header', [words, logo(firm)].filter(Boolean).join('\n'));
}

function logo({ logo: sign }: Letterhead): string {
  if (!sign || typeof pictureSize(sign.bytes) === 'string') return '';
  const source = `data:image/${sign.type};base64,${base64(sign.bytes)}`;
  return `<img src="${source}" alt="${escaped(sign.words)}">`;
}
