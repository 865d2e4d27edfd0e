/**
 * What changes a job or makes a new one, and what compares, looks over and tells. The server writes nothing: it answers
 * with edits or a text, and the client applies and saves them. Why something cannot be done is a `Refused`.
 */
import type { FileParams } from '../protocol';
import type { COMPARE, Compared, CompareParams, USED } from './compare';
import type { JOBS, JobsMade, JobsParams } from './jobs';
import type {
  NEW,
  NEXT,
  NewMade,
  NewParams,
  NextMade,
  NextParams,
  TEMPLATES,
  TemplateItem,
  TemplatesParams,
} from './new';
import type { Refused } from './pages';
import type { SHARE, SharedMade, ShareParams, TAKE, TakeEdits, TakeParams } from './partners';
import type { RECORD, RECORD_KINDS, RecordEdits, RecordKind, RecordParams } from './record';
import type { CHECK, CheckParams, EXPLAIN, ExplainParams, PRICE, Told, ToldParams } from './tools';

/** Names what a request gives, for a client that keeps them in one place. */
export interface Deeds {
  readonly [RECORD_KINDS]: [FileParams, readonly RecordKind[] | Refused | null];
  readonly [RECORD]: [RecordParams, RecordEdits | Refused | null];
  readonly [NEXT]: [NextParams, NextMade | Refused | null];
  readonly [TEMPLATES]: [TemplatesParams, readonly TemplateItem[] | null];
  readonly [NEW]: [NewParams, NewMade | Refused | null];
  readonly [SHARE]: [ShareParams, SharedMade | Refused | null];
  readonly [TAKE]: [TakeParams, TakeEdits | Refused | null];
  readonly [COMPARE]: [CompareParams, Compared | Refused | null];
  readonly [USED]: [FileParams, readonly string[] | null];
  readonly [JOBS]: [JobsParams, JobsMade | null];
  readonly [CHECK]: [CheckParams, Told | Refused | null];
  readonly [PRICE]: [ToldParams, Told | Refused | null];
  readonly [EXPLAIN]: [ExplainParams, Told | Refused | null];
}
