/** Ein Angebot auf Deutsch. */
import type { QuoteWords } from '..';
import { listed } from './listed';

const KINDS: Readonly<Record<string, string>> = {
  wall: 'Mauer',
  pier: 'Pfeiler',
  repair: 'Instandsetzung',
};

const ROUNDED = {
  discounts: 'Nachlässe',
  parts: 'die Beträge je Steuersatz',
  stages: 'Abschläge',
  retention: 'der Einbehalt',
};

export const QUOTE_DE: QuoteWords = {
  title: 'Angebot',
  draft: 'Entwurf',
  revised: 'Geändertes Angebot',
  replaces: (date) => `Es ersetzt unser Angebot vom ${date}.`,
  brickwork: 'Maurerarbeiten',
  notAQuote: 'NOCH KEIN ANGEBOT.',
  nothingOffered: (why) => `${why} Kein Betrag auf dieser Seite ist ein Angebot.`,
  why: {
    errors: 'Die Auftragsdatei enthält noch Fehler, der Preis kann daher falsch sein.',
    usedErrors:
      'Eine Datei, die der Auftrag verwendet, enthält Fehler, der Preis kann daher falsch sein.',
    gaps: 'Teile des Preises sind noch zu ermitteln.',
    noWork: 'Es ist noch keine Arbeit beschrieben.',
  },
  facts: {
    client: 'Für',
    site: 'Baustelle',
    ref: 'Zeichen',
    date: 'Datum',
    validUntil: 'Gültig bis',
  },
  work: 'Was ausgeführt wird',
  also: 'Außerdem enthalten',
  workCalled(kind, number) {
    const name = KINDS[kind] ?? 'Arbeit';
    return number === undefined ? name : `${name} ${number}`;
  },
  price: 'Preis',
  stages: 'Zahlung in Abschlägen',
  terms: 'Bedingungen',
  what: 'Was',
  when: 'Wann',
  amount: 'Betrag',
  beforeTax: 'Nettopreis',
  total: 'Gesamtpreis',
  notComplete: 'nicht vollständig',
  taxAt: (name, rate) => `${name} ${rate}`,
  taxOn: (name, rate, base) => `${name} ${rate} auf ${base}`,
  noTax: (name, base) => `Keine ${name} auf ${base}`,
  taxOwed: (reason, name, rate, amount) =>
    `${reason ? `${reason}. ` : ''}${name} ${rate}, ${amount}, wird hier nicht berechnet: Sie führen sie selbst an das Finanzamt ab.`,
  beforeDiscounts: 'Preis vor Nachlässen',
  discount: (title, rate) => (rate ? `${title}, ${rate}` : title),
  rounding: 'Rundung',
  heldBack: (days) =>
    days ? `Einbehalt, zahlbar ${days} nach Fertigstellung` : 'Einbehalt, zahlbar bei Freigabe',
  taxNumber: (_tax, number) =>
    /^[A-Z]{2}/.test(number) ? `USt-IdNr. ${number}` : `Steuernummer ${number}`,
  rounded(step, coins, tax, least) {
    const called = { ...ROUNDED, tax };
    const cents = listed(coins.map((part) => called[part]));
    const before = coins.includes('discounts') ? 'Nachlässen' : 'Steuer';
    const parts = [
      step && `der Preis vor ${before} auf ${step}`,
      cents && `${cents} auf ${least}`,
    ].filter(Boolean);
    return parts.length ? `Gerundet: ${parts.join(', ')}, kaufmännisch.` : '';
  },
  options: 'Sie können außerdem wählen',
  optionCalled: (number) => `Möglichkeit ${number}`,
  atWork: (title, says) => `${title}: ${says}`,
  option: 'Zur Wahl',
  more: 'Unterschied',
  priceWith: 'Preis damit',
  asQuoted: 'Wie oben angeboten',
  notWith: (titles) => `Nicht zusammen mit: ${titles}.`,
  madeWith: (version) => `Erstellt mit Perpend ${version}.`,
  logo: (firm) => `Das Zeichen von ${firm}`,
};
