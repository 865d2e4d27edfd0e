/** Texts in the words of each country, and the cautions that the engine tells of them. */
import { expect } from 'vitest';
import type { Finding } from '../../../shared/finding';
import { expectFindings } from '../../harness/marks';
import { FIRM, findingsIn, isCaution } from '../tells';

export type Country = 'uk' | 'us' | 'de';

const FIRMS: Readonly<Record<Country, string>> = {
  uk: FIRM,
  us: `perpend 1
use us
material portland-cement
  pack  94 lb bag at $15
material hydrated-lime
  pack  50 lb bag at $14
`,
  de: `perpend 1
use de
material zement
  pack  25 kg Sack at 6 €
material kalkhydrat
  pack  20 kg Sack at 8 €
`,
};

/** The cautions of a text that begins with the country’s firm. */
export function cautionsOf(country: Country, text: string): readonly Finding[] {
  const files = { 'firm.perp': FIRMS[country] };
  return findingsIn(`perpend 1\nuse "firm.perp"\n${text}`, files).filter(isCaution);
}

export function codesOf(country: Country, text: string): string[] {
  return cautionsOf(country, text).map((f) => f.code.slice('caution-'.length));
}

/** Asserts that of one caution exactly what is marked is told, of a text with no error in it; one without a mark has none. */
export function tellsOf(country: Country, name: string, marked: string): readonly Finding[] {
  const { found } = expectFindings(marked, (text) => {
    const all = findingsIn(text, { 'firm.perp': FIRMS[country] });
    expect(all.filter((f) => f.severity === 'error')).toEqual([]);
    return all.filter((f) => f.code === `caution-${name}`);
  });
  for (const each of found) expect(each.severity).toBe('information');
  return found;
}
