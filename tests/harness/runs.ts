/**
 * How often a property is tried. What takes longest is tried a third as often in a plain run, so that all of it stays
 * within minutes; `PERPEND_THOROUGH=1 npm run test:unit` tries it as often as it says.
 */
export function runs(thorough: number): number {
  return process.env.PERPEND_THOROUGH ? thorough : Math.ceil(thorough / 3);
}
