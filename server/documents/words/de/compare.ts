/** Zwei Fassungen eines Auftrags nebeneinander, auf Deutsch. */
import type { CompareWords } from '../compare';

export const COMPARE_DE: CompareWords = {
  title: 'Was sich geändert hat',
  fromTo: (before, after) => (before === after ? before : `${before} → ${after}`),
  nothing: 'Nichts, was zählt, hat sich geändert.',
  work: 'Arbeiten',
  facts: 'Angaben',
  quantities: 'Mengen',
  price: 'Preis',
  moved: 'Was ihn bewegt hat, das Größte zuerst',
  byWork: 'Arbeit für Arbeit, ohne Steuer',
  cautions: 'Vorsicht',
  findings: 'Hinweise',
  drawing: 'Zeichnung',
  what: 'Was',
  was: 'Vorher',
  is: 'Jetzt',
  by: 'Unterschied',
  bought: 'Gekauft',
  toBuy: (material) => `Zu kaufen: ${material}`,
  together: 'Zusammen',
  incomplete: 'Ein Preis ist nicht vollständig.',
  reordered: 'Die Arbeiten stehen in anderer Reihenfolge.',
  isNew: (what) => `${what}: neu`,
  isGone: (what) => `${what}: entfallen`,
  renamed: (what, before) => `${what}, vorher: ${before}`,
  changed: (what, before, after) => `${what} ${before || '(nichts)'} → ${after || '(nichts)'}`,
  movedLines: (what) => `${what}: die Zeilen stehen in anderer Reihenfolge`,
  cautionAt: (title, works) => `${title}: ${works.join(', ')}`,
  pieces: (title, back, fresh, gone, same) =>
    `${title}${back ? ', Rückseite' : ''}: ${fresh} Steine liegen neu, ${gone} entfallen, ${same} wie zuvor`,
  idle: (count) =>
    count === 1
      ? 'In den verwendeten Dateien hat sich 1 weitere Angabe geändert, nach der dieser Auftrag nicht fragt.'
      : `In den verwendeten Dateien haben sich ${count} weitere Angaben geändert, nach denen dieser Auftrag nicht fragt.`,
  none: 'nichts',
  kept: (day, price) =>
    `Neben dem, was die Aufzeichnungen vom ${day} wissen, angeboten für ${price}.`,
  nothingKept: 'Die Aufzeichnungen wissen davon keine Zahl als den Preis.',
  sides: {
    buy: 'Zu kaufen',
    hours: 'Stunden',
    price: 'Von den Kosten zum Preis',
    missing: 'Noch offen',
  },
};
