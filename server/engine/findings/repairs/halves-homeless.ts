/** Halves kept that have no place where no face shows. */
import { phrase } from '../../../../shared/phrase';
import type { Salvage } from '../../brickwork/repair/salvage';
import type { BlockFacts, LineFacts } from '../../resolve/env';
import { type Remark, type RemarkWay, rewrite, takenOut } from '../remark';

export function halvesHomeless(
  facts: BlockFacts,
  { halves, places, where }: Salvage,
): Remark | undefined {
  const line = facts.line('halves');
  if (!line || !halves || !places || halves.gaps.length || places.gaps.length) return undefined;
  const room = Math.floor(places.value.toNumber() + 1e-9);
  const kept = halves.value.toNumber();
  if (kept <= room) return undefined;
  return {
    code: 'halves-homeless',
    severity: 'information',
    origin: line.origin,
    message: phrase`${why(room, where)} ${kept - room} of ${kept} halves are left over, and go with the waste.`,
    ways: [wayOut(line, room)],
  };
}

function why(room: number, where: string): string {
  if (!room)
    return phrase`Every brick of what is built again shows, so that halves have no place in it.`;
  return phrase`There are ${room} places for halves ${where}.`;
}

function wayOut(line: LineFacts, room: number): RemarkWay {
  if (room) {
    const key = line.values.count ? 'count' : 'share';
    return { title: phrase`Keep ${room} halves`, edits: [rewrite(line.at(key), String(room))] };
  }
  return takenOut(line);
}
