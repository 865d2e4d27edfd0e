/** What partner firms do of a job, and what they charge for it: their hours at their rates, no part of the firm’s own labour. */
import { phrase } from '../../../shared/phrase';
import type { Figure, Needs } from '../brickwork/needs';
import { gangBy } from '../labour/gang';
import type { Env } from '../resolve/env';
import type { Partner } from '../resolve/partners';
import { cents, product, sum, type Term } from '../working/term';

export interface ByPartner {
  readonly name: string;
  readonly title: string;
  /** Of its gang, all together. */
  readonly hours: Term;
  readonly labour: Term;
}

/** Under which pieces of work take a partner’s hours. */
export function partnerKey(name: string): string {
  return `partner ${name}`;
}

/** In the order in which the work names them. */
export function partnersIn(needs: readonly Needs[], env: Env): ByPartner[] {
  const found = new Map<string, { readonly partner: Partner; readonly hours: Term[] }>();
  for (const { tasks } of needs)
    for (const { by, hours } of tasks) {
      if (!by) continue;
      // By name: work that stands may have the partner of an earlier book.
      const known = found.get(by.name) ?? { partner: by, hours: [] };
      known.hours.push(hours);
      found.set(by.name, known);
    }
  return [...found.values()].map(({ partner, hours }) => priced(partner, hours, env));
}

function priced(partner: Partner, all: readonly Term[], env: Env): ByPartner {
  const { name, title } = partner;
  const { code, digits } = env.money;
  const hours = sum(phrase`${title}: hours`, 'h', all);
  const rate = gangBy(partner, env).rate;
  const labour = cents(
    phrase`${title}: labour`,
    product(phrase`labour`, code, [hours, rate]),
    digits,
  );
  return { name, title, hours, labour };
}

/** By their ids. */
export function partnerFigures(partners: readonly ByPartner[]): Figure[] {
  return partners.flatMap(({ name, hours, labour }) => [
    { key: `partner.${name}.hours`, term: hours },
    { key: `partner.${name}.labour`, term: labour },
  ]);
}
