/** What spans an opening and lies at its foot, in a householder’s words. */
import type { Masonry } from '../../masonry';
import { sizeSaid } from '../../said';
import type { WallPlan } from '../spec';
import type { Head } from './head';

export function saysOf({ heads }: WallPlan, masonry: Masonry): string[] {
  return heads.flatMap((head) => [...overSaid(head, masonry), ...footSaid(head)]);
}

const RINGS = ['', 'one ring', 'two rings', 'three rings', 'four rings'];

function nameOf({ opening }: Head): string {
  const { facts } = opening;
  if (facts.title !== facts.name) return `the opening “${facts.title}”`;
  return facts.name ? `the opening for the ${facts.name.replaceAll('-', ' ')}` : 'the opening';
}

function overSaid(head: Head, { env }: Masonry): string[] {
  const { lintel, row, arch } = head;
  const over = `over ${nameOf(head)}`;
  const said: string[] = [];
  if (lintel) said.push(`Bed a ${lintel.high > 0 ? 'lintel' : 'steel angle'} ${over}.`);
  if (row?.kind === 'soldier') said.push(`Set bricks on end in a row ${over}.`);
  if (row?.kind === 'brick-on-edge') said.push(`Set bricks on edge in a row ${over}.`);
  if (arch) {
    const rings = RINGS[arch.rings.length] ?? `${arch.rings.length} rings`;
    const rise = arch.kind === 'segmental' ? `, rising ${sizeSaid(arch.arch.rise, env)}` : '';
    const kind = arch.kind === 'segmental' ? 'an arch' : 'a half-round arch';
    said.push(`Turn ${kind} of ${rings} of brick ${over}${rise}.`);
  }
  return said;
}

function footSaid(head: Head): string[] {
  return head.subsill ? [`Finish the foot of ${nameOf(head)} with bricks on edge.`] : [];
}
