/** Hatches, as rows of lines at an angle; the same pictures as the patterns of an SVG drawing. */
import type { Tag } from './tags';

interface Hatch {
  readonly name: string;
  /** Degrees from level. */
  readonly angles: readonly number[];
  /** From line to line, mm on paper. */
  readonly pitch: number;
  /** Lines are rows of dots, as far apart as the rows. */
  readonly dotted?: boolean;
}

const HATCHES: Readonly<Record<string, Hatch>> = {
  'hatch-up': { name: 'UP', angles: [45], pitch: 0.64 },
  'hatch-down': { name: 'DOWN', angles: [135], pitch: 0.64 },
  'hatch-cross': { name: 'CROSS', angles: [45, 135], pitch: 0.57 },
  'hatch-level': { name: 'LEVEL', angles: [0], pitch: 0.75 },
  'hatch-upright': { name: 'UPRIGHT', angles: [90], pitch: 0.75 },
  'hatch-dots': { name: 'DOTS', angles: [0], pitch: 1.2, dotted: true },
};

export const hatchesKnown: readonly string[] = Object.keys(HATCHES);

/** The tags of a hatch after its outline: its name goes before it. */
export interface HatchTags {
  readonly name: string;
  readonly lines: readonly Tag[];
}

/** @param scale how many mm of the work are one on paper */
export function hatchTags(id: string, scale: number): HatchTags {
  const { name, angles, pitch, dotted } = HATCHES[id]!;
  const off = pitch * scale;
  const rows = angles.flatMap((angle): Tag[] => {
    const turn = (angle * Math.PI) / 180;
    const dots: Tag[] = dotted
      ? [
          [79, 2],
          [49, 0],
          [49, -off],
        ]
      : [[79, 0]];
    return [
      [53, angle],
      [43, 0],
      [44, 0],
      [45, -off * Math.sin(turn)],
      [46, off * Math.cos(turn)],
      ...dots,
    ];
  });
  return { name, lines: [[52, 0], [41, 1], [77, 0], [78, angles.length], ...rows] };
}
