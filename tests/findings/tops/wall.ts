import { jobOfWall } from '../../harness/walls';

/** Half-brick stretchers 4490 mm long: whole bricks. */
export const wallWith = (more: string, height = '8 courses'): string => jobOfWall({ height }, more);
