export { buyBricks } from './bricks';
export { buyMaterial } from './material';
export { buyPieces } from './pieces';
export { type Purchase, pooled } from './purchase';
export { buyReady } from './ready';
