/** What any piece of work says besides itself: who does it, how it is taxed, what papers say of it, in which option it is. */
import { IN_OPTION } from '../option';
import { BY_PARTNER } from '../partner';
import { NOTE, SAYS } from '../said';
import type { LineKind } from '../slots';
import { OWN_TAX } from '../tax';

export const TOLD: readonly LineKind[] = [BY_PARTNER, OWN_TAX, NOTE, SAYS, IN_OPTION];
