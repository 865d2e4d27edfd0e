/** Hatches: what a piece is can be told without its colour. Their colours are in the style sheet. */
import { make } from './dom';

/** Size of the repeat, mm, and the lines in it. */
const HATCHES: Readonly<Record<string, readonly [size: number, d: string]>> = {
  header: [1.3, 'M0.4 0.65H0.9'],
  half: [1.1, 'M-0.2 1.3L1.3 -0.2'],
  'three-quarter': [1.1, 'M-0.2 -0.2L1.3 1.3'],
  cut: [1, 'M-0.2 -0.2L1.2 1.2M-0.2 1.2L1.2 -0.2'],
  closer: [0.7, 'M0.35 0V0.7'],
  'on-edge': [1.6, 'M0.8 0.2V0.7'],
  brickwork: [1, 'M0 0.5H1'],
  cap: [1.5, 'M0.6 0.75H0.9'],
  core: [1.5, 'M0.6 0.75H0.9'],
  lintel: [1.5, 'M0.6 0.75H0.9M0.1 0.1H0.3'],
  band: [0.9, 'M0 0.45H0.9'],
  reused: [1.5, 'M0.65 0.75H0.85'],
  'new-piece': [0.9, 'M0.45 0V0.9'],
};

export const HATCHED: ReadonlySet<string> = new Set(Object.keys(HATCHES));

export function hatches(id: string): SVGElement {
  const all = make('defs', {});
  for (const [ink, [size, d]] of Object.entries(HATCHES)) {
    const side = String(size);
    const pattern = make('pattern', {
      id: `${id}-${ink}`,
      width: side,
      height: side,
      patternUnits: 'userSpaceOnUse',
    });
    pattern.append(
      make('rect', { width: side, height: side, class: `h-${ink}` }),
      make('path', { d, class: `hatch hatch-${ink}` }),
    );
    all.append(pattern);
  }
  return all;
}
