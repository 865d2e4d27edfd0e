import type { Ink } from '../engine/drawing';

/** How an ink looks: line weights and hatch pitches in mm on paper. */
export interface Look {
  fill: string;
  line: string;
  weight: number;
  hatch?: string;
  /** Told by its dark tone alone, so filled wherever the reader shows no colours. */
  dark?: boolean;
  dash?: string;
}

/** Plain faces that every machine has, or has something like. */
export const FONT = 'Helvetica, Arial, sans-serif';

const brick = (fill: string, hatch?: string): Look => ({
  fill,
  line: '#4a2418',
  weight: 0.12,
  hatch,
});

/** Tones are far enough apart to tell in grey; what is cut in any way is hatched besides. */
export const LOOKS: Record<Ink, Look> = {
  stretcher: brick('#f3cdb9'),
  header: brick('#d99b7b'),
  half: brick('#e8b9a2', 'hatch-up'),
  'three-quarter': brick('#e8b9a2', 'hatch-down'),
  closer: { ...brick('#8a4a33'), dark: true },
  cut: brick('#fff3c4', 'hatch-cross'),
  'on-edge': brick('#c9836a'),
  brickwork: brick('#f3cdb9', 'hatch-level'),
  opening: { fill: '#fff', line: '#555', weight: 0.18 },
  pier: { fill: '#e3d3c9', line: '#4a2418', weight: 0.3 },
  cap: { fill: '#d6d6d6', line: '#333', weight: 0.25, hatch: 'hatch-dots' },
  ground: { fill: 'none', line: '#222', weight: 0.6 },
  dpc: { fill: 'none', line: '#111', weight: 0.5, dash: '2.2 0.9' },
  movement: { fill: 'none', line: '#111', weight: 0.6, dash: '0.7 0.7' },
  course: { fill: 'none', line: '#9a8478', weight: 0.1 },
  core: { fill: '#ececec', line: '#777', weight: 0.1, hatch: 'hatch-dots' },
  precast: { fill: '#d6d6d6', line: '#333', weight: 0.25 },
  lintel: { fill: '#dcdcdc', line: '#333', weight: 0.25, hatch: 'hatch-dots' },
  soldier: brick('#e0a78b'),
  voussoir: brick('#d08d70'),
  mortar: { fill: '#f6f1e6', line: '#9a8478', weight: 0.1 },
  tile: { fill: '#b4624a', line: '#4a2418', weight: 0.12 },
  outline: { fill: 'none', line: '#222', weight: 0.35 },
  break: { fill: 'none', line: '#222', weight: 0.2 },
  hidden: { fill: 'none', line: '#222', weight: 0.15, dash: '1.6 0.8' },
  mark: { fill: 'none', line: '#222', weight: 0.35 },
  block: { fill: '#d9d6cf', line: '#444', weight: 0.12 },
  band: { fill: 'none', line: '#4a2418', weight: 0.12, hatch: 'hatch-level' },
  projecting: { fill: 'none', line: '#111', weight: 0.5 },
  reused: { fill: 'none', line: '#4a2418', weight: 0.12, hatch: 'hatch-dots' },
  'new-piece': { fill: 'none', line: '#0b5a2b', weight: 0.45, hatch: 'hatch-upright' },
  'gone-piece': { fill: 'none', line: '#a01414', weight: 0.45, dash: '1 0.6' },
  dimension: { fill: 'none', line: '#222', weight: 0.15 },
  rod: { fill: 'none', line: '#222', weight: 0.2 },
};

const pattern = (id: string, size: number, inside: string) =>
  `<pattern id="${id}" width="${size}" height="${size}" patternUnits="userSpaceOnUse">${inside}</pattern>`;

const ruled = (d: string) => `<path d="${d}" fill="none" stroke="#4a2418" stroke-width="0.12"/>`;

export const HATCHES: readonly string[] = [
  pattern('hatch-up', 0.9, ruled('M-0.2 1.1L1.1 -0.2')),
  pattern('hatch-down', 0.9, ruled('M-0.2 -0.2L1.1 1.1')),
  pattern('hatch-cross', 0.8, ruled('M-0.2 -0.2L1 1M-0.2 1L1 -0.2')),
  pattern('hatch-level', 0.75, ruled('M0 0.4H0.75')),
  pattern('hatch-upright', 0.75, ruled('M0.4 0V0.75')),
  pattern('hatch-dots', 1.2, '<circle cx="0.6" cy="0.6" r="0.14" fill="#333"/>'),
];
