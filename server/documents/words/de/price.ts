/** Die Seite des Preises auf Deutsch. */
import type { PriceWords, StepSaid } from '../price';
import { ofHundred } from './listed';

const rated =
  (name: string) =>
  ({ rate }: StepSaid) =>
    rate ? `${name} ${rate}` : name;

const always = (text: string) => () => text;

export const PRICE_DE: PriceWords = {
  title: 'Wie der Preis entsteht',
  taken: (names) => `Mit den gewählten Möglichkeiten: ${names.join(', ')}.`,
  incomplete: 'NICHT VOLLSTÄNDIG.',
  what: 'Was',
  amount: 'Menge',
  cost: 'Kosten',
  price: 'Teil des Preises',
  works: 'Jede Arbeit, ohne Steuer',
  buy: 'Zu kaufen',
  steps: {
    materials: always('Material'),
    labour: ({ time }) => `Arbeit, ${time}`,
    partner: ({ title, time }) => `${title}, ${time}`,
    travel: ({ time }) => `Fahrten, ${time}`,
    others: always('Sonstige Kosten'),
    cost: always('Kosten'),
    contingency: rated('Unvorhergesehenes'),
    overhead: rated('Gemeinkosten'),
    profit: ({ rate }) => (rate ? `Gewinn ${rate}` : 'Gewinn, nach seiner Spanne'),
    agreed: always('Auf den vereinbarten Preis'),
    least: always('Auf den Mindestpreis'),
    rounding: always('Rundung'),
    discount: ({ title, rate }) => (rate ? `${title}, ${rate}` : title),
    net: always('Nettopreis'),
    rest: always('Rundung'),
    total: always('Preis'),
  },
  tax: (name, rate) => (rate ? `${name} ${rate}` : name),
  taxOn: (name, rate, base) => `${name} ${rate} auf ${base}`,
  noTax: (name, base) => `Keine ${name} auf ${base}`,
  taxOwed: (name, rate, base, due) => `${name} ${rate} auf ${base}, vom Kunden geschuldet: ${due}`,
  between: (percent, low, high) =>
    `In ${ofHundred(percent)} gleichen Aufträgen liegt der Preis zwischen ${low} und ${high}.`,
  toPrice: 'Von den Kosten zum Preis',
  leaves: 'Was er übrig lässt',
  profit: 'Gewinn',
  ofPrice: (percent) => `${percent} vom Nettopreis`,
  earns: 'Verdient je bezahlter Stunde',
  earnsIs: 'Lohn und Gewinn',
  asked: 'Gerechnet, ohne Steuer',
  askedIs: 'Was es gewesen wäre',
  keptBack: (rate, base) => `${rate} von ${base} abgezogen`,
  stages: 'Zahlung in Abschlägen',
  heldBack: (days) => (days ? `Einbehalten für ${days}` : 'Einbehalten'),
  options: 'Zur Wahl',
  option: 'Möglichkeit',
  beforeTax: 'Ohne Steuer',
  withTax: 'Mit Steuer',
  priceWith: 'Preis damit',
  accepted: 'angenommen',
  notWith: (names) => `nicht mit ${names.join(', ')}`,
  asAccepted: (names, total, held) =>
    held
      ? `Wie angenommen, mit ${names.join(', ')}: ${total}; der Kunde hat ${held}.`
      : `Wie angenommen, mit ${names.join(', ')}: ${total}.`,
};
