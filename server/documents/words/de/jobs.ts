/** Die Übersicht der Aufträge auf Deutsch. */
import type { JobsWords } from '../jobs';
import { counted } from './listed';

export const JOBS_DE: JobsWords = {
  title: 'Aufträge',
  asOf(jobs, others, day) {
    const more = others ? ` und ${counted(others, 'andere Datei', 'andere Dateien')}` : '';
    return `${counted(jobs, 'Auftrag', 'Aufträge')}${more}, Stand ${day}.`;
  },
  inCurrency: (code) => `In ${code}`,
  states: {
    'not-sent': 'Nicht abgeschickt',
    out: 'Angeboten',
    lost: 'Nicht bekommen',
    'in-hand': 'Beauftragt, in Arbeit',
    done: 'Beauftragt, alles berechnet',
    paid: 'Beauftragt, alles bezahlt',
  },
  stand: 'Wie sie stehen',
  state: 'Stand',
  jobs: 'Aufträge',
  price: 'Preis',
  withoutPrice: (count) => `${count} ohne Preis`,
  job: 'Auftrag',
  since: 'Seit',
  days: 'Tage',
  money: 'Berechnet und bezahlt',
  what: 'Was',
  amount: 'Betrag',
  invoiced: 'Berechnet',
  paid: 'Bezahlt',
  held: 'Einbehalten',
  owed: 'Offen',
  open: 'Offen, das Älteste zuerst',
  late: 'Tage überfällig',
  byInvoice: 'Nach dem Tag der Rechnung',
  byPayment: 'Nach dem Tag der Zahlung',
  quarter: 'Quartal',
  fromTo: (from, to) => `${from} bis ${to}`,
  beforeTax: 'Netto',
  tax: 'Steuer',
  withTax: 'Brutto',
  unknownTax: 'Steuer nicht bekannt',
  andMore: (count) => `Und ${count} weitere.`,
  lost: (count) =>
    `${counted(count, 'Auftrag verwendet', 'Aufträge verwenden')} eine Datei, die fehlt oder außerhalb des Ordners liegt: was sie zu Währung, Steuer und Zahlungsziel sagt, ist nicht berücksichtigt.`,
  leftOut: (count) =>
    `${counted(count, 'Zeile', 'Zeilen')} mit Aufzeichnungen ${count === 1 ? 'ist' : 'sind'} nicht lesbar oder in anderer Währung und nicht mitgezählt.`,
  moved: (count) =>
    count === 1
      ? 'Bei einem Auftrag wurde etwas zur Wahl Gestelltes angenommen, ohne dass ein Preis dafür dasteht: der Preis ist ohne.'
      : `Bei ${count} Aufträgen wurde etwas zur Wahl Gestelltes angenommen, ohne dass ein Preis dafür dasteht: der Preis ist ohne.`,
};
