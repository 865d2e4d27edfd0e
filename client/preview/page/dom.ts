/** Elements made by hand: no text of a job ever becomes one. */
const SVG = 'http://www.w3.org/2000/svg';

type Attributes = Readonly<Record<string, string>>;

export function make(tag: string, attributes: Attributes = {}): SVGElement {
  return dressed(document.createElementNS(SVG, tag) as SVGElement, attributes);
}

export function element<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...inside: readonly (Node | string)[]
): HTMLElementTagNameMap[K] {
  const made = dressed(document.createElement(tag), attributes);
  made.append(...inside);
  return made;
}

function dressed<E extends Element>(made: E, attributes: Attributes): E {
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  return made;
}

/** What the system is asked to spare its user. */
export function movesLittle(): boolean {
  return (
    document.body.classList.contains('vscode-reduce-motion') ||
    matchMedia('(prefers-reduced-motion: reduce)').matches
  );
}
