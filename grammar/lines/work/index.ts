/** What is built and mended: walls with their openings and piers, piers that stand alone, repairs. */
export { PIER } from './pier';
export { REPAIR } from './repair';
export { WALL } from './wall';
