export * from './make';
export * from './ranges';
export type * from './types';
