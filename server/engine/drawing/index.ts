/** Drawings of work as plain data: one model for screen, SVG, PDF and DXF. */

export type { DrawnBrick } from './bricks';
export { bricksOf } from './bricks';
export type { Topping } from './coping';
export type { ElevationOptions } from './elevation';
export { elevation } from './elevation';
export type { Units } from './lengths';
export type { Box, Chain, Drawing, Key, Label, Point, Rod, Stroke, Style } from './model';
export type { Ink, Mark, Paper, Sheet } from './paper';
export { A4_LANDSCAPE, LETTER_LANDSCAPE } from './paper';
export type { PierOptions } from './pier';
export { pierElevation } from './pier';
export { toSheet } from './sheet';
export type { Visible } from './view';
