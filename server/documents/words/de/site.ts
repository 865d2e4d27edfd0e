/** Ein Baustellenblatt auf Deutsch. */
import type { SiteWords } from '../site';

export const SITE_DE: SiteWords = {
  title: 'Baustellenblatt',
  notWhole: 'NOCH NICHT VOLLSTÄNDIG.',
  cautions: 'Vorsicht',
  here: 'Hier',
  ask: 'Zu fragen',
  source: 'Quelle',
  sourced: (source) =>
    source
      .replace(/common practice/gi, 'gängige Praxis')
      .replace(/from memory/g, 'aus dem Gedächtnis'),
  labelled: (label, text) => `${label}: ${text}${/[.!?]$/.test(text) ? '' : '.'}`,
  order: 'Reihenfolge der Arbeiten',
  dayHead: 'Tag',
  day: (number) => `Tag ${number}`,
  from: 'Von',
  to: 'Bis',
  what: 'Was',
  work: 'Wo',
  waits: {
    lift: 'Der Rest wartet auf den nächsten Tag: höher als eine Tageshöhe wird nicht gemauert.',
    set: 'Der Rest wartet auf den nächsten Tag: der Beton muss abbinden.',
  },
  mixes: 'Mörtel',
  inBatch: 'Je Mischung',
  amount: 'Menge',
  measure: 'Oder',
  packs: 'Gebinde',
  cuts: 'Zuschnitte',
  cutHeads: ['Schichten', 'Stück', 'Je Schicht', 'Zusammen', 'Von links'],
  materials: 'Auf der Baustelle',
  needed: 'Gebraucht',
  sameRod: (title) => `Schichtenlatte: dieselbe wie für ${title}.`,
};
