/** A thing in all files of a workspace that mean the same by its name. */
import { allFiles } from '../resolve/uses';
import type { SourceFile } from '../workspace/source';
import { isCounted, type Named } from './names';
import { isOfBlock, type Occurrence, occurrencesIn } from './occurrences';
import type { WideSight, World } from './sight';

/** A thing in all files that mean the same by its name. */
export interface Spread {
  readonly thing: Named;
  readonly sites: readonly Site[];
  /** Every file that any of these is worked out with. */
  readonly around: readonly SourceFile[];
}

export interface Site {
  readonly file: SourceFile;
  readonly occurrences: readonly Occurrence[];
}

/** Work stands in its own file, and one of the same name elsewhere is another. */
const OWN: ReadonlySet<string> = new Set(['wall', 'pier', 'repair', 'option']);

/**
 * A file that uses another means the same by a name; so do two that use one which gives or uses it. Files that only the
 * name is common to are left alone.
 * @param words files without any of these are passed by: the name, and one that it is to have
 */
export function* spreadOf(
  first: WideSight,
  thing: Named,
  world: World,
  words: readonly string[] = [thing.name],
): Generator<void, Spread> {
  const spread = new Spreading(thing, world, words);
  spread.take(first);
  if (!isOfBlock(thing))
    for (let name = spread.next(); name !== undefined; name = spread.next()) {
      const sight = spread.mayMean(name) ? world.sight(name) : undefined;
      if (sight) spread.take(sight);
      yield;
    }
  return { thing, sites: [...spread.sites.values()], around: [...spread.around.values()] };
}

/** Whether only its own file knows it. */
export function isOwn(thing: Named): boolean {
  return isOfBlock(thing) || OWN.has(thing.kind);
}

/** The library that speaks of it too, where one does: what a firm says of a library’s brick is of that brick. */
export function libraryWith({ scope }: WideSight, thing: Named): SourceFile | undefined {
  if (isOwn(thing)) return undefined;
  return allFiles(scope).find((file) => file.shipped && occurrencesIn(file, thing).length > 0);
}

class Spreading {
  readonly sites = new Map<string, Site>();
  readonly around = new Map<string, SourceFile>();
  private readonly waiting: string[] = [];
  private readonly seen = new Set<string>();
  private readonly looked = new Map<string, readonly Occurrence[]>();
  private readonly speaking = new Map<string, boolean>();

  constructor(
    private readonly thing: Named,
    private readonly world: World,
    private readonly words: readonly string[],
  ) {}

  next(): string | undefined {
    return this.waiting.pop();
  }

  /** It says one of the words, or brings in a file that does. */
  mayMean(file: string): boolean {
    if (this.speaks(file)) return true;
    const others = [...this.world.usedBy(file)].filter((used) => !this.sites.has(used));
    return others.some((used) => this.speaks(used));
  }

  private speaks(file: string): boolean {
    const known = this.speaking.get(file);
    if (known !== undefined) return known;
    const found = this.words.some((word) => this.world.speaks(file, word));
    this.speaking.set(file, found);
    return found;
  }

  take(sight: WideSight): void {
    this.seen.add(sight.file.name);
    const files = this.filesMeaning(sight);
    if (!files.length) return;
    for (const file of sight.scope.files)
      if (!this.around.has(file.name)) this.around.set(file.name, file);
    for (const file of files) this.site(file);
  }

  /** The files of a job that speak of the thing. */
  private filesMeaning(sight: WideSight): readonly SourceFile[] {
    const { thing } = this;
    if (isOfBlock(thing)) return [sight.file].filter((file) => this.mentions(file));
    const files = isCounted(thing.kind) ? allFiles(sight.scope) : sight.scope.files;
    const found = files.filter((file) => this.mentions(file));
    if (!OWN.has(thing.kind)) return found;
    const home = found.find((file) => this.gives(file));
    const own = home?.name === thing.block.file.name;
    return own ? found.filter((file) => file === home || file === sight.file) : [];
  }

  private occurrences(file: SourceFile): readonly Occurrence[] {
    const known = this.looked.get(file.name);
    if (known) return known;
    const found = occurrencesIn(file, this.thing);
    this.looked.set(file.name, found);
    return found;
  }

  private mentions(file: SourceFile): boolean {
    return this.occurrences(file).length > 0;
  }

  private gives(file: SourceFile): boolean {
    return this.occurrences(file).some((o) => o.declares);
  }

  /** Whoever uses it may speak of the thing too. */
  private site(file: SourceFile): void {
    if (this.sites.has(file.name)) return;
    this.sites.set(file.name, { file, occurrences: this.occurrences(file) });
    this.wait(file.name);
    this.followUsers(file.name);
  }

  private wait(name: string): boolean {
    if (this.seen.has(name)) return false;
    this.seen.add(name);
    this.waiting.push(name);
    return true;
  }

  private followUsers(name: string): void {
    for (const user of this.world.usersOf(name)) if (this.wait(user)) this.followUsers(user);
  }
}
