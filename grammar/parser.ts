/**
 * The parser of one line: a Chevrotain parser with embedded actions that builds the items with their spans.
 * One call a line, so a wrong line can cost no other.
 */
import './node20';
import { EmbeddedActionsParser, type IToken } from 'chevrotain';
import type { Span } from '../shared/span';
import { unitNamed } from '../shared/units';
import type { Item, MeasureItem, NumberText, TextItem, WordItem } from './syntax';
import * as t from './tokens';

/** Words that join things or, in a course of a bond, go on with it: never the unit of the number before them. */
export const JOINING: ReadonlySet<string> = new Set([
  ...['per', 'at', 'each', 'and', 'to', 'from', 'of'],
  ...['as', 'deducted', 'for', 'until', 'with'], // after an amount: EUR 362.50 as 26-041-1
  ...['stretcher', 'header', 'core', 'back', 'centred'],
]);

class LineParser extends EmbeddedActionsParser {
  private lineNumber = 0;

  /** `checked` makes it check its own rules, as a test does once for all. */
  constructor(checked: boolean) {
    super(t.TOKENS, {
      recoveryEnabled: false,
      maxLookahead: 2,
      outputCst: false,
      skipValidations: !checked,
    } as never);
    this.performSelfAnalysis();
  }

  read(tokens: IToken[], line: number): Item[] {
    this.lineNumber = line;
    this.input = tokens;
    return this.items();
  }

  private readonly items = this.RULE('items', (): Item[] => {
    const found: Item[] = [];
    this.MANY(() => {
      const item = this.SUBRULE(this.item);
      this.ACTION(() => found.push(...apart(item)));
    });
    return found;
  });

  private readonly item = this.RULE('item', (): Item => {
    return this.OR([
      { ALT: () => this.SUBRULE(this.measure) },
      { ALT: () => this.SUBRULE(this.money) },
      { ALT: () => this.SUBRULE(this.text) },
      { ALT: () => this.SUBRULE(this.plain) },
      { ALT: () => this.SUBRULE(this.sign) },
    ]);
  });

  private readonly measure = this.RULE('measure', (): Item => {
    const low = this.SUBRULE(this.number);
    let high: NumberText | undefined;
    let unit: WordItem | undefined;
    this.OPTION(() => {
      this.CONSUME(t.Dots);
      high = this.SUBRULE2(this.number);
    });
    this.OPTION1({
      GATE: () => !JOINING.has(this.LA(1).image),
      DEF: () => {
        const word = this.OR([
          { ALT: () => this.CONSUME(t.Word) },
          { ALT: () => this.CONSUME(t.Percent) },
        ]);
        this.ACTION(() => {
          unit = this.word(word);
        });
      },
    });
    return this.ACTION(() => this.measured(low, high, unit));
  });

  /** `..£260`, `..260`: another currency is no range of this one. */
  private upTo(first: IToken): NumberText {
    this.CONSUME(t.Dots);
    this.OPTION2({
      GATE: () => this.LA(1).image === first?.image,
      DEF: () => this.CONSUME1(t.Sigil),
    });
    return this.SUBRULE1(this.number);
  }

  private readonly number = this.RULE('number', (): NumberText => {
    return this.OR([
      {
        ALT: () => {
          const digits = this.CONSUME(t.NumberToken);
          const fraction = this.OPTION(() => this.CONSUME(t.Fraction));
          return this.ACTION(() => ({
            span: this.over(digits, fraction ?? digits),
            digits: digits.image,
            fraction: fraction?.image,
          }));
        },
      },
      {
        ALT: () => {
          const fraction = this.CONSUME1(t.Fraction);
          return this.ACTION(() => ({ span: this.spanOf(fraction), fraction: fraction.image }));
        },
      },
    ]);
  });

  private readonly money = this.RULE('money', (): Item => {
    const sigil = this.CONSUME(t.Sigil);
    const amount = this.OPTION(() => this.SUBRULE(this.number));
    const high = this.OPTION1({ GATE: () => amount !== undefined, DEF: () => this.upTo(sigil) });
    return this.ACTION<Item>(() =>
      amount
        ? {
            kind: 'money',
            span: { ...this.spanOf(sigil), end: (high ?? amount).span.end },
            sigil: this.word(sigil),
            amount,
            high,
          }
        : { kind: 'junk', span: this.spanOf(sigil), text: sigil.image },
    );
  });

  private readonly text = this.RULE('text', (): Item => {
    const token = this.OR([
      { ALT: () => this.CONSUME(t.Text) },
      { ALT: () => this.CONSUME(t.OpenText) },
    ]);
    return this.ACTION<Item>(() => {
      return token.tokenType === t.Text ? this.closedText(token) : this.openText(token);
    });
  });

