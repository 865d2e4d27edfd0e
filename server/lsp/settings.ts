/** What a reader wants to see in a file: settings by file, asked for once each, until they change. */
import type { ConfigurationItem } from 'vscode-languageserver';

type Ask = (items: ConfigurationItem[]) => Promise<unknown>;

/** Kinds of something, by the setting under `perpend` that shows each. */
export type Switches<K extends string> = Readonly<Record<K, string>>;

export class Wishes<K extends string> {
  private known = new Map<string, ReadonlySet<K>>();

  /** @param usual what a reader sees who has chosen nothing */
  constructor(
    private readonly switches: Switches<K>,
    private readonly usual: ReadonlySet<K>,
    private readonly ask: Ask,
  ) {}

  changed(): void {
    this.known = new Map();
  }

  forget(uri: string): void {
    this.known.delete(uri);
  }

  /** At once when it is known, which is always but the first time. */
  of(uri: string): ReadonlySet<K> | Promise<ReadonlySet<K>> {
    return this.known.get(uri) ?? this.asked(uri);
  }

  private async asked(scopeUri: string): Promise<ReadonlySet<K>> {
    const kinds = Object.keys(this.switches) as K[];
    const before = this.known;
    const items = kinds.map((kind) => ({ scopeUri, section: `perpend.${this.switches[kind]}` }));
    const found = ((await this.ask(items).catch(() => [])) ?? []) as unknown[];
    const wanted = new Set(kinds.filter((kind, i) => this.isOn(kind, found[i])));
    // Changed while it was asked: what came is of before.
    if (before === this.known) this.known.set(scopeUri, wanted);
    return wanted;
  }

  private isOn(kind: K, said: unknown): boolean {
    return typeof said === 'boolean' ? said : this.usual.has(kind);
  }
}
