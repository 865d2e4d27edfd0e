/** Figures of the price that come in a list: discounts, rows of tax, stages, deductions; each under its number. */
import { phrase } from '../../../shared/phrase';
import type { Figure } from '../brickwork/needs';
import { partnerFigures } from '../price/partners';
import type { Stage } from '../price/stages';
import type { TaxGroup } from '../price/tax/taxes';
import type { JobPrice } from '../price/total';
import type { Term } from '../working/term';

export function priceFigures({
  partners,
  discounts,
  taxes,
  stages,
  deductions,
}: JobPrice): Figure[] {
  return [
    ...partnerFigures(partners),
    ...discounts.map((d, i) => figure(`discount.${i + 1}`, d.amount, d.title)),
    ...taxes.flatMap((tax, i) => taxFigures(tax, `tax.${i + 1}`, taxes.length > 1)),
    ...stages.flatMap((stage, i) => stageFigures(stage, `stage.${i + 1}`)),
    ...deductions.map((d, i) => figure(`deducted.${i + 1}`, d.amount, d.title)),
  ];
}

function figure(key: string, term: Term, label: string): Figure {
  return { key, term: { ...term, label } };
}

/** One rate on all of the price is told as the job’s tax already. */
function taxFigures({ said, base, tax, owed }: TaxGroup, key: string, several: boolean): Figure[] {
  return [
    ...(several
      ? [figure(`${key}.base`, base, phrase`Price with ${said}`), figure(key, tax, sentence(said))]
      : []),
    ...(owed ? [{ key: `${key}.owed`, term: owed.tax }] : []),
  ];
}

function stageFigures({ title, amount, held, due }: Stage, key: string): Figure[] {
  return [
    figure(key, amount, title),
    ...(held
      ? [{ key: `${key}.held`, term: held }, figure(`${key}.due`, due, phrase`${title}, to pay`)]
      : []),
  ];
}

function sentence(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