  private readonly plain = this.RULE('plain', (): Item => {
    return this.OR([
      { ALT: () => this.named('word', this.CONSUME(t.Word)) },
      { ALT: () => this.named('date', this.CONSUME(t.DateToken)) },
      { ALT: () => this.named('code', this.CONSUME(t.Code)) },
      { ALT: () => this.named('clock', this.CONSUME(t.Clock)) },
      { ALT: () => this.named('junk', this.CONSUME(t.Percent)) },
      { ALT: () => this.named('junk', this.CONSUME(t.Dots)) },
      { ALT: () => this.named('junk', this.CONSUME(t.Junk)) },
    ]);
  });

  private readonly sign = this.RULE('sign', (): Item => {
    const token = this.OR([
      { ALT: () => this.CONSUME(t.By) },
      { ALT: () => this.CONSUME(t.Comma) },
      { ALT: () => this.CONSUME(t.Plus) },
      { ALT: () => this.CONSUME(t.Colon) },
      { ALT: () => this.CONSUME(t.Slash) },
      { ALT: () => this.CONSUME(t.Unknown) },
    ]);
    return this.ACTION<Item>(() => ({
      kind: 'sign',
      span: this.spanOf(token),
      text: (token.tokenType === t.By ? 'x' : token.image) as 'x',
    }));
  });

  private closedText(token: IToken): TextItem {
    const text = unescaped(token.image.slice(1, -1));
    return { kind: 'text', span: this.spanOf(token), text, closed: true };
  }

  private openText(token: IToken): TextItem {
    const image = t.withoutSpaceAfter(token.image);
    const span = { ...this.spanOf(token), end: token.startOffset + image.length };
    const escaping = /(?:^|[^\\])(?:\\\\)*\\$/.test(image);
    const closing = image.startsWith('"') ? `${escaping ? '\\' : ''}"` : '”';
    return { kind: 'text', span, text: unescaped(image.slice(1)), closed: false, closing };
  }

  private named(kind: 'word' | 'date' | 'code' | 'clock' | 'junk', token: IToken): Item {
    return { kind, span: this.spanOf(token), text: token.image };
  }

  private measured(low: NumberText, high?: NumberText, unit?: WordItem): MeasureItem {
    const end = (unit ?? high ?? low).span?.end;
    return { kind: 'measure', span: { ...low.span, end: end ?? low.span?.end }, low, high, unit };
  }

  private word(token: IToken): WordItem {
    return { kind: 'word', span: this.spanOf(token), text: token.image };
  }

  private spanOf(token: IToken): Span {
    const start = token.startOffset;
    return { line: this.lineNumber, start, end: start + token.image.length };
  }

  private over(first: IToken, last: IToken): Span {
    return { ...this.spanOf(first), end: last.startOffset + last.image.length };
  }
}

function unescaped(text: string): string {
  return text.replace(/\\(["\\])/g, '$1');
}

/** `55 bricks/h` in one word is `55 bricks`, `/`, `h`; `kg/m3` is a unit and stays whole. */
function apart(item: Item): Item[] {
  const unit = item.kind === 'measure' ? item.unit : undefined;
  const at = unit && !unitNamed(unit.text) ? unit.text.indexOf('/') : -1;
  if (!unit || at < 0 || item.kind !== 'measure') return [item];
  const { line, start, end } = unit.span;
  const cut = start + at;
  const first: WordItem = {
    kind: 'word',
    span: { line, start, end: cut },
    text: unit.text.slice(0, at),
  };
  return [
    { ...item, span: { ...item.span, end: cut }, unit: first },
    { kind: 'sign', span: { line, start: cut, end: cut + 1 }, text: '/' },
    { kind: 'word', span: { line, start: cut + 1, end }, text: unit.text.slice(at + 1) },
  ];
}

let parser: LineParser | undefined;

/** Makes a parser that checks its own rules; throws when one is wrong. For the tests. */
export function checkRules(): void {
  new LineParser(true);
}

/**
 * Reads the items of a line. What the rule cannot take (`60..` with nothing after it) comes back as junk
 * from that place to the end: the caller says so.
 */
export function readItems(tokens: IToken[], line: number): Item[] {
  parser ??= new LineParser(false);
  const items = parser.read(tokens, line) ?? [];
  return parser.errors.length ? splitAtFault(tokens, line) : items;
}

/** Each token by itself, when the rule failed: numbers, words and texts are still worth having. */
function splitAtFault(tokens: IToken[], line: number): Item[] {
  const items: Item[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const dots = tokens[i]!.tokenType === t.Dots;
    const alone = parser!.read([tokens[i]!], line) ?? [];
    if (alone.length === 1 && !dots) items.push(alone[0]!);
    else items.push(junk(tokens[i]!, line));
  }
  return items;
}

function junk(token: IToken, line: number): Item {
  const start = token.startOffset;
  const span = { line, start, end: start + token.image.length };
  return { kind: 'junk', span, text: token.image };
}
