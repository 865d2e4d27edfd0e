/** What we use of pdfkit 0.20; it ships no types, and those of others bring all of Node with them. */
declare module 'pdfkit' {
  export interface Dictionary {
    readonly data: Record<string, unknown>;
  }

  export interface Reference extends Dictionary {
    end(bytes: Uint8Array): void;
  }

  export interface StructElement {
    readonly dictionary: Dictionary;
    add(child: StructElement | StructContent): StructElement;
    end(): void;
  }

  export interface Opened {
    readonly opened: never;
  }

  /** A stretch of marked content on a page. */
  export interface StructContent {
    readonly structContent: never;
  }

  export interface Outline {
    addItem(title: string): Outline;
  }

  export interface DocumentOptions {
    readonly size: readonly [number, number];
    readonly margin: number;
    readonly pdfVersion: string;
    readonly subset: string;
    readonly tagged: boolean;
    readonly lang: string;
    readonly displayTitle: boolean;
    readonly bufferPages: boolean;
    readonly autoFirstPage: boolean;
    readonly font: null;
    readonly info: Record<string, string | Date>;
  }

  interface TextOptions {
    readonly lineBreak: false;
    readonly baseline: 'alphabetic';
    readonly fill?: boolean;
    readonly stroke?: boolean;
  }

  export default class PDFDocument {
    constructor(options: DocumentOptions);
    info: Record<string, unknown>;
    readonly outline: Outline;
    readonly page: {
      readonly height: number;
      readonly width: number;
      readonly xobjects: Record<string, Reference>;
    };

    push(chunk: Uint8Array | null): boolean;
    end(): void;
    ref(data: Record<string, unknown>): Reference;
    addContent(operators: string): this;
    addPage(): this;
    switchToPage(n: number): unknown;
    bufferedPageRange(): { start: number; count: number };
    /** Called at the end: writes the document's information as XMP. */
    _addInfo(): void;

    registerFont(name: string, bytes: Uint8Array): this;
    font(name: string): this;
    fontSize(size: number): this;
    readonly _font: { readonly font: { hasGlyphForCodePoint(code: number): boolean } };
    widthOfString(text: string): number;
    text(text: string, x: number, y: number, options: TextOptions): this;

    struct(type: string, options?: { alt?: string; scope?: string }): StructElement;
    addStructure(element: StructElement): this;
    markStructureContent(tag: string): StructContent;
    markContent(tag: string, options?: { type?: string }): this;
    endMarkedContent(): this;

    save(): this;
    restore(): this;
    translate(x: number, y: number): this;
    scale(factor: number): this;
    rotate(degrees: number): this;
    moveTo(x: number, y: number): this;
    lineTo(x: number, y: number): this;
    rect(x: number, y: number, width: number, height: number): this;
    closePath(): this;
    clip(): this;
    fill(): this;
    stroke(): this;
    fillAndStroke(): this;
    fillColor(colour: string): this;
    strokeColor(colour: string): this;
    lineWidth(width: number): this;
    lineCap(cap: 'butt' | 'round'): this;
    lineJoin(join: 'miter' | 'round'): this;
    dash(lengths: readonly number[], options?: { phase: number }): this;
    undash(): this;
    /** @throws where it is no JPEG that it knows, sometimes a text. */
    openImage(bytes: Uint8Array): Opened;
    image(opened: Opened, x: number, y: number, size: { width: number; height: number }): this;
  }
}
