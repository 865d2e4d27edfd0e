/** An invoice as values, in the terms of EN 16931 (the European standard for what an electronic invoice says). */
import type { Exact } from '../../../shared/exact';
import type { From } from '../paper/model';

/** VAT categories of UNCL 5305 that a builder meets: standard, zero, exempt, reverse charge, outside the tax. */
export type TaxCategory = 'S' | 'Z' | 'E' | 'AE' | 'O';

export interface Tax {
  readonly category: TaxCategory;
  /** Percent; none outside the tax. */
  readonly rate: Exact;
}

export interface Party {
  readonly name: string;
  readonly address: readonly string[];
  readonly town: string;
  readonly postcode: string;
  /** ISO 3166-1, two letters. */
  readonly country: string;
  readonly taxNumber: string;
  readonly registration: string;
  readonly phone: string;
  readonly email: string;
}

export interface InvoiceLine {
  readonly name: string;
  readonly says: readonly string[];
  /** Of it, and of each sentence. */
  readonly from?: From;
  readonly saysFrom?: readonly (From | undefined)[];
  /** Before tax, in whole cents; less than nothing for a credit. */
  readonly net: Exact;
  readonly tax: Tax;
}

/** Taken off the whole, as a discount is. */
export interface Allowance {
  readonly reason: string;
  readonly from?: From;
  readonly amount: Exact;
  readonly tax: Tax;
}

export interface TaxGroup extends Tax {
  readonly base: Exact;
  readonly amount: Exact;
  /** Why there is none to pay, where there is none. */
  readonly reason: string;
}

export interface InvoiceTotals {
  /** BT-106 */
  readonly lines: Exact;
  /** BT-107 */
  readonly allowances: Exact;
  /** BT-109 */
  readonly net: Exact;
  /** BT-110 */
  readonly tax: Exact;
  /** BT-112 */
  readonly gross: Exact;
  /** BT-113 */
  readonly prepaid: Exact;
  /** BT-114: what makes up for a cent between what was agreed and what the tax of the parts comes to. */
  readonly rounding: Exact;
  /** BT-115 */
  readonly due: Exact;
}

export interface Invoice {
  readonly number: string;
  /** ISO 8601 days. */
  readonly issued: string;
  readonly due: string;
  readonly terms: string;
  /** The firm’s reference for the job, and the client’s for whoever pays. */
  readonly reference: string;
  readonly notes: readonly string[];
  /** ISO 4217, and how many decimals it has. */
  readonly currency: string;
  readonly digits: number;
  readonly seller: Party;
  readonly buyer: Party;
  readonly lines: readonly InvoiceLine[];
  readonly allowances: readonly Allowance[];
  readonly taxes: readonly TaxGroup[];
  readonly totals: InvoiceTotals;
  /** An IBAN or another account; nothing when the firm does not say. */
  readonly account: string;
}
