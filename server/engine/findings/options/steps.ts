/** Lines of an option that change nothing: what they name is not there, or has no such line. */

import { clipped } from '../../../../grammar/read/fault';
import { listed } from '../../../../grammar/read/numbers';
import { later, phrase, spoken } from '../../../../shared/phrase';
import { kindSaid } from '../../kinds-said';
import type { Derived } from '../../life/derive';
import type { Option } from '../../life/option';
import { wordIn } from '../../life/step';
import { originOf, wordOf } from '../../resolve/book';
import { meantBy, thereAre } from '../names';
import { headOrigin, type Remark, rewrite } from '../remark';

type Trouble = Derived['troubles'][number];

const LEFT_OUT = later`Until then the price with this option is not complete.`;

/** `known`: all that an option could name. */
export function stepIdle(trouble: Trouble, known: readonly string[]): Remark {
  const { why } = trouble;
  if (why === 'nothing') return namesNothing(trouble, known);
  return why === 'several' ? namesSeveral(trouble) : lineUnfit(trouble);
}

function namesNothing({ option, step }: Trouble, known: readonly string[]): Remark {
  const value = step.values.what!;
  const name = wordOf(value);
  const meant = meantBy(name, known);
  const there = known.length ? thereAre(known.length, some(known)) : '';
  const hint = meant ? phrase` Did you mean “${meant}”?` : there;
  const origin = originOf(option.block, value);
  const title = phrase`Write ${meant}`;
  return {
    code: 'change-unknown',
    severity: 'error',
    origin,
    message: phrase`No wall, pier, repair, opening or cost of this file is called “${clipped(name)}”.${hint} ${spoken(LEFT_OUT)}`,
    ways: meant ? [{ title, edits: [rewrite(origin, meant)], preferred: true }] : [],
  };
}

function namesSeveral({ option, step, targets }: Trouble): Remark {
  const value = step.values.what!;
  const name = wordOf(value);
  const kinds = targets.map(({ heading }) => kindSaid(heading.kind.key));
  return {
    code: 'change-unknown',
    severity: 'error',
    origin: originOf(option.block, value),
    message: phrase`${targets.length} things are called “${clipped(name)}” (${some(kinds)}), and which of them is meant cannot be told. Give one of them another name. ${spoken(LEFT_OUT)}`,
    related: targets.slice(0, MOST).map(({ block, heading }) => ({
      origin: { block, span: heading.syntax.span },
      message: phrase`The ${kindSaid(heading.kind.key)} ${name}`,
    })),
  };
}

const MOST = 8;

function some(names: readonly string[]): string {
  const more = names.length > MOST ? phrase` and others` : '';
  return `${listed(names.slice(0, MOST), 'and')}${more}`;
}

function lineUnfit(trouble: Trouble): Remark {
  const { option, step, targets } = trouble;
  const value = step.values.line!;
  const span = value.kind === 'rest' ? value.items[0]!.span : value.span;
  const origin = { block: option.block, span };
  const known = (targets[0]!.heading.kind.body ?? []).filter((k) => !k.body && k.key !== 'option');
  const meant =
    trouble.why === 'no-line'
      ? meantBy(
          wordIn(step),
          known.map((k) => k.key),
        )
      : undefined;
  return {
    code: 'change-unfit',
    severity: 'error',
    origin,
    message: `${whyUnfit(trouble)}${meant ? phrase` Did you mean “${meant}”?` : ''} ${spoken(LEFT_OUT)}`,
    ways: meant
      ? [{ title: phrase`Write ${meant}`, edits: [rewrite(origin, meant)], preferred: true }]
      : [],
  };
}

function whyUnfit({ step, targets, why }: Trouble): string {
  const word = clipped(wordIn(step));
  const { heading } = targets[0]!;
  const of = [kindSaid(heading.kind.key), wordOf(heading.values.name)].join(' ');
  switch (why) {
    case 'with-lines':
      return phrase`“${word}” of ${of} has lines of its own. Change one of those by its name.`;
    case 'several-lines':
      return phrase`${of} has several lines “${word}”, and which of them is changed cannot be told. Leave them out with “leave-out ${wordOf(step.values.what)} ${wordIn(step)}”, or write the work as it would be in a block of its own with a line “option”.`;
    case 'not-there':
      return phrase`${of} has no line “${word}” that could be left out.`;
    default:
      return phrase`“${word}” is no line of ${heading.kind.key}.`;
  }
}

/** An option without a line, and that no block names. */
export function optionIdle({ block, name }: Option): Remark {
  return {
    code: 'option-idle',
    severity: 'warning',
    origin: headOrigin(block),
    message: phrase`The option ${name} changes nothing: it has no line “change” or “leave-out”, and no wall, pier, repair or cost has a line “option ${name}”.`,
  };
}
