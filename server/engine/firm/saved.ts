/** An index as a text, to be kept from one run to the next. It comes back from a disk, so that nothing of it is trusted. */
import { phrase } from '../../../shared/phrase';
import type { Indexed } from './disk-index';
import { ENTRY_KINDS, type JobEntry, type JobSummary } from './summary';

const FORMAT = 'perpend-index';
/** Of another version nothing is kept: what is read of a file may have changed. */
const VERSION = 1;

export function savedText(entries: ReadonlyMap<string, Indexed>, folder: string): string {
  const files = [...entries].map(([file, of]) => [file, of.size, of.changed, of.summary]);
  return `${JSON.stringify({ format: FORMAT, version: VERSION, folder, files })}\n`;
}

/** @returns why it is of no use, in words that follow “it” */
export function readSaved(text: string, folder: string): ReadonlyMap<string, Indexed> | string {
  const data = parsed(text);
  if (!isObject(data) || data.format !== FORMAT) return phrase`is no index of jobs`;
  if (data.version !== VERSION) return phrase`is of another version`;
  if (data.folder !== folder) return phrase`is of another folder`;
  if (!Array.isArray(data.files)) return phrase`is damaged`;
  const known = new Map<string, Indexed>();
  for (const each of data.files) {
    if (!isFile(each)) return phrase`is damaged`;
    const [file, size, changed, summary] = each;
    known.set(file, { size, changed, summary });
  }
  return known;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

type Fields = Readonly<Record<string, unknown>>;

function isObject(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isFile(value: unknown): value is [string, number, number, JobSummary] {
  if (!Array.isArray(value) || value.length !== 4) return false;
  const [file, size, changed, summary] = value;
  return isText(file) && isNumber(size) && isNumber(changed) && isSummary(summary);
}

function isSummary(value: unknown): value is JobSummary {
  if (!isObject(value)) return false;
  const { isJob, ref, title, client, date, entries, unread, own, taxes } = value;
  return (
    typeof isJob === 'boolean' &&
    typeof taxes === 'boolean' &&
    [ref, title, client, date, own].every(isText) &&
    isNumber(unread) &&
    Array.isArray(entries) &&
    entries.every(isEntry)
  );
}

function isEntry(value: unknown): value is JobEntry {
  if (!isObject(value)) return false;
  const { kind, date, money, deducted, options, hours, task, amount } = value;
  return (
    (ENTRY_KINDS as readonly unknown[]).includes(kind) &&
    isDate(date) &&
    [money, deducted, amount].every(isWritten) &&
    (hours === undefined || isAmount(hours)) &&
    (task === undefined || isText(task)) &&
    (options === undefined || (Array.isArray(options) && options.every(isText)))
  );
}

function isWritten(value: unknown): boolean {
  if (value === undefined) return true;
  return Array.isArray(value) && value.length === 2 && isAmount(value[0]) && isText(value[1]);
}

/** As `toFixed` of an exact number writes it, and no longer than any that is read. */
function isAmount(value: unknown): boolean {
  return isText(value) && value.length < 200 && /^\d+(\.\d+)?$/.test(value);
}

function isDate(value: unknown): boolean {
  return isText(value) && /^\d{4}-\d{2}-\d{2}$/.test(value);
}

function isText(value: unknown): value is string {
  return typeof value === 'string';
}

function isNumber(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value);
}
