/** A UBL document as a tree that rules can be asked of. Read by a library of others, not by our own hand. */
import { XMLParser } from 'fast-xml-parser';

/** An element: its text, its attributes and the elements in it. */
export class Element {
  constructor(private readonly node: unknown) {}

  /** All elements at the end of this way from here: `TaxTotal/TaxSubtotal`. */
  all(way: string): Element[] {
    return way
      .split('/')
      .reduce<Element[]>((from, name) => from.flatMap((e) => e.named(name)), [this]);
  }

  private named(name: string): Element[] {
    const found = typeof this.node === 'object' && (this.node as Record<string, unknown>)[name];
    if (found === undefined || found === false || found === null) return [];
    return (Array.isArray(found) ? found : [found]).map((one) => new Element(one));
  }

  has(way: string): boolean {
    return this.all(way).some((e) => e.text !== '' || e.names.length > 0);
  }

  one(way: string): string {
    return this.all(way)[0]?.text ?? '';
  }

  attribute(name: string): string {
    return this.one(`@${name}`);
  }

  get names(): string[] {
    return typeof this.node === 'object' && this.node !== null
      ? Object.keys(this.node).filter((name) => !name.startsWith('@') && name !== '#text')
      : [];
  }

  get text(): string {
    if (typeof this.node === 'string') return this.node.trim();
    const text = (this.node as Record<string, unknown> | null)?.['#text'];
    return typeof text === 'string' ? text.trim() : '';
  }
}

export function readInvoice(xml: string): Element {
  const parser = new XMLParser({
    ignoreAttributes: false,
    attributeNamePrefix: '@',
    removeNSPrefix: true,
    parseTagValue: false,
    parseAttributeValue: false,
  });
  return new Element((parser.parse(xml) as Record<string, unknown>).Invoice);
}
