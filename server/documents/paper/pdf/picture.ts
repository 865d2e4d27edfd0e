/** A firm's picture put on a page. */
import type { Picture } from '../model';
import { pictureSize } from '../picture';
import type { Document } from './document';
import { type Rgb, rgbOf } from './png';

/** A picture that is known to be whole. */
export interface Ready {
  readonly width: number;
  readonly height: number;
  draw(doc: Document, x: number, y: number, width: number, height: number): void;
}

/** @returns nothing where it cannot be read */
export function readyPicture(picture: Picture, doc: Document): Ready | undefined {
  const { bytes, type } = picture;
  const size = pictureSize(bytes);
  if (typeof size === 'string' || size.type !== type) return undefined;
  try {
    return { ...size, draw: type === 'jpeg' ? jpeg(bytes, doc) : png(bytes) };
  } catch {
    return undefined; // its first bytes were right, the others were not
  }
}

function jpeg(bytes: Uint8Array, doc: Document): Ready['draw'] {
  const opened = doc.openImage(bytes);
  return (on, x, y, width, height) => on.image(opened, x, y, { width, height });
}

function png(bytes: Uint8Array): Ready['draw'] {
  const rgb = rgbOf(bytes);
  return (...where) => drawRgb(rgb, ...where);
}

const NAME = 'Logo';

function drawRgb(rgb: Rgb, doc: Document, x: number, y: number, width: number, height: number) {
  const image = doc.ref({
    Type: 'XObject',
    Subtype: 'Image',
    Width: rgb.width,
    Height: rgb.height,
    BitsPerComponent: 8,
    ColorSpace: 'DeviceRGB',
  });
  image.end(rgb.dots);
  doc.page.xobjects[NAME] = image;
  // The page counts down from its top, a picture up from its foot.
  doc.save();
  doc.addContent(`${[width, 0, 0, -height, x, y + height].map((n) => n.toFixed(3)).join(' ')} cm`);
  doc.addContent(`/${NAME} Do`);
  doc.restore();
}
