/** Walls that run right through others of half a brick. */
export { lapped, type Opened } from './lay';
export { poorBeside } from './poor';
