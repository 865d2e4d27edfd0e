/** Eine Mitteilung von Änderungen auf Deutsch. */
import type { ChangesWords } from '../changes';

export const CHANGES_DE: ChangesWords = {
  title: 'Was sich geändert hat',
  since: (date) => (date ? `Seit unserem Angebot vom ${date}` : 'Seit unserem letzten Angebot'),
  nothing: 'Weder die Arbeiten noch der Preis haben sich geändert.',
  why: 'Warum',
  work: 'Die Arbeiten',
  added: (title) => `Neu: ${title}`,
  dropped: (title) => `Entfällt: ${title}`,
  now: 'Jetzt',
  before: 'Vorher',
  same: 'Die Arbeit ist dieselbe; geändert hat sich, was sie braucht.',
  price: 'Der Preis',
  what: 'Was',
  was: 'Vorher',
  is: 'Jetzt',
  by: 'Unterschied',
  net: 'Nettopreis',
  tax: 'Steuer',
  total: 'Preis',
  options: 'Mit dem, was Sie gewählt haben',
  notComplete: 'nicht vollständig',
  notAnOffer: 'Teile des neuen Preises sind noch zu ermitteln.',
};
