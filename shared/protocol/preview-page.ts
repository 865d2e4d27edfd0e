/**
 * What the extension and the page of its preview say to each other. Neither trusts the other: a page shows words of
 * a file that anybody may have written. Whatever is not of these shapes is dropped.
 */
import type { Room, Shown } from './preview';

/** What a page keeps over being hidden, moved and loaded again. */
export interface Kept {
  readonly uri: string;
  readonly show: string;
  readonly work?: string;
  readonly pinned: boolean;
  /** 1 is its own size; 0 fits it into its room. */
  readonly zoom: number;
  readonly left: number;
  readonly top: number;
  /** Papers as sheets of paper, black on white, whatever the theme. */
  readonly paperLook: boolean;
}

export type FromPage =
  /** It stands, with what it kept, and wants to be told what to show. */
  | { readonly say: 'ready'; readonly room: Room; readonly have?: string }
  | { readonly say: 'room'; readonly room: Room }
  /** Leads to a line, by its place in the list that came with what is shown; `focus` goes there, not only shows it. */
  | { readonly say: 'line'; readonly from: number; readonly focus: boolean }
  | { readonly say: 'show'; readonly show: string }
  | { readonly say: 'work'; readonly work: string }
  | { readonly say: 'pin'; readonly pinned: boolean }
  /** It could not make sense of a change: it wants the whole. */
  | { readonly say: 'again' }
  | { readonly say: 'print' };

export type ToPage =
  | {
      readonly say: 'shown';
      readonly uri: string;
      readonly shown: Shown;
      readonly line: number;
      readonly pinned: boolean;
      /** The move of the cursor was made by the page itself: nothing is to be scrolled. */
      readonly quiet: boolean;
    }
  | { readonly say: 'cursor'; readonly line: number; readonly quiet: boolean }
  /** Why there is nothing. */
  | { readonly say: 'nothing'; readonly why: string };

/** Names and keys are no longer than this. */
const LONGEST = 2000;
/** Lines of a file, and mm of a screen: nothing real is near these. */
const MOST_LINES = 10_000_000;
const MOST_ROOM = 20_000;

type Fields = Record<string, unknown>;

function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isName(value: unknown): value is string {
  return typeof value === 'string' && value.length <= LONGEST;
}

export function isLine(value: unknown): value is number {
  return Number.isInteger(value) && (value as number) >= 0 && (value as number) < MOST_LINES;
}

function isSide(value: unknown): value is number {
  return typeof value === 'number' && value > 0 && value <= MOST_ROOM;
}

function isRoom(value: unknown): value is Room {
  return isFields(value) && isSide(value.width) && isSide(value.height);
}

const roomOf = ({ width, height }: Room): Room => ({ width, height });

const FROM_PAGE: Readonly<Record<FromPage['say'], (given: Fields) => FromPage | undefined>> = {
  ready({ room, have }) {
    if (!isRoom(room) || !(have === undefined || isName(have))) return undefined;
    return { say: 'ready', room: roomOf(room), have };
  },
  room: ({ room }) => (isRoom(room) ? { say: 'room', room: roomOf(room) } : undefined),
  line({ from, focus }) {
    return isLine(from) && typeof focus === 'boolean' ? { say: 'line', from, focus } : undefined;
  },
  show: ({ show }) => (isName(show) ? { say: 'show', show } : undefined),
  work: ({ work }) => (isName(work) ? { say: 'work', work } : undefined),
  pin: ({ pinned }) => (typeof pinned === 'boolean' ? { say: 'pin', pinned } : undefined),
  again: () => ({ say: 'again' }),
  print: () => ({ say: 'print' }),
};

/** A message of the page, with nothing in it but what it may have; nothing when it is none. */
export function fromPage(value: unknown): FromPage | undefined {
  if (!isFields(value) || typeof value.say !== 'string') return undefined;
  if (!Object.hasOwn(FROM_PAGE, value.say)) return undefined;
  return FROM_PAGE[value.say as FromPage['say']](value);
}

/** A message of the extension; nothing when it is none. What is shown is looked at where it is drawn. */
export function toPage(value: unknown): ToPage | undefined {
  if (!isFields(value)) return undefined;
  if (value.say === 'nothing')
    return isName(value.why) ? { say: 'nothing', why: value.why } : undefined;
  const { line, quiet } = value;
  if (!isLine(line) || typeof quiet !== 'boolean') return undefined;
  if (value.say === 'cursor') return { say: 'cursor', line, quiet };
  const { uri, shown, pinned } = value;
  if (value.say !== 'shown' || !isName(uri) || !isShown(shown) || typeof pinned !== 'boolean')
    return undefined;
  return { say: 'shown', uri, shown, line, pinned, quiet };
}

function isShown(value: unknown): value is Shown {
  if (!isFields(value)) return false;
  const texts = [value.show, value.title, value.described];
  const lists = [value.choices, value.works, value.from];
  return texts.every((text) => typeof text === 'string') && lists.every(Array.isArray);
}

/** What a page kept, however old the extension that it was kept by; nothing when it cannot be used. */
export function keptOf(value: unknown): Kept | undefined {
  if (!isFields(value) || !isName(value.uri)) return undefined;
  const number = (given: unknown, most: number) =>
    typeof given === 'number' && given >= 0 && given <= most ? given : 0;
  return {
    uri: value.uri,
    show: isName(value.show) ? value.show : '',
    work: isName(value.work) ? value.work : undefined,
    pinned: value.pinned === true,
    zoom: number(value.zoom, 64),
    left: number(value.left, 1e7),
    top: number(value.top, 1e7),
    paperLook: value.paperLook === true,
  };
}
