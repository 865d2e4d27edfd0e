/** Questions of a template that no answer could be written for. */

import { clipped } from '../../../grammar/read/fault';
import { listed } from '../../../grammar/read/numbers';
import { phrase } from '../../../shared/phrase';
import { kindSaid } from '../kinds-said';
import { type Ask, type AskPlace, askable, askPlace, templateOf } from '../life/template';
import { originOf, wordOf } from '../resolve/book';
import type { SourceFile } from '../workspace/source';
import { meantBy, thereAre } from './names';
import { headOrigin, type Remark, rewrite } from './remark';

/** More of one template are not told one by one. */
const MOST_TOLD = 100;

export function askRemarks(file: SourceFile): Remark[] {
  const template = templateOf(file);
  if (!template) return [];
  const targets = askable(file.blocks);
  const known = [...targets.keys()].filter(Boolean);
  const told: Remark[] = [];
  for (const ask of template.asks) {
    const found = askPlace(ask, targets);
    if ('place' in found) continue;
    told.push(askIdle(ask, found, known, template.block));
    if (told.length === MOST_TOLD) break;
  }
  return told;
}

type Idle = Extract<AskPlace, { why: string }>;

function askIdle(
  ask: Ask,
  found: Idle,
  known: readonly string[],
  block: Remark['origin']['block'],
): Remark {
  const ofName = found.why === 'nothing' || found.why === 'several';
  const value = ofName ? ask.line.values.what! : ask.line.values.line!;
  const [heading] = found.targets.map((t) => t.heading);
  const words = (heading?.kind.body ?? []).filter((k) => !k.body && !k.open).map((k) => k.key);
  const meant =
    found.why === 'nothing'
      ? meantBy(ask.what, known)
      : found.why === 'no-line'
        ? meantBy(ask.word, words)
        : undefined;
  const hint = meant ? phrase` Did you mean “${meant}”?` : there(found, known);
  const origin = originOf(block, value);
  return {
    code: 'ask-idle',
    severity: 'error',
    origin,
    message: phrase`${whyIdle(ask, found)}${hint} It is not asked.`,
    related: found.targets
      .slice(1, 8)
      .map((t) => ({ origin: headOrigin(t.block), message: phrase`Of the same name` })),
    ways: meant
      ? [{ title: phrase`Write ${meant}`, edits: [rewrite(origin, meant)], preferred: true }]
      : [],
  };
}

function there({ why }: Idle, known: readonly string[]): string {
  if (why !== 'nothing' || !known.length) return '';
  const some = `${listed(known.slice(0, 8), 'and')}${known.length > 8 ? phrase` and others` : ''}`;
  return thereAre(known.length, some);
}

function whyIdle({ what, word }: Ask, { why, targets }: Idle): string {
  const name = clipped(what);
  const heading = targets[0]?.heading;
  const of = heading
    ? [kindSaid(heading.kind.key), wordOf(heading.values.name)].filter(Boolean).join(' ')
    : '';
  switch (why) {
    case 'nothing':
      return phrase`No wall, pier, repair, opening or cost of this file is called “${name}”.`;
    case 'several':
      return phrase`${targets.length} things of this file are called “${name}”, and which of them is asked for cannot be told. Give one of them another name.`;
    case 'with-lines':
      return phrase`“${clipped(word)}” of ${of} has lines of its own. Ask for one of those by its name.`;
    case 'several-lines':
      return phrase`${of} has several lines “${clipped(word)}”, and which of them is asked for cannot be told.`;
    default:
      return phrase`“${clipped(word)}” is no line of ${of}.`;
  }
}
