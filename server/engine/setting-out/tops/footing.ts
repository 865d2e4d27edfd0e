import type { Level } from './profile';

/** How a stepped footing laps itself at a step: from outside, as it varies by country. */
export interface LapRule {
  /** Times the height of the step. */
  times: number;
  /** Mm at least. */
  least: number;
}

export interface FootingStep {
  /** Mm along the wall. */
  at: number;
  /** Of the step, mm. */
  high: number;
  /** How far the lower strip goes on under the upper one, mm. */
  lap: number;
}

/**
 * The steps of a strip so many mm deep under a wall. It laps itself by the greatest of so many times the
 * step, its own depth and the least (NHBC Standards 4.3.8, table 3: 2 S, T or 300 mm).
 */
export function footingSteps(
  ground: readonly Level[],
  gauge: number,
  depth: number,
  { times, least }: LapRule,
): FootingStep[] {
  return ground.slice(1).map(({ from, level }, i) => {
    const high = Math.abs(level - ground[i]!.level) * gauge;
    return { at: from, high, lap: Math.max(times * high, depth, least) };
  });
}

/** Concrete that the laps take beside the strip itself, mm³: each is as high as its step. */
export function lapVolume(steps: readonly FootingStep[], width: number): number {
  return steps.reduce((sum, { high, lap }) => sum + high * lap * width, 0);
}
