/** Die Seite der Aufzeichnungen auf Deutsch. */
import type { RecordWords } from '../record';

const joined = (...texts: readonly string[]) => texts.filter(Boolean).join(', ');

export const RECORD_DE: RecordWords = {
  title: 'Aufzeichnungen',
  nothing: 'Noch ist nichts festgehalten.',
  heads: ['Tag', 'Was geschah', 'Näheres', 'Betrag'],
  kinds: {
    sent: 'Angebot abgeschickt',
    accepted: 'Angenommen',
    lost: 'Nicht bekommen',
    found: 'Vorgefunden',
    worked: 'Gearbeitet',
    spent: 'Ausgegeben',
    invoiced: 'Berechnet',
    paid: 'Bezahlt',
    retained: 'Einbehalten',
    released: 'Freigegeben',
  },
  options: (names) => (names.length ? `Mit ${names.join(', ')}` : ''),
  workedBy: (people, hours, task, done) =>
    joined(people === '1' ? '1 Person' : `${people} Personen`, hours, task, done),
  spentFor: (what, part) => joined(what, part),
  invoiceOf: (number, what) => joined(number && `Rechnung ${number}`, what),
  deducted: (amount) => `und ${amount} als Steuer abgezogen`,
  heldUntil: (day) => (day ? `bis ${day}` : ''),
  moved: 'Was sich seitdem bewegt hat',
  since: (how, day, price) =>
    how === 'sent'
      ? `Seit am ${day} ${price} angeboten wurden.`
      : `Seit am ${day} ${price} angenommen wurden.`,
  was: 'Damals',
  is: 'Jetzt',
  what: 'Was',
};
