/** What we use of markdown-it, which ships no types. */
declare module 'markdown-it' {
  export default class MarkdownIt {
    constructor(options: { html: boolean; linkify: boolean });
    enable(rules: readonly string[]): this;
    render(markdown: string): string;
  }
}
