/** A repair of a brick “red” that says these lines. */
export const repairWith = (lines: string) =>
  `perpend 1\nuse "firm.perp"\nrepair frost\n  brick red\n${lines
    .split('\n')
    .map((line) => `  ${line.trim()}\n`)
    .join('')}`;
