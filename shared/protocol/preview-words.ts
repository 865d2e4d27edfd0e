/** The words of a preview’s page: the extension hands them over in the editor’s language, with `{0}`, `{1}` for what is put in. */

export const PAGE_WORDS = [
  'bar',
  'show',
  'work',
  'zoomIn',
  'zoomOut',
  'fit',
  'follow',
  'unfollow',
  'paperLook',
  'print',
  'board',
  'paper',
  'key',
  'lines',
  'notes',
  'course',
  'piece',
  'row',
  'ofMany',
  'millimetres',
  'line',
  'lineIn',
  'noLine',
  'helpBoard',
  'helpPaper',
  'waiting',
  ...(['stretcher', 'header', 'half', 'three-quarter', 'closer', 'cut', 'on-edge'] as const),
  ...(['brickwork', 'opening', 'pier', 'cap', 'core', 'precast', 'lintel', 'soldier'] as const),
  ...(['voussoir', 'mortar', 'tile', 'block', 'band', 'projecting', 'reused'] as const),
  ...(['new-piece', 'gone-piece', 'outline'] as const),
] as const;

export type PageWord = (typeof PAGE_WORDS)[number];
export type PageWords = Readonly<Record<PageWord, string>>;

/** A text with values put into it. */
export function filled(text: string, ...values: readonly (string | number)[]): string {
  return text.replace(/\{(\d+)\}/g, (whole, place) =>
    Number(place) < values.length ? String(values[Number(place)]) : whole,
  );
}

/** Words as they came, and nothing that is no text. */
export function pageWordsOf(value: unknown): PageWords {
  const given =
    typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
  const pairs = PAGE_WORDS.map((word) => {
    const text = Object.hasOwn(given, word) ? given[word] : undefined;
    return [word, typeof text === 'string' ? text : word];
  });
  return Object.fromEntries(pairs) as PageWords;
}
