/** Lengths that whole and half bricks make, as they are printed. */

/**
 * Technical Information Sheet 9, Table 1 (215 mm bricks): bricks; opening (CO+), panel with a joint at one end (CO), pier
 * or panel between openings (CO-), mm. The sheet’s scan cuts off CO- at 39 1/2 bricks.
 */
export const UK_SIZES: readonly (readonly [number, number, number, number | undefined])[] = [
  [0.5, 122.5, 112.5, 102.5],
  [1, 235, 225, 215],
  [1.5, 347.5, 337.5, 327.5],
  [2, 460, 450, 440],
  [2.5, 572.5, 562.5, 552.5],
  [3, 685, 675, 665],
  [3.5, 797.5, 787.5, 777.5],
  [4, 910, 900, 890],
  [4.5, 1022.5, 1012.5, 1002.5],
  [5, 1135, 1125, 1115],
  [5.5, 1247.5, 1237.5, 1227.5],
  [6, 1360, 1350, 1340],
  [34, 7660, 7650, 7640],
  [39.5, 8897.5, 8887.5, undefined],
  [67.5, 15197.5, 15187.5, 15177.5],
  [72.5, 16322.5, 16312.5, 16302.5],
];

/** bau-doch-selber.de, Mauerwerk, Richtmaß: raster, clear opening, outer, m. Its 1.375 row misprints the outer, and is left out. */
export const DE_SIZES = [
  [1.0, 1.01, 0.99],
  [1.125, 1.135, 1.115],
  [1.25, 1.26, 1.24],
  [1.5, 1.51, 1.49],
  [1.625, 1.635, 1.615],
  [1.75, 1.76, 1.74],
  [1.875, 1.885, 1.865],
  [2.0, 2.01, 1.99],
] as const;
