/** `Steuer, Abschläge und Nachlässe`. */
export function listed(names: readonly string[]): string {
  return names.length > 1
    ? `${names.slice(0, -1).join(', ')} und ${names.at(-1)}`
    : (names[0] ?? '');
}

/** `1 Auftrag`, `3 Aufträge`. */
export function counted(n: number, one: string, many: string): string {
  return `${n} ${n === 1 ? one : many}`;
}

const TENTHS = ['', 'einem', 'zwei', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun'];

/** „acht von zehn“, wie man Aufträge zählt. */
export function ofHundred(percent: number): string {
  if (percent >= 100) return 'allen';
  return percent % 10 ? `${percent} von hundert` : `${TENTHS[percent / 10]} von zehn`;
}
