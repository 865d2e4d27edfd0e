/** What the tests use of png.mjs. */
export interface Png {
  readonly width: number;
  readonly height: number;
  /** Bytes a pixel. */
  readonly size: number;
  readonly pixels: Uint8Array;
}

export function readPng(png: Uint8Array): Png;
export function withPalette(png: Uint8Array, most?: number): Uint8Array;
export function chunk(type: string, data: Uint8Array): Buffer;
export const SIGNATURE: Buffer;
