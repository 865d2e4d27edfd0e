/** Eine Einkaufsliste auf Deutsch. */
import type { BuyingWords } from '../buying';

export const BUYING_DE: BuyingWords = {
  title: 'Einkaufsliste',
  notWhole: 'NICHT DIE GANZE LISTE.',
  anyone: 'Zu kaufen',
  what: 'Was',
  needed: 'Gebraucht',
  buy: 'Zu kaufen',
  cost: 'Kosten netto',
  all: 'Alles zusammen',
  merchant: 'Von',
  unit: 'Einheit',
  currency: 'Währung',
  pack: 'Inhalt',
  nothing: 'Es muss nichts gekauft werden.',
};
