/** The words after `perpend`, sorted into files and options. */
import { phrase } from '../../shared/phrase';
import { WrongUse } from './exits';
import { near } from './near';

export interface Option {
  /** With its dashes: `--out`. */
  readonly name: string;
  /** What stands after it, as help shows it (`PATH`). Without one the option is a switch. */
  readonly value?: string;
  readonly about: string;
  /** It may be given several times. */
  readonly many?: boolean;
}

export class Given {
  readonly words: string[] = [];
  private readonly options = new Map<string, readonly string[]>();

  set({ name, many }: Option, value: string): void {
    const known = this.options.get(name) ?? [];
    if (known.length && !many) throw new WrongUse(phrase`${name} stands twice.`);
    this.options.set(name, [...known, value]);
  }

  has(name: string): boolean {
    return this.options.has(name);
  }

  value(name: string): string | undefined {
    return this.options.get(name)?.[0];
  }

  /** Of an option that may be given several times. */
  values(name: string): readonly string[] {
    return this.options.get(name) ?? [];
  }
}

/** @throws WrongUse for an option that is not known, stands twice, or lacks its value */
export function parseArgs(args: readonly string[], options: readonly Option[]): Given {
  const given = new Given();
  for (let i = 0; i < args.length; i++) {
    const word = args[i]!;
    if (word === '--') {
      given.words.push(...args.slice(i + 1));
      break;
    }
    if (word === '-' || !word.startsWith('-')) given.words.push(word);
    else if (takeOption(given, word, args[i + 1], options)) i++;
  }
  return given;
}

/** Whether the next word was its value. */
function takeOption(
  given: Given,
  word: string,
  next: string | undefined,
  options: readonly Option[],
): boolean {
  const [name = '', ...rest] = word.split('=');
  const option = options.find((o) => o.name === name);
  if (!option) throw unknown(name, options);
  const inside = rest.length ? rest.join('=') : undefined;
  if (!option.value) {
    if (inside !== undefined) throw new WrongUse(phrase`${name} takes no value.`);
    given.set(option, '');
    return false;
  }
  const value = inside ?? next;
  if (!value) throw new WrongUse(phrase`${name} needs a value: ${name} ${option.value}`);
  given.set(option, value);
  return inside === undefined;
}

function unknown(name: string, options: readonly Option[]): WrongUse {
  const names = options.map((o) => o.name);
  const [meant] = near(name, names);
  const hint = meant ? phrase` Did you mean ${meant}?` : phrase` There are ${names.join(', ')}.`;
  return new WrongUse(phrase`There is no option ${name}.${hint}`);
}
