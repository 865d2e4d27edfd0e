/** The templates that ship, as the bundler puts them in: nothing is read at run time. */
import frostDamage from '../library/templates/frost-damage.perp';
import gardenWall from '../library/templates/garden-wall.perp';
import gatePiers from '../library/templates/gate-piers.perp';
import knockedPier from '../library/templates/knocked-pier.perp';
import repointWall from '../library/templates/repoint-wall.perp';

/** By the names that `perpend new` takes. */
export const TEMPLATES: ReadonlyMap<string, string> = new Map([
  ['garden-wall', gardenWall],
  ['gate-piers', gatePiers],
  ['repoint-wall', repointWall],
  ['frost-damage', frostDamage],
  ['knocked-pier', knockedPier],
]);
