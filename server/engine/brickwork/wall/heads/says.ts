/** What spans an opening and lies at its foot, in a householder’s words. */
import { later, phrase, spoken } from '../../../../../shared/phrase';
import type { LineFacts } from '../../../resolve/env';
import type { Masonry } from '../../masonry';
import { type Said, saidFrom, sizeSaid } from '../../said';
import type { WallPlan } from '../spec';
import type { Head } from './head';
import { brickIn } from './laid';

export function saysOf({ heads }: WallPlan, masonry: Masonry): Said[] {
  return heads.flatMap((head) => {
    const { facts } = head.opening;
    const line = facts.line('head') ?? facts.line('lintel');
    return [
      ...saidFrom(overSaid(head, masonry), line),
      ...saidFrom(footSaid(head, masonry), head.subsill?.line),
    ];
  });
}

const RINGS = ['', later`one ring`, later`two rings`, later`three rings`, later`four rings`];

function nameOf({ opening }: Head): string {
  const { facts } = opening;
  if (facts.title !== facts.name) return phrase`the opening “${facts.title}”`;
  return facts.name
    ? phrase`the opening for the ${facts.name.replaceAll('-', ' ')}`
    : phrase`the opening`;
}

/** `, in` another brick than the wall’s. */
function inBrick(line: LineFacts, masonry: Masonry): string {
  const brick = brickIn(line, masonry);
  return brick.name === masonry.brick.name ? '' : phrase`, in ${brick.title}`;
}

function overSaid(head: Head, masonry: Masonry): string[] {
  const { lintel, row, arch } = head;
  const { env } = masonry;
  const over = phrase`over ${nameOf(head)}`;
  const which = row || arch ? inBrick((row ?? arch)!.line, masonry) : '';
  const said: string[] = [];
  if (lintel)
    said.push(phrase`Bed a ${lintel.high > 0 ? phrase`lintel` : phrase`steel angle`} ${over}.`);
  if (row?.kind === 'soldier') said.push(phrase`Set bricks on end in a row ${over}${which}.`);
  if (row?.kind === 'brick-on-edge')
    said.push(phrase`Set bricks on edge in a row ${over}${which}.`);
  if (arch) {
    const known = RINGS[arch.rings.length];
    const rings = known ? spoken(known) : phrase`${arch.rings.length} rings`;
    const rise = arch.kind === 'segmental' ? phrase`, rising ${sizeSaid(arch.arch.rise, env)}` : '';
    const kind = arch.kind === 'segmental' ? phrase`an arch` : phrase`a half-round arch`;
    said.push(phrase`Turn ${kind} of ${rings} of brick ${over}${rise}${which}.`);
  }
  return said;
}

function footSaid(head: Head, masonry: Masonry): string[] {
  const { subsill } = head;
  if (!subsill) return [];
  return [
    phrase`Finish the foot of ${nameOf(head)} with bricks on edge${inBrick(subsill.line, masonry)}.`,
  ];
}
