/** What laps a sill or a head is to have, where stretches of unlike ends lie on one another, mm. */
import { STILL_LAP } from './choose';
import { brokenLap, type Craft } from './craft';
import { BRICK } from './grid';

/** Of a brick: by so much laps come short where joints of long courses and of short ones differ a little. */
const SLACK = 1 / 48;

/** A whole lap: a quarter brick, or what the bond asks for if that is less. */
export function wholeLapOf(craft: Craft): number {
  return (brokenLap(craft) / BRICK - SLACK) * craft.grid.module;
}

/** What rules still call a lap: below it stretches are laid again. */
export function stillLapOf(craft: Craft): number {
  const still = (BRICK / 4 - STILL_LAP) / BRICK;
  return Math.min(wholeLapOf(craft), still * craft.grid.module);
}

/** Below it one perpend all but stands over another: an eighth of a brick, common practice. */
export function leastLapOf(craft: Craft): number {
  return Math.min(wholeLapOf(craft), craft.grid.module / 8);
}
