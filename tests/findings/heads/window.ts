import { jobOfWall } from '../../harness/walls';

/** Ten bricks of half-brick wall with a window of four bricks and a joint between six halves on each side. */
export const windowWith = (lines: string, wall = ''): string =>
  jobOfWall(
    { length: '2240 mm', height: '14 courses' },
    `${wall}  opening window
    from    left 665 mm
    width   910 mm
    sill    2 courses
    height  4 courses
${lines}`,
  );
