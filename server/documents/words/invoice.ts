/** What an invoice says. */
export interface InvoiceWords {
  readonly title: string;
  readonly draft: string;
  readonly notAnInvoice: string;
  readonly why: {
    readonly errors: string;
    readonly gaps: string;
    readonly noNumber: string;
    readonly noDate: string;
  };
  /** Of a part of the price that is no stage with a name. */
  readonly part: string;
  readonly facts: {
    readonly to: string;
    readonly number: string;
    readonly date: string;
    readonly due: string;
    readonly site: string;
    readonly ref: string;
    readonly taxNumber: string;
  };
  /** Over the table of what is asked for. */
  readonly sum: string;
  /** Over what was done, piece of work by piece of work. */
  readonly workDone: string;
  /** A line of one tax among several of a stage; `rate` where there is one. */
  lineAt(name: string, tax: string, rate: string | undefined): string;
  readonly what: string;
  readonly amount: string;
  readonly lines: string;
  readonly net: string;
  taxAt(name: string, rate: string, base: string): string;
  /** Where there is none to pay. */
  noTax(name: string, base: string): string;
  readonly total: string;
  readonly rounding: string;
  readonly due: string;
  /** Of the whole: what it comes to, what was invoiced before, what is left after this one. */
  readonly whole: string;
  readonly before: string;
  readonly left: string;
  readonly soFar: string;
  /** What the client keeps back as the firm’s tax, and then pays. */
  deducted(title: string, rate: string, base: string): string;
  readonly afterDeducted: string;
  readonly held: string;
  /** What is paid without that. */
  readonly now: string;
  readonly payment: string;
  within(days: number): string;
  account(number: string): string;
  quoting(number: string): string;
  /** How it is rounded. */
  readonly rounded: string;
}
