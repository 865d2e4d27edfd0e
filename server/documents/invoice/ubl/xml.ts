/** XML written element by element. UBL asks for an order of elements and no empty ones. */
import { escapeXml } from '../../svg';

/** A piece of XML; nothing for what is not there. */
export type Xml = string;

/** An element that holds a text; nothing when the text is empty, since UBL allows no empty elements. */
export function leaf(name: string, text: string, attributes = ''): Xml {
  // One line: white space of a text would be read as part of it.
  const said = text.replace(/\s+/g, ' ').trim();
  return said && `<${name}${attributes && ` ${attributes}`}>${escapeXml(said)}</${name}>`;
}

/** An element that holds others; nothing when none of them is there. */
export function branch(name: string, ...children: readonly Xml[]): Xml {
  const held = children.filter(Boolean);
  if (!held.length) return '';
  const inside = held.map((child) => child.replace(/^/gm, '  ')).join('\n');
  return `<${name}>\n${inside}\n</${name}>`;
}
