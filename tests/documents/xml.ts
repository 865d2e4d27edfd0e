/** A strict reader of the XML that our documents write: throws on anything not well-formed. */
export interface XmlElement {
  name: string;
  attributes: Record<string, string>;
  children: XmlElement[];
  text: string;
}

const NAMED: Record<string, string> = { lt: '<', gt: '>', amp: '&', quot: '"' };

function unescaped(text: string): string {
  if (/[<>]|&(?!(?:lt|gt|amp|quot|#\d+);)/.test(text)) throw new Error(`bare mark in ${text}`);
  return text.replace(/&(?:#(\d+)|(\w+));/g, (_, code, name) =>
    code ? String.fromCodePoint(Number(code)) : NAMED[name]!,
  );
}

function attributesOf(source: string): Record<string, string> {
  const found: Record<string, string> = {};
  const rest = source.replace(/\s+([\w:-]+)="([^"<]*)"/g, (_, name, value) => {
    if (name in found) throw new Error(`${name} twice`);
    found[name] = unescaped(value);
    return '';
  });
  if (rest.trim() !== '') throw new Error(`not an attribute: ${rest}`);
  return found;
}

export function readXml(source: string): XmlElement {
  const top: XmlElement = { name: '', attributes: {}, children: [], text: '' };
  const open = [top];
  let at = 0;
  for (const tag of source.matchAll(/<(\/?)([\w:-]+)((?:\s+[\w:-]+="[^"]*")*)\s*(\/?)>/g)) {
    const [whole, closing, name, attributes, empty] = tag;
    open.at(-1)!.text += unescaped(source.slice(at, tag.index));
    at = tag.index + whole.length;
    if (closing) {
      if (open.pop()!.name !== name) throw new Error(`</${name}> closes nothing`);
      continue;
    }
    const element = { name: name!, attributes: attributesOf(attributes!), children: [], text: '' };
    open.at(-1)!.children.push(element);
    if (!empty) open.push(element);
  }
  if (open.length !== 1 || top.children.length !== 1) throw new Error('not one whole element');
  if (source.slice(at).trim() !== '' || top.text.trim() !== '') throw new Error('text outside');
  return top.children[0]!;
}
