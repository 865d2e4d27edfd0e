/** What spans an opening and lies at its foot, in a householder’s words. */
import type { LineFacts } from '../../../resolve/env';
import type { Masonry } from '../../masonry';
import { sizeSaid } from '../../said';
import type { WallPlan } from '../spec';
import type { Head } from './head';
import { brickIn } from './laid';

export function saysOf({ heads }: WallPlan, masonry: Masonry): string[] {
  return heads.flatMap((head) => [...overSaid(head, masonry), ...footSaid(head, masonry)]);
}

const RINGS = ['', 'one ring', 'two rings', 'three rings', 'four rings'];

function nameOf({ opening }: Head): string {
  const { facts } = opening;
  if (facts.title !== facts.name) return `the opening “${facts.title}”`;
  return facts.name ? `the opening for the ${facts.name.replaceAll('-', ' ')}` : 'the opening';
}

/** `, in` another brick than the wall’s. */
function inBrick(line: LineFacts, masonry: Masonry): string {
  const brick = brickIn(line, masonry);
  return brick.name === masonry.brick.name ? '' : `, in ${brick.title}`;
}

function overSaid(head: Head, masonry: Masonry): string[] {
  const { lintel, row, arch } = head;
  const { env } = masonry;
  const over = `over ${nameOf(head)}`;
  const which = row || arch ? inBrick((row ?? arch)!.line, masonry) : '';
  const said: string[] = [];
  if (lintel) said.push(`Bed a ${lintel.high > 0 ? 'lintel' : 'steel angle'} ${over}.`);
  if (row?.kind === 'soldier') said.push(`Set bricks on end in a row ${over}${which}.`);
  if (row?.kind === 'brick-on-edge') said.push(`Set bricks on edge in a row ${over}${which}.`);
  if (arch) {
    const rings = RINGS[arch.rings.length] ?? `${arch.rings.length} rings`;
    const rise = arch.kind === 'segmental' ? `, rising ${sizeSaid(arch.arch.rise, env)}` : '';
    const kind = arch.kind === 'segmental' ? 'an arch' : 'a half-round arch';
    said.push(`Turn ${kind} of ${rings} of brick ${over}${rise}${which}.`);
  }
  return said;
}

function footSaid(head: Head, masonry: Masonry): string[] {
  const { subsill } = head;
  if (!subsill) return [];
  return [
    `Finish the foot of ${nameOf(head)} with bricks on edge${inBrick(subsill.line, masonry)}.`,
  ];
}
