/** The texts of a source file, with what is done with each. */

export interface Literal {
  /** What is put in is `{}`. */
  readonly text: string;
  /** It is a phrase of the server or of the extension. */
  readonly tagged: boolean;
  /** The property, the variable or the parameter that it is. */
  readonly of: string;
  /** What it is handed to. */
  readonly to: string;
  /** What it is the first thing handed to, itself. */
  readonly first: string;
}

interface Node {
  readonly type: string;
  readonly [part: string]: unknown;
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

/** Where a text is no text: names of modules, types, what is compared. */
const SILENT =
  /^(Import|Export(All|Named)|TSLiteral|TSTemplate|TSEnum|SwitchCase|MemberExpression)/;
const TAGS = new Set(['phrase', 'later']);

export function literalsOf(tree: unknown): Literal[] {
  return [...within(tree, [])];
}

function* within(value: unknown, above: readonly Node[]): Generator<Literal> {
  if (Array.isArray(value)) for (const each of value) yield* within(each, above);
  if (!isNode(value)) return;
  const text = textOf(value);
  if (text !== undefined && !isSilent(value, above.at(-1)))
    yield { text, ...doneWith(value, above) };
  for (const part of Object.values(value))
    if (typeof part === 'object') yield* within(part, [...above, value]);
}

function textOf(node: Node): string | undefined {
  if (node.type === 'Literal') return typeof node.value === 'string' ? node.value : undefined;
  if (node.type !== 'TemplateLiteral') return undefined;
  const pieces = node.quasis as readonly { readonly value: { readonly cooked: string } }[];
  return pieces.map(({ value }) => value.cooked).join('{}');
}

function isSilent(node: Node, parent: Node | undefined): boolean {
  if (!parent || SILENT.test(parent.type)) return true;
  if (parent.type === 'BinaryExpression') return parent.operator !== '+';
  return parent.type === 'Property' && parent.key === node;
}

function doneWith(node: Node, above: readonly Node[]): Omit<Literal, 'text'> {
  const parent = above.at(-1)!;
  const calls = above.filter(({ type }) => type === 'CallExpression' || type === 'NewExpression');
  const owner = above.findLast(({ type }) => type === 'Property' || type === 'VariableDeclarator');
  const tag = parent.type === 'TaggedTemplateExpression' ? nameOf(parent.tag) : '';
  const translated = calls.some((call) => nameOf(call.callee) === 't');
  return {
    tagged: TAGS.has(tag) || translated,
    of: owner ? nameOf(owner.key ?? owner.id) : '',
    to: nameOf(calls.at(-1)?.callee),
    first: isFirst(node, parent) ? nameOf(parent.callee) : '',
  };
}

function isFirst(node: Node, parent: Node): boolean {
  return Array.isArray(parent.arguments) && parent.arguments[0] === node;
}

function nameOf(node: unknown): string {
  if (!isNode(node)) return '';
  if (node.type === 'MemberExpression') return nameOf(node.property);
  return typeof node.name === 'string' ? node.name : '';
}
