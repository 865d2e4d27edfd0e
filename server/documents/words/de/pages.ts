/** Die Seiten für die Firma selbst auf Deutsch. */
import type { PagesWords } from '../pages';
import { COMPARE_DE } from './compare';
import { JOBS_DE } from './jobs';
import { ofHundred } from './listed';
import { PRICE_DE } from './price';
import { RECORD_DE } from './record';

export const PAGES_DE: PagesWords = {
  forFirm: 'Nur für die Firma: es enthält Kosten und Gewinn.',
  price: PRICE_DE,
  measure: {
    title: 'Aufzumessen',
    nothing: 'Es ist nichts mehr aufzumessen, und keine Spanne bewegt den Preis.',
    open: 'Noch aufzumessen',
    line: 'Zeile',
    where: 'Wo',
    waits: 'Darauf wartet',
    waiting: (first, more) =>
      more > 0 ? `${first.join(', ')} und ${more} weitere` : first.join(', '),
    findOut: 'Vor Ort zu klären',
    what: 'Was',
    of: 'Von',
    saidBy: 'Zu sagen mit einer Zeile wie',
    ranges: 'Vor dem Preis aufmessen',
    range: 'Spanne',
    share: 'Anteil an der Streuung',
    rest: (share) =>
      `Die übrigen ${share}: kleine Spannen, mehrere zusammen und Stufen ganzer Gebinde und Tage.`,
    priced: (likely, percent, low, high) =>
      `Preis voraussichtlich ${likely}; in ${ofHundred(percent)} gleichen Aufträgen ${low} bis ${high}.`,
  },
  cuts: {
    title: 'Zuschnittliste',
    nothing: 'Es ist nichts gemauert, wofür Steine zu schneiden wären.',
    nothingCut: (title) => `${title}: nichts wird geschnitten.`,
    eachOf: (count) => `Jeder von ${count} gleichen.`,
    onEdge: (count) => `${count} dieser Steine hochkant geschnitten.`,
    batsLeft: (count, length) => `${count} vorhandene Teilsteine von ${length} bleiben übrig.`,
  },
  day: {
    title: 'Zeitplan',
    noWork: 'Es ist keine Arbeit darin, die Zeit braucht.',
    noTime:
      'Vom Arbeitstag bleibt nichts für die Arbeit: siehe die Zeilen day, set-up und clear-up.',
    dayFromTo: (number, from, to) => `Tag ${number}, ${from} bis ${to}`,
    charged: (hours, days) => `${hours} Arbeit; berechnet als ${days}.`,
    longer: (days) =>
      `In dieser Reihenfolge dauert es ${days} Tage, mehr als im Preis sind, weil Arbeit auf das Abbinden wartet. Stellen Sie voran, was lagenweise hochgeht oder abbinden muss, oder berechnen Sie den Rest als Kosten.`,
    onlyFirst: (days) => `Nur die ersten ${days} Tage sind gezeigt.`,
  },
  match: {
    title: 'Passende Steine',
    beside: (what) => `Neben ${what}.`,
    ranked: (order) => `Gereiht nach ${order.join(', ')}.`,
    heads: ['Stein', 'Unterschied', 'Lagerfuge', 'Abweichung', 'Kosten'],
    columns:
      'Unterschied: Länge, Breite und Höhe, mehr (+) oder weniger (−) als beim Bestand. Lagerfuge: die das Schichtmaß hält. Abweichung: wie weit die Schichten mit der üblichen Fuge zu hoch oder zu niedrig (−) auslaufen. Kosten: für alles, was fehlt, vor Gemeinkosten, Gewinn und Steuer.',
    bought: 'Dieser wird gekauft.',
    size: (text) => `Größe: ${text}.`,
    honest: 'An den Kunden',
  },
  mortar: {
    title: 'Mörtel',
    nothing: 'Es wird kein Mörtel dafür gemischt.',
    left: 'Bleibt übrig',
    material: 'Was',
    leftOver: 'Rest',
    made: (mix) => `Das ergäbe ${mix}`,
    lays: (bricks) => `vermauert ${bricks}`,
    points: (area, joints) => (joints ? `verfugt ${area}, ${joints}` : `verfugt ${area}`),
    either: (ways) => ways.join(' oder '),
  },
  record: RECORD_DE,
  jobs: JOBS_DE,
  compare: COMPARE_DE,
};
