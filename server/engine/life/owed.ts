/** What is invoiced, paid, held back and owed, all with tax in it. */
import { phrase } from '../../../shared/phrase';
import type { Figure } from '../brickwork/needs';
import { counted, difference, most, sum, type Term } from '../working/term';
import type { Job } from '../workspace/job';
import { heldPrice } from './agreed';
import { type Paying, recordOf } from './record';

export interface Owed {
  /** The price that the client holds; what the job comes to, where none was given. */
  readonly price: Term;
  readonly invoiced: Term;
  /** What came in, and what the client kept back of it as tax. */
  readonly paid: Term;
  /** Held back, and not released yet. */
  readonly held: Term;
  /** Of what is invoiced: not below nothing. */
  readonly owed: Term;
  /** Of the price: not below nothing. */
  readonly toInvoice: Term;
}

export function owedOf(job: Job): Owed {
  const { code } = job.env.money;
  const { invoiced, paid, retained, released } = recordOf(job);
  const add = (label: string, of: readonly Paying[]) =>
    sum(
      label,
      code,
      of.map((each) => each.amount),
    );
  const price = heldPrice(job);
  const asked = add(phrase`Invoiced`, invoiced);
  const came = sum(phrase`Paid`, code, [
    ...paid.map((each) => each.amount),
    ...paid.flatMap((each) => each.deducted ?? []),
  ]);
  const held = difference(
    phrase`Held back`,
    code,
    add(phrase`held back`, retained),
    add(phrase`released`, released),
  );
  const settled = sum(phrase`paid or held back`, code, [came, held]);
  return {
    price,
    invoiced: asked,
    paid: came,
    held,
    owed: rest(phrase`Owed`, asked, settled),
    toInvoice: rest(phrase`Still to invoice`, price, asked),
  };
}

function rest(label: string, all: Term, part: Term): Term {
  const none = counted(phrase`none`, 0, all.unit, { note: phrase`there is no less than none` });
  return most(label, all.unit, difference(label, all.unit, all, part), none);
}

export function owedFigures({ invoiced, paid, held, owed, toInvoice }: Owed): Figure[] {
  return [
    { key: 'invoiced', term: invoiced },
    { key: 'paid', term: paid },
    ...(held.value.isZero() ? [] : [{ key: 'held', term: held }]),
    { key: 'owed', term: owed },
    { key: 'to-invoice', term: toInvoice },
  ];
}
