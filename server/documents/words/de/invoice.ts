/** Eine Rechnung auf Deutsch. */
import type { InvoiceWords } from '../invoice';

export const INVOICE_DE: InvoiceWords = {
  title: 'Rechnung',
  draft: 'Rechnungsentwurf',
  notAnInvoice: 'NOCH KEINE RECHNUNG.',
  why: {
    errors: 'Die Auftragsdatei enthält noch Fehler, die Beträge können daher falsch sein.',
    gaps: 'Teile des Preises sind noch zu ermitteln.',
    noNumber: 'Sie hat keine Nummer.',
    noDate: 'Sie hat kein Datum.',
  },
  part: 'Teil des Preises',
  facts: {
    to: 'An',
    number: 'Rechnungsnummer',
    date: 'Datum',
    due: 'Zahlbar bis',
    site: 'Baustelle',
    ref: 'Unser Zeichen',
    taxNumber: 'Ihre Steuernummer',
  },
  sum: 'Was zu zahlen ist',
  workDone: 'Die Arbeiten',
  lineAt: (name, tax, rate) => (rate ? `${name}, mit ${tax} ${rate}` : `${name}, ohne ${tax}`),
  what: 'Wofür',
  amount: 'Betrag',
  lines: 'Zusammen',
  net: 'Netto',
  taxAt: (name, rate, base) => `${name} ${rate} auf ${base}`,
  noTax: (name, base) => `Keine ${name} auf ${base}`,
  total: 'Brutto',
  rounding: 'Gerundet auf den vereinbarten Betrag',
  due: 'Zu zahlen',
  whole: 'Preis aller Arbeiten',
  before: 'Bisher berechnet',
  left: 'Noch offen',
  soFar: 'Die gesamte Leistung',
  deducted: (title, rate, base) =>
    `${title}: ${rate} von ${base}, von Ihnen an das Finanzamt abzuführen`,
  afterDeducted: 'Danach an uns zu zahlen',
  held: 'Davon Einbehalt bis zur Freigabe',
  now: 'Jetzt zu zahlen',
  payment: 'Zahlung',
  within: (days) =>
    days === 0
      ? 'Zahlbar sofort.'
      : `Zahlbar innerhalb von ${days} ${days === 1 ? 'Tag' : 'Tagen'} ab Rechnungsdatum.`,
  account: (number) => `Auf das Konto ${number}.`,
  quoting: (number) => `Bitte geben Sie bei der Zahlung die Rechnungsnummer ${number} an.`,
  rounded: 'Die Steuer wird je Steuersatz einmal berechnet und kaufmännisch auf den Cent gerundet.',
};
